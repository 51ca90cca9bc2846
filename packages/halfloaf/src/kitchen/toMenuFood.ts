import type { Food } from "../food/index.ts";
import type { MenuFood, MenuPack } from "../menu/index.ts";
import { foodLife, litresPerG, placesOf } from "./foodLife.ts";
import type { Kitchen } from "./kitchen.ts";

/** What of a stock's price is left after the plan: unopened or lasting, and opened but still good. Common practice, no source. */
const CREDIT_SHARE = { unopened: 0.9, opened: 0.4 };
/** What throwing away costs beyond the price, as a share of it. Common practice, no source. */
const WASTE_SHARE = 0.3;

/** A food as the planner sees it; its grams are worth a share of the least that one costs in these packs. */
export function toMenuFood(food: Food, kitchen: Kitchen, packs: readonly MenuPack[]): MenuFood {
  const { place, openedDays, unopenedDays } = foodLife(food, placesOf(kitchen.kit));
  // A gram kept that were worth more than one costs would make hoarding pay, so offers count too.
  const perG = packs.length > 0 ? Math.min(...packs.flatMap(pricesPerG)) : lotPricePerG(food, kitchen);
  return {
    id: food.id,
    openedDays,
    unopenedDays,
    creditMinorPerG: CREDIT_SHARE.unopened * perG,
    creditOpenedMinorPerG: CREDIT_SHARE.opened * perG,
    wasteMinorPerG: WASTE_SHARE * perG,
    ...(place !== "dry-store" && { cold: { place, litresPerG: litresPerG(food) } }),
  };
}

function pricesPerG({ priceMinor, massG, offer }: MenuPack): number[] {
  return [priceMinor / massG, ...(offer ? [offer.priceMinor / (offer.count * massG)] : [])];
}

function lotPricePerG(food: Food, kitchen: Kitchen): number {
  const lots = kitchen.stores.filter((lot) => lot.food === food.id && lot.massG > 0);
  return lots.length === 0 ? 0 : Math.min(...lots.map((lot) => lot.costMinor / lot.massG));
}
