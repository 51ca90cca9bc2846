import type { Making } from "halfloaf/dish";
import type { Formats } from "../words/Formats.ts";
import type { Further } from "../words/further/Further.ts";

/** Units of scales and jugs, read in figures; spoons, cups and pieces are counted in parts. */
const WEIGHED: ReadonlySet<string> = new Set(["mg", "g", "kg", "mL", "cL", "dL", "L"]);

/** An amount as a dish states it, so many times: "1½ tbsp", "2–3". */
export function tellAmount(
  amount: Making["amount"],
  times: number,
  further: Further<"dishes">,
  formats: Formats,
): string {
  if (amount === "to-taste") return further.dishes.toTaste;
  const isCounted = !WEIGHED.has(amount.unit);
  const number = (value: number): string =>
    isCounted ? formats.parts(value * times) : formats.number(value * times, value * times < 10 ? 2 : 0);
  const value = "value" in amount ? number(amount.value) : `${number(amount.from)}–${number(amount.to)}`;
  if (amount.unit !== "piece") return `${value} ${further.dishes.units[amount.unit]}`;
  return amount.size === undefined ? value : `${value} (${further.dishes.sizeOf(amount.size)})`;
}
