import type { Purchase } from "../plan.ts";
import type { MenuPack, MenuProblem } from "../problem.ts";

/** What the budget counts for some trips and purchases: fares, and packs at their high price (minor units). */
export function paidOf(
  { trips, packs }: Pick<MenuProblem, "trips" | "packs">,
  made: readonly number[],
  purchases: readonly Purchase[],
): number {
  const fares = made.reduce((sum, trip) => sum + (trips[trip]?.costMinor ?? 0), 0);
  return purchases.reduce((sum, { pack, count }) => sum + payPacks(packs[pack] as MenuPack, count), fares);
}

/** What the budget counts for so many packs: their high price. */
function payPacks({ priceMinor, highMinor = priceMinor, offer }: MenuPack, count: number): number {
  if (offer === undefined || offer.priceMinor >= offer.count * priceMinor) return count * highMinor;
  const times = Math.floor(count / offer.count);
  return times * (offer.highMinor ?? offer.priceMinor) + (count - times * offer.count) * highMinor;
}
