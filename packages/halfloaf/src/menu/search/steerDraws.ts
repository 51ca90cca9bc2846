import type { MenuProblem } from "../problem.ts";
import type { Candidates } from "./Candidates.ts";
import { reckonReducedCosts } from "./reducedCosts.ts";

/** Reduced cost at which a dish is drawn e times more rarely, for a week of 55.00. */
const STEER_MINOR = 100;
/** Share of the draws that goes by no cost. */
const EVEN_SHARE = 0.08;

/**
 * From now on dishes are drawn by their reduced costs, all others still now and then. `scale` is the money of such a week
 * over 55.00, `estimates` are those of `estimateDishes`.
 */
export function steerDraws(problem: MenuProblem, candidates: Candidates, estimates: Float64Array, scale: number): void {
  const reducedCost = reckonReducedCosts(problem, candidates.at, estimates);
  candidates.setWeights((dish, sitting) => {
    const even = EVEN_SHARE / Math.max(1, candidates.at[sitting]?.length ?? 1);
    return even + Math.exp(-Math.min(40, reducedCost(dish, sitting) / (STEER_MINOR * scale)));
  });
}

/** Money of one standard portion of each dish, at the lowest price per gram of each making, with its minutes and dislike. */
export function estimateDishes(problem: MenuProblem): Float64Array {
  const leastMinorPerG = leastPrices(problem);
  return Float64Array.from(problem.dishes, (_, r) => estimateDish(problem, r, leastMinorPerG));
}

function estimateDish(problem: MenuProblem, r: number, leastMinorPerG: Float64Array): number {
  const dish = problem.dishes[r];
  if (!dish) return 0;
  const washUpMinutes = (dish.vessels ?? 0) * (problem.worth.vesselMinutes ?? 0);
  const minutes = dish.handsOn.fixed + dish.handsOn.perPortion + washUpMinutes;
  let money = dish.dislikeMinor + problem.worth.minuteMinor * minutes;
  for (const { food, massG } of dish.makings) {
    const price = leastMinorPerG[food] as number;
    if (price < Infinity) money += massG * price;
  }
  return money;
}

/** The least that a gram of each food costs without offers; Infinity where it is not sold. */
function leastPrices({ foods, packs }: MenuProblem): Float64Array {
  const least = new Float64Array(foods.length).fill(Infinity);
  for (const { food, priceMinor, massG } of packs) least[food] = Math.min(least[food] as number, priceMinor / massG);
  return least;
}
