import { type CivilDate, daysBetween } from "../quantity/index.ts";
import type { WeekPlan } from "./weekPlan.ts";

/** The names that a week has for the packs of a line of a trip, one a pack. */
export function lotsOfLine(
  week: Pick<WeekPlan, "from">,
  date: CivilDate,
  { pack, count }: Pick<WeekPlan["trips"][number]["lines"][number], "pack" | "count">,
): string[] {
  const day = daysBetween(week.from, date) + 1;
  return Array.from({ length: count }, (_, copy) => `${pack}-day-${day}-${copy + 1}`);
}
