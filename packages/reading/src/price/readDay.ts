import { type CivilDate, isCivilDate } from "halfloaf/quantity";

/** In which order day, month and year stand where they are all numbers. */
export type DateOrder = "dmy" | "mdy" | "ymd";

/** A day found in a text; open where it could be two days and the order is not stated. */
export type ReadDay =
  | { readonly kind: "day"; readonly day: CivilDate }
  | { readonly kind: "open"; readonly days: readonly CivilDate[] };

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

const ISO = /(?<!\d)(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?!\d)/;
const NUMBERS = /(?<![\d.,])(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?!\d)/;
const WORDS = /(?<!\d)(\d{1,2})[ .-]{1,2}([a-z]{3,9})\.?[ .-]{1,2}(\d{4}|\d{2})(?!\d)/i;

/**
 * Finds a day in a text: 2026-11-28, 28.11.2026, 28/11/26, 28 Nov 2026. A year of two digits is one of this century. Of a
 * day and month that could change places the stated order decides. Undefined where there is no day of the calendar.
 */
export function readDay(text: string, order?: DateOrder): ReadDay | undefined {
  const line = text.slice(0, 300);
  const [, year, month, day] = ISO.exec(line) ?? [];
  const iso = toDay(year, month, day);
  if (iso !== undefined) return { kind: "day", day: iso };
  const [, date, name = "", ofYear] = WORDS.exec(line) ?? [];
  const worded = toDay(ofYear, String(MONTHS.indexOf(name.slice(0, 3).toLowerCase()) + 1), date);
  if (worded !== undefined) return { kind: "day", day: worded };
  const [, first, mark, second, third] = NUMBERS.exec(line) ?? [];
  const readings = { dmy: toDay(third, second, first), mdy: toDay(third, first, second), ymd: undefined };
  // A point between numbers is not written where months come first.
  const found =
    order === undefined ? (mark === "." ? [readings.dmy] : [readings.dmy, readings.mdy]) : [readings[order]];
  const days = [...new Set(found.filter((each) => each !== undefined))];
  if (days[0] === undefined) return undefined;
  return days.length === 1 ? { kind: "day", day: days[0] } : { kind: "open", days };
}

function toDay(year: string | undefined, month: string | undefined, day: string | undefined): CivilDate | undefined {
  if (year === undefined || month === undefined || day === undefined) return undefined;
  const full = year.length === 2 ? `20${year}` : year;
  const text = `${full}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  return isCivilDate(text) ? text : undefined;
}
