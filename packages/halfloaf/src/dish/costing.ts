import type { FoodTable } from "../food/index.ts";
import type { UnitPrice } from "../price/index.ts";
import { splitByLargestRemainder } from "../quantity/index.ts";
import {
  asWritten,
  type Choose,
  isKnown,
  isUnknown,
  type KnownAmount,
  type Mass,
  makingsOf,
  type UnknownAmount,
} from "./amounts.ts";
import type { Dish } from "./dish.ts";

/** One making on the costing card; masses in g for all portions of the card. */
export interface CostingLine {
  /** Position in `dish.makings`. */
  readonly at: number;
  readonly food: string;
  readonly edibleG: Mass;
  readonly purchasedG: Mass;
  /** What is bought but not eaten, at the middle of the amount. */
  readonly refuseG: number;
  /** Its part of the total in whole minor units; undefined where no price is known. */
  readonly costMinor: number | undefined;
  /** True where the price was never seen; absent where none is known. */
  readonly estimate?: boolean;
}

/** What so many portions of a dish cost in what they use up. Money in minor units. */
export interface CostingCard {
  readonly portions: number;
  /** Yield: cooked mass of a portion in g, as the dish states it. */
  readonly portionMassG: number;
  readonly lines: readonly CostingLine[];
  /** Makings whose amount is not known, so that they cost something the total does not hold. */
  readonly unknown: readonly UnknownAmount[];
  /** Foods whose price is not known, each once. */
  readonly unpriced: readonly string[];
  /** Exactly the sum of the lines. */
  readonly totalMinor: number;
  /** What each portion costs in whole minor units, the dearest first; together they make the total. */
  readonly platesMinor: readonly number[];
  /** True where an amount or a price is not known: the total then is the least it costs. */
  readonly atLeast: boolean;
  /** True where any price in the total was never seen. */
  readonly estimate: boolean;
}

/** How many portions, the dish's own number by default, and what is chosen for its makings. */
export interface CostingOptions {
  readonly portions?: number;
  readonly choose?: Choose;
}

/**
 * The costing card of a dish: what its makings cost by their mass as purchased, at the middle of an amount given as a
 * range. The total is rounded once, and the lines are its parts by largest remainder, so that they add up as printed.
 * Throws where the number of portions is no whole number of 1 or more.
 */
export function costingCard(
  dish: Pick<Dish, "makings" | "portions" | "portionMassG">,
  foods: FoodTable,
  prices: ReadonlyMap<string, UnitPrice>,
  { portions = dish.portions, choose = asWritten }: CostingOptions = {},
): CostingCard {
  if (!Number.isSafeInteger(portions) || portions < 1) throw new RangeError(`${portions} is no number of portions`);
  const amounts = makingsOf(dish, foods, choose);
  const known = amounts.filter(isKnown).map((amount) => scale(amount, portions));
  const unknown = amounts.filter(isUnknown);
  const priced = known.filter(({ food }) => prices.has(food));
  const costs = priced.map(({ food, purchasedG }) => purchasedG.middle * (prices.get(food) as UnitPrice).minorPerG);
  const totalMinor = Math.round(costs.reduce((sum, cost) => sum + cost, 0));
  // Without a priced line there is nothing to split and the total is 0, which `atLeast` then qualifies.
  const parts = new Map(splitByLargestRemainder(totalMinor, costs).map((part, place) => [priced[place]?.at, part]));
  const unpriced = [...new Set(known.map(({ food }) => food))].filter((food) => !prices.has(food));
  return {
    portions,
    portionMassG: dish.portionMassG,
    lines: known.map((amount) => toLine(amount, parts.get(amount.at), prices.get(amount.food))),
    unknown,
    unpriced,
    totalMinor,
    platesMinor: splitByLargestRemainder(
      totalMinor,
      Array.from({ length: portions }, () => 1),
    ),
    atLeast: unknown.length > 0 || unpriced.length > 0,
    estimate: priced.some(({ food }) => prices.get(food)?.estimate),
  };
}

function scale(amount: KnownAmount, portions: number): KnownAmount {
  const times = ({ low, high, middle }: Mass) => ({
    low: low * portions,
    high: high * portions,
    middle: middle * portions,
  });
  return { ...amount, edibleG: times(amount.edibleG), purchasedG: times(amount.purchasedG) };
}

function toLine(
  { at, food, edibleG, purchasedG }: KnownAmount,
  costMinor: number | undefined,
  price: UnitPrice | undefined,
): CostingLine {
  const line = { at, food, edibleG, purchasedG, refuseG: purchasedG.middle - edibleG.middle, costMinor };
  return price === undefined ? line : { ...line, estimate: price.estimate };
}
