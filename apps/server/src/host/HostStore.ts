import type { StoreFault } from "@halfloaf/keep";
import type { Role } from "@halfloaf/keep/sync";

/** A kitchen that is kept here. */
export interface HostedKitchen {
  readonly id: string;
  /** Name of its log: another one after it was brought back from a backup, so that devices compare anew. */
  readonly log: string;
  /** Last row of the log, from 1 without gaps: also how many there are. */
  readonly upTo: number;
  /** Bytes of the rows' texts. */
  readonly bytes: number;
}

/** A device that may come to a kitchen. Of its secret only the SHA-256 is kept. */
export interface HostedDevice {
  readonly id: string;
  readonly kitchen: string;
  readonly name: string;
  readonly role: Role;
  readonly secretHash: Uint8Array;
  readonly madeAtMs: number;
  /** When it came last, to the hour. */
  readonly seenAtMs: number;
}

/** A way in for one device, until it is used, revoked or too old. Of its secret only the SHA-256 is kept. */
export interface HostedInvitation {
  readonly id: string;
  readonly kitchen: string;
  readonly role: Role;
  readonly secretHash: Uint8Array;
  readonly madeBy: string;
  readonly expiresAtMs: number;
}

/** An address at which a calendar asks for a kitchen's plan. Of its secret only the SHA-256 is kept. */
export interface HostedCalendar {
  readonly id: string;
  readonly kitchen: string;
  /** The device that made it; with the device it is gone. */
  readonly madeBy: string;
  readonly secretHash: Uint8Array;
  /** How it is to be written, as JSON. */
  readonly manner: string;
  readonly madeAtMs: number;
  /** When it was asked for last, to the hour. */
  readonly seenAtMs: number;
}

/** A row as it stands in a log: `text` is its canonical JSON. */
export interface HostedRow {
  readonly seq: number;
  readonly id: string;
  /** The device that sent it. */
  readonly device: string;
  readonly text: string;
}

/** Rows that a device sends. Rows of one act are kept together or not at all. */
export interface Push {
  readonly kitchen: string;
  readonly device: string;
  readonly acts: readonly (readonly Pick<HostedRow, "id" | "text">[])[];
  readonly mostRows: number;
  readonly mostBytes: number;
}

/** What became of a push; told after what was kept is on disk. */
export type Pushed =
  | { readonly kind: "gone" }
  | {
      readonly kind: "kept";
      /** The rows that are new, in order; those that were there already are kept as well. */
      readonly fresh: readonly HostedRow[];
      /** Ids of rows that stand there with other content. */
      readonly taken: readonly string[];
      /** Ids of rows for which there is no room. */
      readonly over: readonly string[];
    };

/** Rows of a log after some point. */
export interface LogPage {
  readonly rows: readonly HostedRow[];
  /** Last row of the whole log. */
  readonly upTo: number;
}

/** How a device's removal or another role for it went: the last keeper can be neither removed nor made less. */
export type Changed = "done" | "missing" | "last-keeper";

/** One kitchen whole, as a backup holds it. */
export interface KitchenCopy {
  readonly kitchen: { readonly id: string; readonly log: string };
  readonly devices: readonly HostedDevice[];
  readonly calendars: readonly HostedCalendar[];
  readonly writers: readonly (readonly [writer: string, device: string])[];
  readonly rows: readonly HostedRow[];
}

/** The addresses of calendars in a store. */
export interface CalendarStore {
  /** Adds one, unless the kitchen has `most` of them. */
  add(calendar: HostedCalendar, most: number): Promise<"done" | "full" | StoreFault>;
  find(kitchen: string, id: string): Promise<HostedCalendar | undefined | StoreFault>;
  list(kitchen: string): Promise<readonly HostedCalendar[] | StoreFault>;
  remove(kitchen: string, id: string): Promise<"done" | "missing" | StoreFault>;
  noteSeen(kitchen: string, id: string, atMs: number): Promise<"done" | StoreFault>;
}

/**
 * Where the kitchens of a server are kept. Whatever it tells as done is on disk. Logs are only ever added to; the numbers of
 * a log have no gaps, and who has read up to one has missed none before it. Several servers may have the same store open.
 */
export interface HostStore {
  readonly calendars: CalendarStore;
  makeKitchen(kitchen: Pick<HostedKitchen, "id" | "log">, keeper: HostedDevice): Promise<"done" | StoreFault>;
  findKitchen(id: string): Promise<HostedKitchen | undefined | StoreFault>;
  /** Takes away everything of a kitchen. */
  deleteKitchen(id: string): Promise<"done" | StoreFault>;
  /** Takes away all kitchens that no device has come to since then, and gives their names. */
  forgetUnseen(sinceMs: number): Promise<readonly string[] | StoreFault>;
  findDevice(kitchen: string, id: string): Promise<HostedDevice | undefined | StoreFault>;
  listDevices(kitchen: string): Promise<readonly HostedDevice[] | StoreFault>;
  noteSeen(kitchen: string, id: string, atMs: number): Promise<"done" | StoreFault>;
  removeDevice(kitchen: string, id: string): Promise<Changed | StoreFault>;
  changeRole(kitchen: string, id: string, role: Role): Promise<Changed | StoreFault>;
  addInvitation(invitation: HostedInvitation, nowMs: number): Promise<"done" | StoreFault>;
  findInvitation(id: string): Promise<HostedInvitation | undefined | StoreFault>;
  listInvitations(kitchen: string, nowMs: number): Promise<readonly HostedInvitation[] | StoreFault>;
  removeInvitation(kitchen: string, id: string): Promise<"done" | "missing" | StoreFault>;
  /** Uses an invitation up and lets the device in, both or neither; `spent` where somebody was quicker or it is too old. */
  useInvitation(id: string, device: HostedDevice, nowMs: number): Promise<"done" | "spent" | StoreFault>;
  /** The device that a writer's ids belong to from now on: the one that claimed it first. */
  claimWriter(kitchen: string, writer: string, device: string): Promise<{ readonly owner: string } | StoreFault>;
  /** Who claimed each of these writers; those that nobody has are left out. */
  ownersOf(kitchen: string, writers: readonly string[]): Promise<ReadonlyMap<string, string> | StoreFault>;
  /** Which device sent each of these rows; those that are not there are left out. */
  sendersOf(kitchen: string, ids: readonly string[]): Promise<ReadonlyMap<string, string> | StoreFault>;
  append(push: Push): Promise<Pushed | StoreFault>;
  /** Rows after `after`: as many as fit into `mostBytes`, at least one where there is one. */
  readLog(kitchen: string, after: number, mostBytes: number): Promise<LogPage | StoreFault>;
  /** Ids of all rows of a log. */
  listIds(kitchen: string): Promise<readonly string[] | StoreFault>;
  /** How far the logs of these kitchens go; those that are gone are left out. */
  endsOf(kitchens: readonly string[]): Promise<ReadonlyMap<string, number> | StoreFault>;
  /** Copies of all kitchens, one by one, while others go on; what comes in meanwhile may or may not be in them. */
  copyAll(): AsyncIterable<KitchenCopy | StoreFault>;
  /** Brings a kitchen back as it was copied, in the place of what is there, under another name of its log. */
  restore(copy: KitchenCopy, log: string): Promise<"done" | StoreFault>;
  /** Tells whether the store can be reached. */
  ping(): Promise<"done" | StoreFault>;
  close(): Promise<void>;
}

/** Tells a fault from what was asked for. */
export function isFault(outcome: unknown): outcome is StoreFault {
  return typeof outcome === "object" && outcome !== null && "ok" in outcome && outcome.ok === false;
}
