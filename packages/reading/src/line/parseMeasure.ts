import type { Measure, MeasurePart } from "./makingsLine.ts";
import { type NumberRead, parseNumber } from "./parseNumber.ts";
import type { Token } from "./tokenise.ts";
import { findUnitWord, UNIT_WORDS, type UnitWord } from "./unitWords.ts";

/** What a parser found, and the position of the token after it. */
export interface MeasureRead {
  readonly measure: Measure;
  readonly approximate: boolean;
  readonly next: number;
}

const ABOUT = new Set([
  "about",
  "approximately",
  "approx",
  "around",
  "roughly",
  "circa",
  "~",
  "nearly",
  "almost",
  "just",
]);
const MANNERS = new Set(
  (
    "heaped heaping rounded level scant scanty generous good goodly decent large big huge small little fat thin thick " +
    "medium medium-size medium-sized hefty packed overflowing brimming short long full lightly loosely firmly tightly well extra"
  ).split(" "),
);
const VAGUE = new Set(["few", "several", "some"]);
const VAGUE_AFTER_ARTICLE = new Set(["little", "bit", "touch", "lot"]);

/**
 * Reads one telling of an amount at `at`: "about 2 heaped tbsp", "2lb 4oz", "1 cup plus 2 tablespoons",
 * "1.5kg-2kg", "large pinch". Undefined where none stands there. A number without a unit counts pieces.
 */
export function parseMeasure(tokens: readonly Token[], at: number): MeasureRead | undefined {
  let next = at;
  let approximate = false;
  while (ABOUT.has(tokens[next]?.lower ?? "")) {
    approximate = true;
    next = skipDot(tokens, next + 1);
  }
  const first = parseCounted(tokens, next);
  if (!first) return undefined;
  const rest = first.parts[0]?.unit === undefined ? first : extend(tokens, first);
  const measure: Measure = {
    parts: rest.parts,
    ...(rest.upTo ? { upTo: rest.upTo } : {}),
    manner: first.manner,
    inWords: first.inWords,
    span: { start: (tokens[at] as Token).start, end: (tokens[rest.next - 1] as Token).end },
  };
  return { measure, approximate, next: rest.next };
}

interface Counted {
  readonly parts: readonly MeasurePart[];
  readonly upTo?: readonly MeasurePart[];
  readonly manner: readonly string[];
  readonly inWords: boolean;
  readonly next: number;
}

/** A number with its unit and what is said of the unit, or a loose unit without a number ("splash of"). */
function parseCounted(tokens: readonly Token[], at: number): Counted | undefined {
  const before = readManner(tokens, at);
  const vague = readVague(tokens, before.next);
  const number = vague === undefined ? parseNumber(tokens, before.next) : undefined;
  const counted = vague ?? number?.next;
  if (counted === undefined) return parseUncounted(tokens, before);
  const between = readManner(tokens, counted);
  const unit = readUnit(tokens, afterHyphen(tokens, between.next), number);
  if (before.manner.length > 0 && unit === undefined) return undefined;
  const manner = unit ? [...before.manner, ...between.manner] : before.manner;
  return {
    ...toParts(number, unit?.unit),
    manner,
    inWords: number === undefined || number.inWords,
    next: unit ? unit.next : counted,
  };
}

function toParts(number: NumberRead | undefined, unit: UnitWord | undefined): Pick<Counted, "parts" | "upTo"> {
  if (number === undefined) return { parts: unit === undefined ? [{}] : [{ unit }] };
  const parts = [toPart(number.low, unit)];
  return number.high > number.low ? { parts, upTo: [toPart(number.high, unit)] } : { parts };
}

function toPart(value: number, unit: UnitWord | undefined): MeasurePart {
  return unit === undefined ? { value } : { value, unit };
}

/**
 * "Pinch of salt", "large handful of mint": what a hand takes goes without a number, and so does a part of a food where
 * "of" follows or something is said of it ("small bunch parsley").
 */
function parseUncounted(tokens: readonly Token[], before: MannerRead): Counted | undefined {
  const unit = readUnit(tokens, before.next, undefined);
  if (unit === undefined) return undefined;
  const { kind } = UNIT_WORDS[unit.unit];
  const loose = kind === "loose" && unit.unit !== "share";
  const told = before.manner.length > 0 || tokens[unit.next]?.lower === "of" || unit.unit === "bunch";
  if (!loose && !(kind === "part" && told && tokens[unit.next]?.kind === "word")) return undefined;
  return { parts: [{ unit: unit.unit }], manner: before.manner, inWords: true, next: unit.next };
}

/** "a few", "several", "a little": an amount that nobody can weigh. Gives the position after it. */
function readVague(tokens: readonly Token[], at: number): number | undefined {
  const article = tokens[at]?.lower === "a" ? 1 : 0;
  const word = tokens[at + article]?.lower ?? "";
  return VAGUE.has(word) || (article === 1 && VAGUE_AFTER_ARTICLE.has(word)) ? at + article + 1 : undefined;
}

interface MannerRead {
  readonly manner: readonly string[];
  readonly next: number;
}

function readManner(tokens: readonly Token[], at: number): MannerRead {
  let next = at;
  while (MANNERS.has(tokens[next]?.lower ?? "") || /-sized?$/.test(tokens[next]?.lower ?? "")) next++;
  return { manner: tokens.slice(at, next).map(({ lower }) => lower), next };
}

/** "14-ounce": the hyphen between a number and its unit. */
function afterHyphen(tokens: readonly Token[], at: number): number {
  const [hyphen, unit] = [tokens[at], tokens[at + 1]];
  return hyphen?.lower === "-" && hyphen.glued && unit?.kind === "word" && unit.glued ? at + 1 : at;
}

/**
 * The unit word at `at`. One letter is a unit only in its usual case ("T" is a tablespoon, "t" a teaspoon), "in"
 * only glued to its number or before a piece, since it is far more often a preposition.
 */
function readUnit(
  tokens: readonly Token[],
  at: number,
  number: NumberRead | undefined,
): { unit: UnitWord; next: number } | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  const fluid = ["fl", "fluid"].includes(token.lower) ? skipDot(tokens, at + 1) : undefined;
  if (fluid !== undefined && findUnitWord(tokens[fluid]?.lower ?? "") === "ounce") {
    return { unit: "fluidOunce", next: skipDot(tokens, fluid + 1) };
  }
  const counted = number !== undefined;
  const short = counted ? SHORT.get(token.text) : undefined;
  if (short) return { unit: short, next: skipDot(tokens, at + 1) };
  const inches =
    counted && token.lower === "in" && (token.glued || findUnitWord(tokens[at + 1]?.lower ?? "") === "piece");
  const unit = inches ? "inch" : findUnitWord(token.lower);
  if (unit !== undefined) return { unit, next: skipDot(tokens, at + 1) };
  // "14-ounce-can", "2-inch-long": the word before the next hyphen is the unit.
  const [first = "", ...others] = token.lower.split("-");
  const compound = others.length > 0 && token.glued && counted ? findUnitWord(first) : undefined;
  return compound && UNIT_WORDS[compound].kind !== "pack" ? { unit: compound, next: at + 1 } : undefined;
}

const SHORT: ReadonlyMap<string, UnitWord> = new Map([
  ["T", "tablespoon"],
  ["Tb", "tablespoon"],
  ["t", "teaspoon"],
  ["c", "cup"],
  ["C", "cup"],
  ["#", "pound"],
] as const);

function skipDot(tokens: readonly Token[], at: number): number {
  return tokens[at]?.lower === "." && tokens[at]?.glued ? at + 1 : at;
}

/** Adds what belongs to the same telling: further parts, and the end of a range that has its own unit. */
function extend(tokens: readonly Token[], first: Counted): Counted {
  const sum = addParts(tokens, first);
  const to = tokens[sum.next]?.lower ?? "";
  if (sum.upTo || !["-", "to", "or"].includes(to)) return sum;
  const end = parseCounted(tokens, sum.next + 1);
  if (!end || end.inWords || !sameKind(sum.parts, end.parts) || (to === "or" && !sameUnit(sum.parts, end.parts))) {
    return sum;
  }
  const whole = addParts(tokens, end);
  return { ...sum, upTo: whole.parts, next: whole.next };
}

/** "2lb 4oz" and "1 kg 200 g": a smaller unit of the same kind straight after; "1 cup plus 2 tablespoons". */
function addParts(tokens: readonly Token[], first: Counted): Counted {
  if (first.upTo || first.parts[0]?.value === undefined) return first;
  const joint = ["plus", "+", "and", "&"].includes(tokens[first.next]?.lower ?? "") ? 1 : 0;
  if (joint === 0 && tokens[first.next]?.kind !== "number" && tokens[first.next]?.kind !== "fraction") return first;
  const more = parseCounted(tokens, first.next + joint);
  if (!more || more.inWords || more.upTo || !sameKind(first.parts, more.parts)) return first;
  if (joint === 0 && systemOf(first.parts) !== systemOf(more.parts)) return first;
  return { ...first, parts: [...first.parts, ...more.parts], next: more.next };
}

const unitOf = (parts: readonly MeasurePart[]) => parts[0]?.unit;
const sameUnit = (a: readonly MeasurePart[], b: readonly MeasurePart[]) => unitOf(a) === unitOf(b);

function sameKind(a: readonly MeasurePart[], b: readonly MeasurePart[]): boolean {
  const [one, other] = [unitOf(a), unitOf(b)];
  if (one === undefined || other === undefined) return false;
  return one === other || (isMeasured(one) && UNIT_WORDS[one].kind === UNIT_WORDS[other].kind);
}

/** The system a telling belongs to; undefined where its unit belongs to none. */
export function systemOf(parts: readonly MeasurePart[]): "metric" | "customary" | undefined {
  const unit = unitOf(parts);
  return unit === undefined ? undefined : UNIT_WORDS[unit].system;
}

/** True where the unit has a size of its own, whatever it measures. */
export function isMeasured(unit: UnitWord | undefined): boolean {
  return unit !== undefined && ["mass", "volume", "length"].includes(UNIT_WORDS[unit].kind);
}
