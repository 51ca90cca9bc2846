import type { CivilDate } from "halfloaf/quantity";

/** The day of the calendar here at a moment, given in milliseconds since 1970-01-01 UTC. */
export function civilDayOf(atMs: number): CivilDate {
  const at = new Date(atMs);
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${String(at.getFullYear()).padStart(4, "0")}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
