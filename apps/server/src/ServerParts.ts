import type { HostStore } from "./host/HostStore.ts";
import type { Limits } from "./limits.ts";
import type { Journal } from "./watch/Journal.ts";
import type { Measures } from "./watch/Measures.ts";
import type { Wire } from "./wire/Wire.ts";

/** What the API and the sockets of a server share. */
export interface ServerParts {
  readonly store: HostStore;
  readonly wire: Wire;
  /** This server among several. */
  readonly server: string;
  readonly limits: Limits;
  readonly journal: Journal;
  readonly measures: Measures;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}
