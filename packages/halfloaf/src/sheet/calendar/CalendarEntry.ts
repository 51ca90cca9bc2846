import type { CivilDate } from "../../quantity/index.ts";

/** One thing in a calendar. */
export interface CalendarEntry {
  /** The same for the same thing each time the calendar is written. */
  readonly uid: string;
  readonly date: CivilDate;
  /** Minutes after midnight by the clock of the place; absent = the whole day. */
  readonly atMinutes?: number;
  /** Absent for the whole day. */
  readonly forMinutes?: number;
  readonly summary: string;
  readonly description?: string;
  readonly location?: string;
  /** Minutes before the beginning at which it reminds; negative = after it, for a whole day counted from midnight. */
  readonly remindMinutes?: number;
}

/** A calendar as it is written. */
export interface Calendar {
  readonly name: string;
  readonly entries: readonly CalendarEntry[];
  /** Time zone by its name in the IANA database; absent = times are those of wherever one is. */
  readonly zone?: string;
  /** The moment it is written, UTC as `YYYYMMDDTHHMMSSZ`. */
  readonly stamp: string;
}
