import { addDays, type CivilDate, weekday } from "../../../quantity/index.ts";

/** How long a stretch of the accounts is. Weeks are those of ISO 8601, Monday to Sunday. */
export type Stretch = "day" | "week" | "month";

/** The first day of the stretch that a day lies in. */
export function startOf(day: CivilDate, stretch: Stretch): CivilDate {
  if (stretch === "day") return day;
  return stretch === "week" ? addDays(day, 1 - weekday(day)) : `${day.slice(0, 8)}01`;
}

/** The first day of the next stretch. */
export function startOfNext(day: CivilDate, stretch: Stretch): CivilDate {
  if (stretch === "day") return addDays(day, 1);
  if (stretch === "week") return addDays(startOf(day, "week"), 7);
  // The 28th is in every month, and four days later the next has begun.
  return `${addDays(`${day.slice(0, 8)}28`, 4).slice(0, 8)}01`;
}

/** The name of a stretch: the day, `2026-W49`, or `2026-12`. **Source**: ISO 8601; a week is of the year of its Thursday. */
export function nameStretch(day: CivilDate, stretch: Stretch): string {
  if (stretch === "day") return day;
  if (stretch === "month") return day.slice(0, 7);
  const thursday = addDays(startOf(day, "week"), 3);
  const year = thursday.slice(0, 4);
  let week = 1;
  for (let each = thursday; each.slice(0, 4) === addDays(each, -7).slice(0, 4); each = addDays(each, -7)) week++;
  return `${year}-W${String(week).padStart(2, "0")}`;
}
