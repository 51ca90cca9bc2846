import { clockMinutes, type WorkSheet } from "halfloaf/kitchen";

const DAY = 24 * 60;

/** A minute of the cooking as a reader sees it: the time of day where there is one, else the minute itself. */
export function tellMoment(sheet: WorkSheet, minutes: number): string {
  const clock = clockMinutes(sheet, minutes);
  return clock === undefined ? String(minutes) : tellClock(clock);
}

/** A time of day, "18:05", of minutes since a midnight, which may lie on another day. */
export function tellClock(minutes: number): string {
  const inDay = ((minutes % DAY) + DAY) % DAY;
  const two = (value: number) => String(value).padStart(2, "0");
  return `${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
}
