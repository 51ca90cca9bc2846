import type { Membership, Role } from "@halfloaf/keep/sync";
import { useMemo, useSyncExternalStore } from "react";

/** Where a kitchen of this device is shared; the credential in it is a secret of this device. */
export interface Shared extends Membership {
  /** What this device may do, as the server last said. */
  readonly role?: Role;
}

const hearers = new Set<() => void>();

/** Where the kitchen of that database is shared; undefined where it is not. */
export function readShared(id: string): Shared | undefined {
  return parse(readText(id));
}

/** Remembers where a kitchen is shared; undefined forgets it. False where the browser keeps nothing. */
export function writeShared(id: string, shared: Shared | undefined): boolean {
  try {
    if (shared === undefined) for (const name of [keyOf(id), markKeyOf(id)]) localStorage.removeItem(name);
    else localStorage.setItem(keyOf(id), JSON.stringify(shared));
  } catch {
    return false;
  }
  for (const hearer of hearers) hearer();
  return true;
}

/** Where it is remembered how far the server's log was read. */
export function markKeyOf(id: string): string {
  return `halfloaf-shared-mark-${id}`;
}

/** Where the kitchen of that database is shared, also when that changes, in another tab too. */
export function useShared(id: string | undefined): Shared | undefined {
  const text = useSyncExternalStore(subscribe, () => (id === undefined ? null : readText(id)));
  return useMemo(() => parse(text), [text]);
}

function subscribe(hearer: () => void): () => void {
  hearers.add(hearer);
  addEventListener("storage", hearer);
  return () => {
    hearers.delete(hearer);
    removeEventListener("storage", hearer);
  };
}

function keyOf(id: string): string {
  return `halfloaf-shared-${id}`;
}

function readText(id: string): string | null {
  try {
    return localStorage.getItem(keyOf(id));
  } catch {
    // Storage that is refused is as if nothing were shared.
    return null;
  }
}

function parse(text: string | null): Shared | undefined {
  try {
    const value: unknown = JSON.parse(text ?? "null");
    return isShared(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

function isShared(value: unknown): value is Shared {
  return typeof value === "object" && value !== null && "credential" in value && "kitchen" in value;
}
