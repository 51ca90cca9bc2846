import type { MakingsAmount, Measure } from "./makingsLine.ts";
import { isMeasured, parseMeasure, systemOf } from "./parseMeasure.ts";
import type { Token } from "./tokenise.ts";
import type { Sureness } from "./told.ts";
import { findUnitWord, UNIT_WORDS, type UnitWord } from "./unitWords.ts";

/** An amount and the position of the token after it. */
export interface AmountRead {
  readonly amount: MakingsAmount;
  readonly next: number;
}

/** Parts of a food whose own size may be told before them: "5cm piece", "200g block". */
const SIZED_PARTS = new Set<UnitWord>(
  "piece block ball bar slab chunk slice stick sheet loaf cube knob fillet strip lump".split(" ") as UnitWord[],
);

/**
 * Reads an amount at `at`, with everything that tells the same amount again and with what each pack holds:
 * "150g/5oz", "2 x 400 g tins", "1 (8 ounce) package", "5cm/2in piece". Undefined where none stands there.
 */
export function parseAmount(tokens: readonly Token[], at: number): AmountRead | undefined {
  const first = parseTellings(tokens, at);
  if (!first) return undefined;
  const measure = first.told[0] as Measure;
  const unit = measure.parts[0]?.unit;
  if (unit === undefined) return parsePacks(tokens, at, first) ?? finish(tokens, at, first, []);
  if (isMeasured(unit)) return parseSized(tokens, at, first) ?? finish(tokens, at, first, []);
  const each = parseSizeAfter(tokens, first.next, unit);
  return each ? finish(tokens, at, { ...first, next: each.next }, each.told) : finish(tokens, at, first, []);
}

interface Tellings {
  readonly told: readonly Measure[];
  readonly approximate: boolean;
  readonly next: number;
}

/** One amount told once or more: after a slash, in brackets, after "or", or in the other system straight after. */
function parseTellings(tokens: readonly Token[], at: number): Tellings | undefined {
  const first = parseMeasure(tokens, at);
  if (!first) return undefined;
  let next = first.next;
  const told: Measure[] = [first.measure];
  for (;;) {
    const again = parseAgain(tokens, next, told);
    if (!again) return { told, approximate: first.approximate, next };
    told.push(...again.told);
    next = again.next;
  }
}

function parseAgain(
  tokens: readonly Token[],
  at: number,
  told: readonly Measure[],
): Omit<Tellings, "approximate"> | undefined {
  const first = told[0] as Measure;
  const unit = first.parts[0]?.unit;
  if (unit === undefined) return undefined;
  const mark = tokens[at]?.lower ?? "";
  if (mark === "(" && (isMeasured(unit) || unit === "stick")) return parseBracketed(tokens, at);
  const joint = mark === "/" || mark === "or" ? 1 : 0;
  if (joint === 0 && tokens[at]?.kind !== "number" && tokens[at]?.kind !== "fraction") return undefined;
  const again = parseMeasure(tokens, at + joint);
  if (!again || !isMeasured(again.measure.parts[0]?.unit) || again.measure.inWords) return undefined;
  const other = systemOf(again.measure.parts) !== systemOf(first.parts);
  if (mark !== "/" && !other) return undefined;
  return { told: [again.measure], next: again.next };
}

/** Tellings alone in brackets: "(5 oz)", "(about 150 g/5 oz)". */
function parseBracketed(tokens: readonly Token[], at: number): Tellings | undefined {
  const inside = parseTellings(tokens, at + 1);
  if (!inside || (!isMeasured(inside.told[0]?.parts[0]?.unit) && inside.told[0]?.parts[0]?.unit !== "stick"))
    return undefined;
  const close = ["each", "apiece", "total"].includes(tokens[inside.next]?.lower ?? "") ? inside.next + 1 : inside.next;
  return tokens[close]?.lower === ")" ? { ...inside, next: close + 1 } : undefined;
}

/**
 * A count and what each of the counted holds: "2 x 400g tins", "1 14-ounce can", "1 (8 ounce) package", "4 (6 oz)
 * fillets". "1 - 14 oz can" is a count and a size too: a range so wide is none.
 */
function parsePacks(tokens: readonly Token[], at: number, count: Tellings): AmountRead | undefined {
  const measure = count.told[0] as Measure;
  const mark = tokens[count.next]?.lower ?? "";
  const times = ["x", "*"].includes(mark);
  if (mark === "(") {
    const size = parseBracketed(tokens, count.next);
    return size && withUnit(tokens, at, count, measure, size);
  }
  const from = times || (mark === "-" && !tokens[count.next]?.glued) ? count.next + 1 : count.next;
  const size = parseTellings(tokens, from);
  if (size && isMeasured(size.told[0]?.parts[0]?.unit) && !size.told[0]?.inWords) {
    return withUnit(tokens, at, count, measure, size);
  }
  if (!times) return undefined;
  // "2 x tins" and "2 x onions" count without saying how much each holds.
  const unit = findUnitWord(tokens[from]?.lower ?? "");
  if (unit === undefined) return finish(tokens, at, { ...count, next: from }, []);
  return finish(tokens, at, { ...count, told: [setUnit(measure, unit)], next: from + 1 }, []);
}

/** Joins count and size, and takes the pack or part after them as the unit of the count. */
function withUnit(tokens: readonly Token[], at: number, count: Tellings, measure: Measure, size: Tellings): AmountRead {
  const manner = ["large", "small", "big", "medium"].includes(tokens[size.next]?.lower ?? "") ? 1 : 0;
  const unit = packAt(tokens, size.next + manner) ?? packAt(tokens, size.next);
  const next = unit === undefined ? size.next : size.next + manner + 1;
  const counted = unit === undefined ? measure : setUnit(measure, unit);
  return finish(tokens, at, { ...count, told: [counted], next }, size.told);
}

/** "400g tin", "5cm/2in piece": one pack or part of the size told before it. */
function parseSized(tokens: readonly Token[], at: number, size: Tellings): AmountRead | undefined {
  const range = splitWideRange(size);
  const unit = packAt(tokens, size.next);
  if (unit === undefined) return undefined;
  const span = { start: (tokens[at] as Token).start, end: (tokens[size.next] as Token).end };
  const implied: Measure = { parts: [{ unit }], manner: [], inWords: true, span };
  const next = size.next + 1;
  if (range) return finish(tokens, at, { ...size, told: [setUnit(range.count, unit)], next }, [range.size]);
  return finish(tokens, at, { ...size, told: [implied], next }, size.told);
}

/** "1 - 14 oz can": read as a range it would span more than threefold, so it is a count and a size. */
function splitWideRange(size: Tellings): { count: Measure; size: Measure } | undefined {
  const { upTo, ...measure } = size.told[0] as Measure;
  const [low, high] = [measure.parts[0]?.value, upTo?.[0]?.value];
  if (size.told.length > 1 || upTo === undefined || low === undefined || high === undefined) return undefined;
  if (!Number.isInteger(low) || high < 3 * low) return undefined;
  return { count: { ...measure, parts: [{ value: low }] }, size: { ...measure, parts: upTo } };
}

/** "1 can (14 oz)", "2 tins of 400 g", "1 piece (2 inches)": what the pack or part before holds. */
function parseSizeAfter(tokens: readonly Token[], at: number, unit: UnitWord): Tellings | undefined {
  const pack = UNIT_WORDS[unit].kind === "pack";
  if (!pack && unit !== "piece") return undefined;
  if (tokens[at]?.lower === "(") return parseBracketed(tokens, at);
  if (!["of", "x", "@"].includes(tokens[at]?.lower ?? "")) return undefined;
  const size = parseTellings(tokens, at + 1);
  return size && isMeasured(size.told[0]?.parts[0]?.unit) && !size.told[0]?.inWords ? size : undefined;
}

function packAt(tokens: readonly Token[], at: number): UnitWord | undefined {
  const unit = findUnitWord(tokens[at]?.lower ?? "");
  return unit !== undefined && (UNIT_WORDS[unit].kind === "pack" || SIZED_PARTS.has(unit)) ? unit : undefined;
}

function setUnit(measure: Measure, unit: UnitWord): Measure {
  const set = (parts: Measure["parts"]) => parts.map((part) => ({ ...part, unit }));
  return { ...measure, parts: set(measure.parts), ...(measure.upTo ? { upTo: set(measure.upTo) } : {}) };
}

function finish(tokens: readonly Token[], at: number, read: Tellings, each: readonly Measure[]): AmountRead {
  const { start } = tokens[at] as Token;
  const amount = { told: read.told, each, approximate: read.approximate };
  const span = { start, end: (tokens[read.next - 1] as Token).end };
  const next = tokens[read.next]?.lower === "of" ? read.next + 1 : read.next;
  return { amount: { ...amount, span, ...judge(read.told[0] as Measure, each) }, next };
}

/** A number is sure, whether in digits or in words; "400g tin" is likely one; without any, a person must look. */
function judge(measure: Measure, each: readonly Measure[]): { sure: Sureness; reason?: string } {
  const value = measure.parts[0]?.value;
  if (value === undefined && each.length > 0) return { sure: "likely", reason: "one-implied" };
  if (value === undefined) return { sure: "guess", reason: "no-number" };
  return value > 0 ? { sure: "sure" } : { sure: "guess", reason: "not-above-zero" };
}
