import { DAY, type Minutes, toDateTime, type ZoneClock, zoneClock } from "./zonedTime.ts";

/** So long before the first and after the last time the zone is described, so that both lie well within. */
const MARGIN = 400 * DAY;

/**
 * A time zone as it is around some times by its clock: what holds at first, then every change of the clock. Undefined where
 * there is no such zone. **Source**: RFC 5545, 3.6.5.
 */
export function zoneLines(zone: string, locals: readonly Minutes[]): string[] | undefined {
  const clock = zoneClock(zone);
  if (clock === undefined) return undefined;
  const [first, last] = locals.reduce(
    ([least, most], each) => [Math.min(least, each), Math.max(most, each)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );
  const from = first - MARGIN;
  const changes = findChanges(clock, from, last + MARGIN);
  const begins = clock.offsetAt(from);
  return [
    "BEGIN:VTIMEZONE",
    `TZID:${zone}`,
    ...observance(from + begins, begins, begins),
    ...changes.flatMap(({ utc, before, after }) => observance(utc + before, before, after)),
    "END:VTIMEZONE",
  ];
}

interface ClockChange {
  readonly utc: Minutes;
  readonly before: number;
  readonly after: number;
}

/** The minutes at which a clock is changed; two changes on one day count as one. */
function findChanges({ offsetAt }: ZoneClock, from: Minutes, to: Minutes): ClockChange[] {
  const changes: ClockChange[] = [];
  for (let day = from; day < to; day += DAY) {
    const [before, after] = [offsetAt(day), offsetAt(day + DAY)];
    if (before === after) continue;
    let [low, high] = [day, day + DAY];
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (offsetAt(middle) === before) low = middle;
      else high = middle;
    }
    changes.push({ utc: high, before, after });
  }
  return changes;
}

function observance(onset: Minutes, before: number, after: number): string[] {
  const kind = after > before ? "DAYLIGHT" : "STANDARD";
  return [
    `BEGIN:${kind}`,
    `DTSTART:${toDateTime(onset)}`,
    `TZOFFSETFROM:${toOffset(before)}`,
    `TZOFFSETTO:${toOffset(after)}`,
    `END:${kind}`,
  ];
}

function toOffset(minutes: number): string {
  const two = (value: number) => String(value).padStart(2, "0");
  const size = Math.abs(minutes);
  return `${minutes < 0 ? "-" : "+"}${two(Math.floor(size / 60))}${two(size % 60)}`;
}
