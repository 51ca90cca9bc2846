import { type CivilDate, weekday } from "halfloaf/quantity";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;
const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** "Monday 30 November". */
export function tellDay(date: CivilDate): string {
  return `${WEEKDAYS[weekday(date) - 1]} ${dayOfMonth(date)} ${MONTHS[monthOf(date) - 1]}`;
}

/** "Mon 30 Nov". */
export function tellDayShort(date: CivilDate): string {
  return `${tellWeekday(date).slice(0, 3)} ${dayOfMonth(date)} ${MONTHS[monthOf(date) - 1]?.slice(0, 3)}`;
}

/** "Monday". */
export function tellWeekday(date: CivilDate): string {
  return WEEKDAYS[weekday(date) - 1] as string;
}

/** "2026". */
export function tellYear(date: CivilDate): string {
  return date.slice(0, 4);
}

function dayOfMonth(date: CivilDate): number {
  return Number(date.slice(8, 10));
}

function monthOf(date: CivilDate): number {
  return Number(date.slice(5, 7));
}
