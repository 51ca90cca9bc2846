import type { Kitchen } from "./kitchen.ts";
import type { WeekPlan } from "./weekPlan.ts";

/** A kitchen with the lots that came besides a week among its stores, for whoever reads that week with it. */
export function stockBesides<Stocked extends Pick<Kitchen, "stores">>(
  kitchen: Stocked,
  { besides = [] }: Pick<WeekPlan, "besides">,
): Stocked {
  const there = new Set(kitchen.stores.map(({ id }) => id));
  const come = besides.flatMap(({ stock }) => (there.has(stock.id) ? [] : [stock]));
  return come.length === 0 ? kitchen : { ...kitchen, stores: [...kitchen.stores, ...come] };
}
