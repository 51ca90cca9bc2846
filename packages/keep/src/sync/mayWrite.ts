import type { Role } from "./messages.ts";

/** What of a row tells whether it may be written. */
export interface RowAsked {
  readonly kind: string;
  /** Ids of the rows that it takes back, where it does. */
  readonly events?: readonly string[];
}

/**
 * True where a device of that role may write such a row. A cook writes what happens, and takes back only what its own device
 * wrote; what the kitchen is, and which week counts, is for keepers to say; a reader writes nothing. Where `isOwn` is absent,
 * it is not asked who wrote what is taken back.
 */
export function mayWrite(role: Role, { kind, events = [] }: RowAsked, isOwn?: (id: string) => boolean): boolean {
  if (role === "keeper") return true;
  const isWhatHappens = kind !== "edited" && kind !== "menu-accepted";
  return role === "cook" && isWhatHappens && (isOwn === undefined || events.every(isOwn));
}
