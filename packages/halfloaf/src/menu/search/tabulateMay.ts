import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";

/** What a dish may be at a sitting: cooked for it, eaten there from an earlier cooking, or both. */
export const FRESH = 1;
export const LEFTOVER = 2;

/** Bits FRESH and LEFTOVER of each dish at each sitting, at `[dish * sittings + sitting]`. */
export function tabulateMay(problem: MenuProblem): Uint8Array {
  const K = problem.sittings.length;
  const may = new Uint8Array(problem.dishes.length * K);
  const isHad = tabulateSupply(problem);
  const { batchPortions } = problem.limits;
  problem.sittings.forEach((sitting, k) => {
    for (const r of sitting.dishes) {
      const dish = problem.dishes[r] as MenuDish;
      if (sitting.packed && !(dish.travels && dish.servedCold)) continue;
      const quick = dish.elapsed.fixed + dish.elapsed.perPortion * sitting.portions <= sitting.minutes + 1e-9;
      const fresh =
        quick &&
        (sitting.heat || !dish.needsHeat) &&
        sitting.portions <= batchPortions + 1e-9 &&
        dish.makings.every((m) => isHad(m.food, m.massG * sitting.portions, sitting));
      const leftover = dish.servedCold || (sitting.heat && !sitting.packed);
      may[r * K + k] = (fresh ? FRESH : 0) | (leftover ? LEFTOVER : 0);
    }
  });
  return may;
}

/** Whether so many grams of a food can be there for a sitting at all: from the stores, or from any trip before it. */
function tabulateSupply(problem: MenuProblem): (food: number, massG: number, sitting: MenuSitting) => boolean {
  const firstTrip = problem.foods.map(() => Infinity);
  for (const { food, shop, fromDay, toDay } of problem.packs) {
    for (const trip of problem.trips) {
      const sold = trip.shop === shop && trip.day >= fromDay && trip.day <= toDay;
      if (sold && trip.period < (firstTrip[food] as number)) firstTrip[food] = trip.period;
    }
  }
  const lotsOf = problem.foods.map((_, food) => problem.lots.filter((lot) => lot.food === food));
  return (food, massG, { period, day }) => {
    if ((firstTrip[food] as number) <= period) return true;
    const good = (lotsOf[food] ?? []).filter(({ fromPeriod = 0, lastDay }) => fromPeriod <= period && lastDay >= day);
    const stockG = good.reduce((sum, lot) => sum + lot.massG, 0);
    return stockG >= massG - 1e-6;
  };
}
