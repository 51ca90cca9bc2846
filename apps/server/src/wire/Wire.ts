import type { Present } from "@halfloaf/keep/sync";
import type { HostedRow } from "../host/HostStore.ts";

/** What servers tell each other of a kitchen. Whatever gets lost is found by looking into the store now and then. */
export type WireMessage =
  /** The log goes up to there; the rows that are new where they are few. */
  | { readonly kind: "rows"; readonly kitchen: string; readonly upTo: number; readonly rows: readonly HostedRow[] }
  /** Who is in the kitchen by way of that server, until it says otherwise or is not heard of any more. */
  | { readonly kind: "here"; readonly kitchen: string; readonly server: string; readonly devices: readonly Present[] }
  /** Asks the others who is there. */
  | { readonly kind: "who"; readonly kitchen: string }
  /** A device was removed or got another role; all of them where none is named: the kitchen was deleted. */
  | { readonly kind: "changed"; readonly kitchen: string; readonly device?: string };

/** What joins several servers. */
export interface Wire {
  /** False where others may do something that is not heard of here: then the store is looked into more often. */
  readonly hears: boolean;
  send(message: WireMessage): void;
  /** From now on what is told of a kitchen is heard, or no longer. */
  follow(kitchen: string): void;
  leave(kitchen: string): void;
  /** Is called with what others tell, and with nothing after something may have been missed. */
  listen(hear: (message?: WireMessage) => void): void;
  close(): Promise<void>;
}

/** The wire of a server that is alone. */
export function openNoWire({ isAlone = true } = {}): Wire {
  return { hears: isAlone, send: () => {}, follow: () => {}, leave: () => {}, listen: () => {}, close: async () => {} };
}
