import { type CookWish, toCookWish } from "halfloaf/kitchen/record";
import type { KitchenView } from "../kitchen/KitchenSession.ts";
import { platesOf } from "../today/platesOf.ts";

/**
 * A cooking as the kitchen would book it unasked: as the accepted week planned it where it has the dish today and it is not
 * cooked yet, else one that is eaten at no sitting. Undefined where there is no such dish.
 */
export function wishFor({ state, tables, day, menu }: KitchenView, id: string, portions: number): CookWish | undefined {
  const dish = tables.dishes.find((each) => each.id === id);
  if (dish === undefined) return undefined;
  const done = [...state.cookings.values()].filter(({ on }) => on === day);
  const batch = (menu?.week.batches ?? []).findIndex(
    (each, at) =>
      each.dish === id && each.date === day && each.putBy === undefined && !done.some((cooked) => cooked.batch === at),
  );
  const planned = menu === undefined || batch < 0 ? undefined : toCookWish(menu.week, batch, dish);
  if (menu === undefined || planned?.sitting === undefined) return { dish, portions, on: day };
  return { ...planned, on: day, portions, plates: platesOf(menu.week, batch, day, planned.sitting) };
}
