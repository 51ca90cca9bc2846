import type { CivilDate } from "halfloaf/quantity";

/** What every command on a kept kitchen is told. */
export interface KeepAsk {
  /** Folder of the kitchen; absent: the one that the environment names. */
  readonly kitchen?: string;
  /** The day it is about; absent: today by the clock. */
  readonly on?: CivilDate;
  /** Id or name of the eater who acts; absent: not said. */
  readonly by?: string;
  readonly json: boolean;
}

/** What a command on a kept kitchen came to: as data, and as the lines of a page. */
export interface KeepAnswer {
  readonly data: object;
  readonly lines: readonly string[];
}
