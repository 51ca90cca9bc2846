import { InvalidArgumentError } from "commander";
import { quote } from "../words/valueWords.ts";

/** A time of day in minutes after midnight, from 0:00 to 23:59; anything else is refused. */
export function parseClock(text: string): number {
  const found = /^(\d{1,2}):(\d{2})$/.exec(text);
  const [hours, minutes] = [Number(found?.[1]), Number(found?.[2])];
  if (hours <= 23 && minutes <= 59) return hours * 60 + minutes;
  throw new InvalidArgumentError(`${quote(text)} is no time of day. Write it as 19:00.`);
}
