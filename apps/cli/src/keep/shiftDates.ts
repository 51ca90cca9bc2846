import { addDays, isCivilDate } from "halfloaf/quantity";

/** A value of JSON with every text that is a day of the calendar moved by so many days; all else stays. */
export function shiftDates(value: unknown, days: number): unknown {
  if (typeof value === "string") return isCivilDate(value) ? addDays(value, days) : value;
  if (Array.isArray(value)) return value.map((each) => shiftDates(each, days));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, shiftDates(each, days)]));
}
