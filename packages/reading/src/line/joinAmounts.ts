import { roleOf } from "./describe.ts";
import type { MakingsAmount, Measure } from "./makingsLine.ts";
import { isMeasured } from "./parseMeasure.ts";
import type { Token } from "./tokenise.ts";
import { UNIT_WORDS } from "./unitWords.ts";

const SHARES = new Set(["each", "apiece"]);
const TOTALS = new Set(["total", "altogether", "all", "about", "weight", "in"]);

/**
 * Joins an amount told beside the name ("4 onions (about 1 1/2 pounds)", "2 tins, 400 g each") to the one before
 * the name. `rest` are the words after it. Undefined where they name something else, or where it is a length: that
 * is how large pieces are cut.
 */
export function joinAmounts(
  before: MakingsAmount | undefined,
  told: MakingsAmount,
  rest: readonly Token[],
): MakingsAmount | undefined {
  const unit = told.told[0]?.parts[0]?.unit;
  if (unit !== undefined && UNIT_WORDS[unit].kind === "length") return undefined;
  if (!rest.every((token, at) => isSaidOfAmount(token, rest, at))) return undefined;
  if (!before) return told.told[0]?.inWords ? undefined : told;
  const first = before.told[0] as Measure;
  const counted = !isMeasured(first.parts[0]?.unit);
  const pack = first.parts[0]?.unit !== undefined && UNIT_WORDS[first.parts[0].unit].kind === "pack";
  const shared = rest.some(({ lower }) => SHARES.has(lower));
  const span = { start: Math.min(before.span.start, told.span.start), end: Math.max(before.span.end, told.span.end) };
  if (counted && isMeasured(unit) && (shared || pack) && before.each.length === 0)
    return { ...before, each: told.told, span };
  const open =
    counted && (first.parts[0]?.value ?? 1) > 1 && !told.approximate && !rest.some(({ lower }) => TOTALS.has(lower));
  const doubt = open ? ({ sure: "guess", reason: "each-or-total" } as const) : {};
  return { ...before, told: [...before.told, ...told.told], span, ...doubt };
}

function isSaidOfAmount(token: Token, rest: readonly Token[], at: number): boolean {
  return token.kind === "mark" || SHARES.has(token.lower) || TOTALS.has(token.lower) || roleOf(rest, at) !== "name";
}
