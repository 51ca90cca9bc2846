import { type Amount, toMassG, toVolumeMl, type UnitCode } from "halfloaf/quantity";
import { LIQUIDS } from "./lineWords.ts";
import type { MakingsAmount, MakingsChoice, MakingsLine, Measure, MeasurePart } from "./makingsLine.ts";
import type { Sureness } from "./told.ts";
import { UNIT_WORDS, type UnitWord } from "./unitWords.ts";

/** The English that a line is written in; decides how large a spoon, a cup and a pint are. */
export type English = "british" | "american";

/** An amount of the library and how sure it is; without `amount` the line gives none that can be weighed. */
export interface ConvertedAmount {
  readonly amount?: Amount;
  readonly sure: Sureness;
  /** Why it is less than sure, or why there is none. */
  readonly reason?: string;
}

/**
 * The amount of a choice as the library writes it.
 *
 * Of several tellings a mass counts before a volume, a volume before pieces; sized packs become what they hold; sums
 * become their first unit; a stick of a fat is a quarter of a pound. Ounces of a liquid are taken as fluid ounces, as likely.
 * Everything else counts pieces, with size or unit as the size ("clove", "large"). "to taste" is an amount of its own.
 * **Source** of the stick: common practice in the United States, printed on its wrapper, no table.
 */
export function toAmount(line: Pick<MakingsLine, "toTaste">, choice: MakingsChoice, english: English): ConvertedAmount {
  const { amount } = choice;
  if (!amount) return line.toTaste ? { amount: "to-taste", sure: "sure" } : { sure: "guess", reason: "no-amount" };
  const liquid = choice.name.text
    .toLowerCase()
    .split(/[\s-]+/)
    .some((word) => LIQUIDS.has(word));
  const scale: Scale = { english, liquid, volumeTold: [...amount.told, ...amount.each].some(isVolume) };
  const ways = [...amount.told.map((told) => convert(told, scale)), ...convertPacks(amount, scale)].filter(isSome);
  const best = ways.find(({ kind }) => kind === "mass") ?? ways[0];
  if (best) return withDoubt(amount, { amount: best.amount, ...best.doubt });
  return withDoubt(amount, countPieces(amount, choice));
}

interface Scale {
  readonly english: English;
  readonly liquid: boolean;
  readonly volumeTold: boolean;
}

interface Doubt {
  readonly sure: Sureness;
  readonly reason?: string;
}

interface Way {
  readonly kind: "mass" | "volume";
  readonly amount: Amount;
  readonly doubt: Doubt;
}

const SURE: Doubt = { sure: "sure" };
const isSome = (way: Way | undefined): way is Way => way !== undefined;
const isVolume = ({ parts }: Measure) => parts[0]?.unit !== undefined && UNIT_WORDS[parts[0].unit].kind === "volume";

/** One telling as a mass or volume; undefined where its unit is neither. */
function convert(measure: Measure, scale: Scale, times = 1): Way | undefined {
  const first = measure.parts[0]?.unit;
  const unit = first && codeOf(first, scale);
  if (!first || !unit) return undefined;
  const low = sum(measure.parts, unit.code, scale);
  const high = measure.upTo ? sum(measure.upTo, unit.code, scale) : low;
  if (low === undefined || high === undefined || low <= 0) return undefined;
  const kind = toMassG(1, unit.code) === undefined ? "volume" : "mass";
  const [from, to] = [low * times, high * times];
  return { kind, amount: writeRange(from, to, unit.code), doubt: unit.doubt };
}

const writeRange = (from: number, to: number, unit: UnitCode): Amount =>
  from === to ? { value: round(from), unit } : { from: round(from), to: round(to), unit };

// Sums and products of binary fractions carry noise far below what any scale shows.
const round = (value: number) => Number(value.toPrecision(12));

interface Code {
  readonly code: UnitCode;
  readonly doubt: Doubt;
}

function codeOf(unit: UnitWord, { english, liquid, volumeTold }: Scale): Code | undefined {
  if (unit === "ounce" && (volumeTold || liquid)) {
    const code = english === "british" ? "[foz_br]" : "[foz_us]";
    return { code, doubt: { sure: "likely", reason: "ounces-of-liquid" } };
  }
  const code = UNIT_WORDS[unit].code?.[english];
  if (code === undefined) return undefined;
  const cup = unit === "cup" && english === "british";
  return { code, doubt: cup ? { sure: "likely", reason: "size-of-cup" } : SURE };
}

/** The sum of parts in one unit; undefined where a part has no number or measures something else. */
function sum(parts: readonly MeasurePart[], code: UnitCode, scale: Scale): number | undefined {
  let total = 0;
  for (const { value, unit } of parts) {
    const own = unit && codeOf(unit, scale)?.code;
    const size = own && (toMassG(1, code) === undefined ? toVolumeMl : toMassG)(1, own);
    const whole = (toMassG(1, code) === undefined ? toVolumeMl : toMassG)(1, code);
    if (value === undefined || size === undefined || whole === undefined) return undefined;
    total += own === code ? value : (value * size) / whole;
  }
  return total;
}

/** What packs hold together: "2 x 400 g" is 800 g. A pack without a number is one. */
function convertPacks({ told, each }: MakingsAmount, scale: Scale): (Way | undefined)[] {
  const [count] = told;
  const { value, unit } = count?.parts[0] ?? {};
  if (count?.upTo || (unit !== undefined && UNIT_WORDS[unit].code)) return [];
  return each.map((size) => convert(size, scale, value ?? 1));
}

const STICK_OZ = 4;
const FATS = new Set(["butter", "margarine", "lard", "shortening", "spread"]);

/** Pieces of the food, their unit or size as the library's size; none without a number. */
function countPieces(amount: MakingsAmount, choice: MakingsChoice): ConvertedAmount {
  const measure = amount.told[0];
  const { value, unit } = measure?.parts[0] ?? {};
  const high = measure?.upTo?.[0]?.value ?? value;
  if (value === undefined || high === undefined) return { sure: "guess", reason: "no-number" };
  if (value <= 0) return { sure: "guess", reason: "not-above-zero" };
  if (unit !== undefined && UNIT_WORDS[unit].kind === "length") return { sure: "guess", reason: "length" };
  if (
    unit === "stick" &&
    choice.name.text
      .toLowerCase()
      .split(" ")
      .some((word) => FATS.has(word))
  ) {
    const reason = { sure: "likely", reason: "stick-of-fat" } as const;
    return { amount: writeRange(value * STICK_OZ, high * STICK_OZ, "[oz_av]"), ...reason };
  }
  const size = unit ?? choice.size?.text.toLowerCase();
  const piece = { unit: "piece" as const, ...(size === undefined ? {} : { size }) };
  const pieces = high === value ? { value, ...piece } : { from: value, to: high, ...piece };
  return { amount: pieces, sure: "sure" };
}

const ORDER: readonly Sureness[] = ["sure", "likely", "guess"];

/** No conversion is surer than the reading it comes from. */
function withDoubt(amount: MakingsAmount, converted: ConvertedAmount): ConvertedAmount {
  if (ORDER.indexOf(converted.sure) >= ORDER.indexOf(amount.sure)) return converted;
  return { ...converted, sure: amount.sure, ...(amount.reason ? { reason: amount.reason } : {}) };
}
