import { toCelsius } from "halfloaf/quantity";

/** A temperature as a text tells it, in degrees Celsius. */
export interface TemperatureFound {
  readonly tempC: number;
  readonly start: number;
  readonly end: number;
  /** Why it is less sure than it reads. */
  readonly reason?: "degrees-unnamed" | "oven-mark" | "oven-word" | "fan-only";
}

const RANGE = "(?:\\s*(?:-|–|to)\\s*(\\d{2,3})(?:\\s*°)?)?";
const DEGREES = new RegExp(
  `(?<![\\d.,])(\\d{2,3})(?:\\s*(?:°|º|degrees?|degs?\\.?))?${RANGE}\\s*(?:(?:°|º|degrees?|degs?\\.?)\\s*)?(celsius|centigrade|fahrenheit|[cf])(?![a-z])(\\s*\\(?fan)?`,
  "giu",
);
const UNNAMED = /(?<![\d.,/])(\d{2,3})\s*(?:°|º|degrees?)(?!\s*[a-z]?[cf]\b)/giu;
const MARK = /\b(?:gas(?:\s*mark)?|oven mark|mark|regulo)\s*(\d{1,2}|¼|½|1\/4|1\/2)(?![\d/%])/giu;
const WORD = /\b(very cool|very slow|cool|slow|warm|moderate|medium|moderately hot|hot|very hot)\s+oven\b/giu;

/** What an oven is called by its heat; the middle of what the word stands for. Common practice, no source. */
const WORD_C: ReadonlyMap<string, number> = new Map([
  ["very cool", 110],
  ["very slow", 110],
  ["cool", 150],
  ["slow", 150],
  ["warm", 160],
  ["moderate", 180],
  ["medium", 180],
  ["moderately hot", 190],
  ["hot", 220],
  ["very hot", 230],
]);

/** A hotter oven than this is not found in a kitchen: what is said to be hotter is in degrees Fahrenheit. Common practice, no source. */
const HOTTEST_OVEN_C = 260;
/** Degrees Celsius that a fan oven is set lower by. Common practice, no source. */
const FAN_C = 20;

/**
 * The temperature of oven or fat that a text tells; undefined where it tells none. Where it tells one in several ways, degrees
 * Celsius without a fan come first, then Fahrenheit, a fan's, the mark of a gas oven, degrees of an unnamed kind, a word.
 * The higher end of a range is taken. Core temperatures ("75 C in the middle") are none.
 */
export function readTemperature(text: string): TemperatureFound | undefined {
  const named = [...text.matchAll(DEGREES)].filter((match) => !isCore(text, match));
  const [celsius] = named.filter((match) => isCelsius(match) && !isFan(text, match));
  if (celsius !== undefined) return found(celsius, highest(celsius));
  const [fahrenheit] = named.filter((match) => !isCelsius(match));
  if (fahrenheit !== undefined) return found(fahrenheit, roundToFive(toCelsius(highest(fahrenheit))));
  const [fan] = named;
  if (fan !== undefined) return { ...found(fan, highest(fan) + FAN_C), reason: "fan-only" };
  return readMark(text) ?? readUnnamed(text) ?? readWord(text);
}

type Match = RegExpExecArray;

function found(match: Match, tempC: number): TemperatureFound {
  return { tempC, start: match.index, end: match.index + match[0].length };
}

function highest(match: Match): number {
  return Math.max(Number(match[1]), Number(match[2] ?? 0));
}

function isCelsius(match: Match): boolean {
  return /^c/i.test(match[3] as string);
}

function isFan(text: string, match: Match): boolean {
  return (
    match[4] !== undefined || /\bfan(?: oven)?:?\s*\(?$/i.test(text.slice(Math.max(0, match.index - 12), match.index))
  );
}

function isCore(text: string, match: Match): boolean {
  const after = text.slice(match.index + match[0].length, match.index + match[0].length + 40);
  return /^\W*(?:in|at) (?:the|its) (?:middle|cent(?:re|er)|core|thickest)/i.test(after);
}

/**
 * Mark n of a gas oven stands for 250 + 25 n degrees Fahrenheit, the marks ½ and ¼ for 250 and 225.
 * **Source**: common practice; widely printed, no one authority.
 */
function readMark(text: string): TemperatureFound | undefined {
  const [match] = [...text.matchAll(MARK)];
  if (match === undefined) return undefined;
  const sign = match[1] as string;
  const mark = sign === "½" || sign === "1/2" ? 0 : sign === "¼" || sign === "1/4" ? -1 : Number(sign);
  if (mark > 10 || sign === "0") return undefined;
  return { ...found(match, roundToFive(toCelsius(250 + 25 * mark))), reason: "oven-mark" };
}

function readUnnamed(text: string): TemperatureFound | undefined {
  const match = [...text.matchAll(UNNAMED)].find((each) => !isCore(text, each));
  if (match === undefined) return undefined;
  const degrees = Number(match[1]);
  // Below this nothing is baked or fried; it is water, or the middle of a roast.
  if (degrees < 100) return undefined;
  const tempC = degrees > HOTTEST_OVEN_C ? roundToFive(toCelsius(degrees)) : degrees;
  return { ...found(match, tempC), reason: "degrees-unnamed" };
}

function readWord(text: string): TemperatureFound | undefined {
  const [match] = [...text.matchAll(WORD)];
  const tempC = match && WORD_C.get((match[1] as string).toLowerCase());
  return match && tempC !== undefined ? { ...found(match, tempC), reason: "oven-word" } : undefined;
}

/** Dials of ovens are not read closer. */
function roundToFive(tempC: number): number {
  return Math.round(tempC / 5) * 5;
}
