import { InvalidArgumentError } from "commander";
import { type CivilDate, isCivilDate } from "halfloaf/quantity";
import { quote } from "../words/valueWords.ts";

/** A reader of a whole number within bounds, both included; anything else is refused. */
export function parseWhole(least: number, most: number): (text: string) => number {
  return (text) => {
    const value = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
    if (value >= least && value <= most) return value;
    throw new InvalidArgumentError(`${quote(text)} is no whole number from ${least} to ${most}.`);
  };
}

/** A reader of portions, such as 2.8: more than none, and no more than there may be; anything else is refused. */
export function parsePortions(most: number): (text: string) => number {
  return (text) => {
    const value = /^\d{1,10}(\.\d{1,3})?$/.test(text) ? Number(text) : Number.NaN;
    if (value > 0 && value <= most) return value;
    throw new InvalidArgumentError(`${quote(text)} is no number of portions up to ${most}, such as 2 or 2.8.`);
  };
}

/** A day of the calendar; anything else is refused. */
export function parseDay(text: string): CivilDate {
  if (isCivilDate(text)) return text;
  throw new InvalidArgumentError(`${quote(text)} is no day of the calendar. Write it as YYYY-MM-DD.`);
}
