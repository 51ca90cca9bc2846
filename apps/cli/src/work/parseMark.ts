import { InvalidArgumentError } from "commander";
import { quote } from "../words/valueWords.ts";
import { parseClock } from "./parseClock.ts";

/** A moment as it was told: a time of day in minutes after midnight, or a minute of the cooking. */
export interface Moment {
  readonly kind: "clock" | "minute";
  readonly minutes: number;
}

/** Vessels and the board, which are washed for their next use. */
const WASHED_PARTS = ["board", "pan", "pot", "blender"] as const;

/** What the cook says has happened, with the text it was said in; dishes by their place, steps by their ids. */
export type AskedMark = { readonly text: string } & (
  | { readonly kind: "begun" | "done"; readonly dish: number; readonly step: string; readonly at: Moment }
  | { readonly kind: "late"; readonly dish: number; readonly step: string; readonly minutes: number }
  | { readonly kind: "washed"; readonly part: (typeof WASHED_PARTS)[number]; readonly at: Moment }
);

const MOST_MINUTES = 1440;

/** "19:05" or "12"; anything else is refused. */
export function parseMoment(text: string): Moment {
  if (text.includes(":")) return { kind: "clock", minutes: parseClock(text) };
  return { kind: "minute", minutes: parseMinutes(text) };
}

/** "A:cut=18:05", what a step was begun or done at. */
export function parseStepMark(kind: "begun" | "done"): (text: string) => AskedMark {
  return (text) => {
    const [name, at] = splitMark(text, "A:STEP=TIME");
    return { kind, text: `--${kind} ${text}`, ...parseStepName(name), at: parseMoment(at) };
  };
}

/** "A:cut=4", the minutes that a step still takes. */
export function parseLate(text: string): AskedMark {
  const [name, minutes] = splitMark(text, "A:STEP=MINUTES");
  return { kind: "late", text: `--late ${text}`, ...parseStepName(name), minutes: parseMinutes(minutes) };
}

/** "board=18:05", when something was washed. */
export function parseWashed(text: string): AskedMark {
  const [name, at] = splitMark(text, "THING=TIME");
  const part = WASHED_PARTS.find((each) => each === name);
  if (part === undefined)
    throw new InvalidArgumentError(`${quote(name)} is none of ${WASHED_PARTS.join(", ")}, which are washed.`);
  return { kind: "washed", text: `--washed ${text}`, part, at: parseMoment(at) };
}

function splitMark(text: string, form: string): [string, string] {
  const at = text.indexOf("=");
  if (at <= 0 || at === text.length - 1) throw new InvalidArgumentError(`${quote(text)} is not written as ${form}.`);
  return [text.slice(0, at), text.slice(at + 1)];
}

function parseStepName(text: string): { readonly dish: number; readonly step: string } {
  const found = /^([A-Z]):(.+)$/.exec(text);
  if (found === null)
    throw new InvalidArgumentError(
      `${quote(text)} is no step. Write it as the page does, A:STEP with the dish's letter.`,
    );
  return { dish: (found[1] as string).charCodeAt(0) - "A".charCodeAt(0), step: found[2] as string };
}

function parseMinutes(text: string): number {
  const minutes = /^\d{1,4}$/.test(text) ? Number(text) : Number.NaN;
  if (minutes <= MOST_MINUTES) return minutes;
  throw new InvalidArgumentError(`${quote(text)} is no whole number of minutes from 0 to ${MOST_MINUTES}.`);
}
