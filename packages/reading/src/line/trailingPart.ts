import { TRAILING_PARTS, WHOLE_WITH_PART } from "./lineWords.ts";
import type { MakingsAmount, Measure, MeasurePart } from "./makingsLine.ts";
import type { NamedChoice } from "./readChoices.ts";
import type { Token } from "./tokenise.ts";
import { findUnitWord, UNIT_WORDS, type UnitWord } from "./unitWords.ts";

/**
 * Where pieces are counted and the name ends in a part that is counted ("2 garlic cloves", "4 thyme sprigs"), the part
 * is the unit and the words before it name the food. Foods that are such a part themselves keep it ("bay leaves").
 */
export function takeTrailingPart(
  choices: readonly NamedChoice[],
  amount: MakingsAmount | undefined,
): { choices: readonly NamedChoice[]; amount: MakingsAmount | undefined } {
  const [first, ...others] = choices;
  const name = first?.read.name ?? [];
  const last = name.at(-1)?.lower ?? "";
  const before = name.at(-2)?.lower ?? "";
  const unit = findUnitWord(last);
  const counted = amount?.told[0]?.parts[0];
  const fits = counted?.value !== undefined && counted.unit === undefined && TRAILING_PARTS.has(last);
  if (!first || !amount || unit === undefined || !fits || name.length < 2 || WHOLE_WITH_PART.has(before)) {
    return { choices, amount };
  }
  const shorter = { ...first, read: { ...first.read, name: name.slice(0, -1) } };
  return { choices: [shorter, ...others], amount: withUnit(amount, unit) };
}

/** "4 cloves, crushed": where no food follows a part, the part's word names the food itself. */
export function unitAsName(
  tokens: readonly Token[],
  at: number,
  amount: MakingsAmount | undefined,
): { name: readonly Token[]; amount: MakingsAmount } | undefined {
  const unit = amount?.told[0]?.parts[0]?.unit;
  if (!amount || unit === undefined || UNIT_WORDS[unit].kind !== "part") return undefined;
  const name = tokens.slice(Math.max(0, at - 1), at);
  if (findUnitWord(name[0]?.lower ?? "") !== unit) return undefined;
  return { name, amount: withUnit(amount, undefined) };
}

function withUnit(amount: MakingsAmount, unit: UnitWord | undefined): MakingsAmount {
  const set = (parts: readonly MeasurePart[]) =>
    parts.map(({ unit: _, ...part }): MeasurePart => (unit === undefined ? part : { ...part, unit }));
  const [first, ...others] = amount.told as readonly [Measure, ...Measure[]];
  const changed = { ...first, parts: set(first.parts), ...(first.upTo ? { upTo: set(first.upTo) } : {}) };
  return { ...amount, told: [changed, ...others] };
}
