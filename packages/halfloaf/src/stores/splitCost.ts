import { splitByLargestRemainder } from "../quantity/index.ts";

/** Shares further from a half than this are rounded by plain arithmetic, whose error is far smaller below the limit. */
const NEAR_HALF = 1e-4;
const MOST_MINOR = 1e9;

/**
 * The part of a cost in whole minor units that falls to what is left, where the rest went: the second of two shares by
 * largest remainder. Most answers need no exact fractions, and a kitchen asks for very many.
 */
export function splitCost(costMinor: number, wentG: number, leftG: number): number {
  const share = (costMinor * leftG) / (wentG + leftG);
  const rest = share - Math.floor(share);
  const isClear = costMinor <= MOST_MINOR && Math.abs(rest - 0.5) > NEAR_HALF;
  return isClear ? Math.round(share) : (splitByLargestRemainder(costMinor, [wentG, leftG])[1] as number);
}
