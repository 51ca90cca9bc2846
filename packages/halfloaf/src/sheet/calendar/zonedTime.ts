import { addDays, type CivilDate, daysBetween } from "../../quantity/index.ts";

/** Minutes since 1970-01-01T00:00 by the clock of a place, or in UTC where it says so. */
export type Minutes = number;

const EPOCH: CivilDate = "1970-01-01";
export const DAY = 24 * 60;
const MS = 60_000;

/** The minute of a day, by whatever clock the day is of. */
export function minuteOf(date: CivilDate, minutes: number): Minutes {
  return daysBetween(EPOCH, date) * DAY + minutes;
}

/** The day and the minute of the day. */
export function dayOf(minute: Minutes): { readonly date: CivilDate; readonly minutes: number } {
  const days = Math.floor(minute / DAY);
  return { date: addDays(EPOCH, days), minutes: minute - days * DAY };
}

/** A minute as a calendar writes a date with its time of day, without a zone. */
export function toDateTime(minute: Minutes): string {
  const { date, minutes } = dayOf(minute);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${date.replaceAll("-", "")}T${two(Math.floor(minutes / 60))}${two(minutes % 60)}00`;
}

/** The clock of a time zone. */
export interface ZoneClock {
  /** Minutes that the clock is ahead of UTC at a minute of UTC. */
  readonly offsetAt: (utc: Minutes) => number;
  readonly toLocal: (utc: Minutes) => Minutes;
  /**
   * The minute of UTC of a time by the clock. A time that comes twice means the first, one that is skipped the offset from
   * before. **Source**: RFC 5545, 3.3.5.
   */
  readonly toUtc: (local: Minutes) => Minutes;
}

/** The clock of a zone by its name in the IANA database; undefined where that has no such zone. */
export function zoneClock(zone: string): ZoneClock | undefined {
  const format = formatOf(zone);
  if (format === undefined) return undefined;
  const offsetAt = (utc: Minutes): number => {
    const parts = new Map(format.formatToParts(utc * MS).map(({ type, value }) => [type, value]));
    const two = (type: Intl.DateTimeFormatPartTypes) => (parts.get(type) ?? "").padStart(2, "0");
    const date = `${(parts.get("year") ?? "").padStart(4, "0")}-${two("month")}-${two("day")}`;
    return minuteOf(date, Number(parts.get("hour")) * 60 + Number(parts.get("minute"))) - utc;
  };
  const toLocal = (utc: Minutes) => utc + offsetAt(utc);
  const toUtc = (local: Minutes) => {
    const [before, after] = [local - offsetAt(local - DAY), local - offsetAt(local + DAY)];
    const [first = before] = [before, after].sort((a, b) => a - b).filter((utc) => toLocal(utc) === local);
    return first;
  };
  return { offsetAt, toLocal, toUtc };
}

function formatOf(zone: string): Intl.DateTimeFormat | undefined {
  try {
    return new Intl.DateTimeFormat("en-US", {
      timeZone: zone,
      hourCycle: "h23",
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
      hour: "2-digit",
      minute: "2-digit",
    });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
