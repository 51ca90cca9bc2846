import type { FoodTable } from "halfloaf/food";
import type { Kitchen } from "halfloaf/kitchen";
import { judgePriceAge, latestPrices, type Pack, type PriceSureness, unitPrice } from "halfloaf/price";
import type { CivilDate } from "halfloaf/quantity";

/** A pack at its latest price. */
export interface PackPrice {
  readonly pack: Pack;
  /** Minor units for a kilogram as purchased, a single pack at a time; absent where the mass is not known. */
  readonly perKgMinor?: number;
  readonly sureness: PriceSureness;
}

/** The packs of each food with their latest prices, the cheapest by weight first; those of unknown mass stand last. */
export function foodPrices(kitchen: Kitchen, foods: FoodTable, day: CivilDate): ReadonlyMap<string, PackPrice[]> {
  const byFood = new Map<string, PackPrice[]>();
  for (const priced of latestPrices(kitchen.packs, [], day).values()) {
    const { pack } = priced;
    const food = foods.get(pack.food);
    const unit = food === undefined ? undefined : unitPrice(pack, food);
    const price = { pack, sureness: judgePriceAge(priced), ...(unit?.ok && { perKgMinor: unit.perKgMinor }) };
    byFood.set(pack.food, [...(byFood.get(pack.food) ?? []), price]);
  }
  for (const prices of byFood.values()) prices.sort(byUnitPrice);
  return byFood;
}

function byUnitPrice(a: PackPrice, b: PackPrice): number {
  if (a.perKgMinor === undefined || b.perKgMinor === undefined)
    return Number(a.perKgMinor === undefined) - Number(b.perKgMinor === undefined);
  return a.perKgMinor - b.perKgMinor;
}
