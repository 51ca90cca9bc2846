import type { HostedRow } from "../host/HostStore.ts";
import type { Mistakes } from "../Mistakes.ts";
import type { ServerParts } from "../ServerParts.ts";
import type { Guest } from "./Guest.ts";

/** What a talk asks of the hub that it belongs to. */
export interface Lobby {
  readonly parts: ServerParts;
  readonly mistakes: Mistakes;
  /** Lets a device in that has shown who it is; `upTo` is how far its log goes. */
  enter(guest: Guest, upTo: number): void;
  /** How many rows a kitchen's log has as far as is known here. */
  endOf(kitchen: string): number;
  /** Hands on rows that are on disk now, here and on the other servers. */
  deliver(kitchen: string, fresh: readonly HostedRow[], sender: Guest): void;
  /** Tells everybody in a kitchen who is there, where that has changed. */
  tellHere(kitchen: string): void;
}
