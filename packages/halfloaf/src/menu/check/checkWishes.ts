import type { MenuProblem, MenuWish } from "../problem.ts";
import { exceeds, type PlanFault } from "./PlanFault.ts";
import type { ReadPlan } from "./readPlan.ts";

/** Wishes that must hold and do not. */
export function checkWishes({ wishes = [] }: MenuProblem, plan: ReadPlan): PlanFault[] {
  return wishes.flatMap((wish, index): PlanFault[] => {
    const { least = 0, most = Number.POSITIVE_INFINITY, missMinor } = wish;
    const count = countServings(wish, plan);
    if (missMinor !== undefined || (!exceeds(least, count) && !exceeds(count, most))) return [];
    const expected = exceeds(least, count) ? `at least ${least} servings` : `at most ${most} servings`;
    return [{ code: "wish", path: ["wishes", index], expected, received: String(count) }];
  });
}

/** What the wishes that have a price cost, each serving too few or too many at its price (minor units). */
export function priceWishes({ wishes = [] }: MenuProblem, plan: ReadPlan): number {
  return wishes.reduce((sum, wish) => {
    const { least = 0, most = Number.POSITIVE_INFINITY, missMinor = 0 } = wish;
    const count = countServings(wish, plan);
    return sum + missMinor * Math.max(0, least - count, count - most);
  }, 0);
}

function countServings({ dishes, sittings }: MenuWish, plan: ReadPlan): number {
  const counting = plan.batches.filter(({ dishIndex }) => dishes.includes(dishIndex));
  const served = counting.flatMap(({ fresh, leftovers }) => [fresh, ...leftovers]);
  return served.filter(({ index }) => sittings.includes(index)).length;
}
