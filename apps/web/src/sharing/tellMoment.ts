import { today } from "../kitchen/today.ts";
import type { Formats } from "../words/Formats.ts";

/** A moment in milliseconds since 1970 as day and time of this device. */
export function tellMoment(atMs: number, formats: Formats): string {
  const when = new Date(atMs);
  return `${formats.day(today(when))}, ${formats.clock(when.getHours() * 60 + when.getMinutes())}`;
}
