import type { Amount } from "./amount.ts";
import type { UnitCode } from "./unit.ts";

/** Least and most of an amount in its unit; both are equal where the amount is no range. */
export interface AmountBounds {
  readonly low: number;
  readonly high: number;
  readonly unit: UnitCode | "piece";
  /** The size named for pieces; absent means the food's first size, or that the unit is no piece. */
  readonly size?: string;
}

/** The bounds of an amount; undefined for "to taste", which has none. A range written backwards is turned round. */
export function amountBounds(amount: Amount): AmountBounds | undefined {
  if (amount === "to-taste") return undefined;
  const [from, to] = "value" in amount ? [amount.value, amount.value] : [amount.from, amount.to];
  const bounds = { low: Math.min(from, to), high: Math.max(from, to), unit: amount.unit };
  return "size" in amount && amount.size !== undefined ? { ...bounds, size: amount.size } : bounds;
}
