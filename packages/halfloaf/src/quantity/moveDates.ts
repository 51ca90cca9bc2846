import { addDays, isCivilDate } from "./civilDate.ts";

/**
 * A value of JSON with every text that is a day of the calendar moved by so many days, so that a demo kitchen can begin on
 * any day; all else stays, days of the week too.
 */
export function moveDates(value: unknown, days: number): unknown {
  if (typeof value === "string") return isCivilDate(value) ? addDays(value, days) : value;
  if (Array.isArray(value)) return value.map((each) => moveDates(each, days));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, moveDates(each, days)]));
}
