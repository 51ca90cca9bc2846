import type { Farewell, Present, Refusal, Role } from "./messages.ts";

/** How a device stands to the server of its kitchen. */
export type SyncState =
  /** Not connected: everything goes on here, and is sent later. `tries` failed one after the other. */
  | { readonly kind: "apart"; readonly tries: number }
  /** Connecting, or reading what others did meanwhile. */
  | { readonly kind: "joining" }
  /** What others do is here at once, and what is done here is there. */
  | { readonly kind: "together" }
  /**
   * The server does not want this device, or it has another kitchen under this name: no further try is made by itself.
   * Everything goes on here.
   */
  | { readonly kind: "refused"; readonly reason: Farewell | "other-kitchen" };

/** All that a screen tells of sharing; one object for each state of it. */
export interface SyncView {
  readonly state: SyncState;
  /** What this device may do; absent until the server has said it. */
  readonly role?: Role;
  /** Rows that the server has not told as kept. */
  readonly unsent: number;
  /** Rows that the server refused, with the reason; they stay in this device's kitchen and count there. */
  readonly returned: readonly Refusal[];
  /** Devices that are in the kitchen now, this one among them. */
  readonly here: readonly Present[];
  /** True while the server can't keep anything; it is tried again. */
  readonly hasTrouble: boolean;
}

/** What a device must remember of its talks; losing it costs time and nothing else. */
export interface SyncMark {
  /** Name of the log that was read, and how far. */
  readonly log: string;
  readonly upTo: number;
}

/** Where the mark is remembered. */
export interface SyncMemory {
  read(): SyncMark | undefined;
  write(mark: SyncMark): void;
}

/** What a device was given when it joined: what it needs to come again. The credential is a secret. */
export interface Membership {
  /** Origin of the server, without a slash at its end. */
  readonly server: string;
  readonly kitchen: string;
  readonly device: string;
  readonly credential: string;
}

/** A WebSocket as browsers and the package `ws` have it, as far as it is used here. */
export interface Socket {
  onopen: ((event: never) => void) | null;
  onmessage: ((event: { readonly data: unknown } & never) => void) | null;
  onclose: ((event: never) => void) | null;
  onerror: ((event: never) => void) | null;
  send(text: string): void;
  close(): void;
}
