/**
 * Days of the calendar as texts `YYYY-MM-DD` (ISO 8601, proleptic Gregorian, years 0001 to 9999), without a clock and
 * without time zones. Texts of this form sort as the days they name.
 *
 * The reckoning counts days from 1 March of the year 0, so that the leap day falls at the end of a year.
 */
import * as v from "valibot";

const HYPHEN = 45;
const ZERO = 48;
const DAYS_IN_4_YEARS = 1461;
const DAYS_IN_100_YEARS = 36524;
const DAYS_IN_400_YEARS = 146097;

/** True for a text that names a day there is; 2026-02-29 is none. */
export function isCivilDate(text: string): boolean {
  if (text.length !== 10 || text.charCodeAt(4) !== HYPHEN || text.charCodeAt(7) !== HYPHEN) return false;
  const [year, month, day] = [digitsAt(text, 0, 4), digitsAt(text, 5, 7), digitsAt(text, 8, 10)];
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

/** The number that the digits from a place to before another make; no number where there is anything else. */
function digitsAt(text: string, from: number, to: number): number {
  let value = 0;
  for (let at = from; at < to; at++) {
    const digit = text.charCodeAt(at) - ZERO;
    if (digit < 0 || digit > 9) return Number.NaN;
    value = 10 * value + digit;
  }
  return value;
}

/** A day of the calendar, `YYYY-MM-DD`. */
export const CivilDate = v.pipe(v.string(), v.check(isCivilDate, "a day of the calendar, YYYY-MM-DD"));
export type CivilDate = v.InferOutput<typeof CivilDate>;

/** The day a whole number of days later, earlier where it is negative. Throws where `date` or the answer is no day. */
export function addDays(date: CivilDate, days: number): CivilDate {
  const answer = Number.isInteger(days) ? fromDayNumber(toDayNumber(date) + days) : undefined;
  if (answer === undefined || !isCivilDate(answer)) throw new RangeError(`${date} and ${days} days make no day`);
  return answer;
}

/** Whole days from the first day to the second: 0 for the same day, negative where the second is earlier. */
export function daysBetween(from: CivilDate, to: CivilDate): number {
  return toDayNumber(to) - toDayNumber(from);
}

/** The day of the week by ISO 8601: 1 is Monday, 7 is Sunday. */
export function weekday(date: CivilDate): 1 | 2 | 3 | 4 | 5 | 6 | 7 {
  // Day number 0, 1 March of the year 0, is a Wednesday.
  return (((toDayNumber(date) + 2) % 7) + 1) as 1 | 2 | 3 | 4 | 5 | 6 | 7;
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function toDayNumber(date: CivilDate): number {
  if (!isCivilDate(date)) throw new RangeError(`"${date}" is no day; a day is written YYYY-MM-DD`);
  const [year, month, day] = [digitsAt(date, 0, 4), digitsAt(date, 5, 7), digitsAt(date, 8, 10)];
  const marchYear = month > 2 ? year : year - 1;
  const marchMonth = (month + 9) % 12;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return marchYear * 365 + leapDays + daysBeforeMarchMonth(marchMonth) + day - 1;
}

/** Days from 1 March to the first of a month counted from March = 0; the months repeat 31, 30, 31, 30, 31. */
function daysBeforeMarchMonth(marchMonth: number): number {
  return Math.floor((153 * marchMonth + 2) / 5);
}

function fromDayNumber(dayNumber: number): string {
  const era = Math.floor(dayNumber / DAYS_IN_400_YEARS);
  const dayOfEra = dayNumber - era * DAYS_IN_400_YEARS;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / (DAYS_IN_4_YEARS - 1)) +
      Math.floor(dayOfEra / DAYS_IN_100_YEARS) -
      Math.floor(dayOfEra / (DAYS_IN_400_YEARS - 1))) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = era * 400 + yearOfEra + (month <= 2 ? 1 : 0);
  const day = dayOfYear - daysBeforeMarchMonth(marchMonth) + 1;
  const pad = (value: number, width: number) => String(value).padStart(width, "0");
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
}
