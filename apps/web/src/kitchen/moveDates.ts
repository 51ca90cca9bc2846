import { addDays, isCivilDate } from "halfloaf/quantity";

/** A value of JSON with every day in it moved by so many days, so that a demo kitchen begins today. */
export function moveDates(value: unknown, days: number): unknown {
  if (typeof value === "string") return isCivilDate(value) ? addDays(value, days) : value;
  if (Array.isArray(value)) return value.map((each) => moveDates(each, days));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, moveDates(each, days)]));
}
