import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";
import { isWithin } from "./isWithin.ts";

/**
 * How a dish can be served over the plan, in counts. Nothing here says which day: every count is the best
 * that any plan could reach, so that limits built on it hold for all plans.
 */
export interface DishServings {
  /** Sittings it can be served at, fresh or left over; ascending. */
  readonly sittings: readonly number[];
  /** Most servings in the plan: of the sittings it can be served at, within `maxUses` and what its batches can serve. */
  readonly most: number;
  /**
   * Fewest batches for k servings, `fewestBatches[k]` for k = 0 .. most. A day has at most one batch of a dish,
   * so b batches serve at most the sum of the b best days.
   */
  readonly fewestBatches: readonly number[];
  /** Fewest standard portions in k servings, `fewestPortions[k]`. */
  readonly fewestPortions: readonly number[];
}

/** Reckons for each dish of the problem how often and in how many batches it can be served. */
export function reckonServings(problem: MenuProblem): DishServings[] {
  const isThere = tabulateAvailability(problem);
  return problem.dishes.map((dish, r) => reckonDish(problem, dish, r, isThere));
}

function reckonDish(
  problem: MenuProblem,
  dish: MenuDish,
  r: number,
  isThere: (food: number, period: number) => boolean,
): DishServings {
  const offered = problem.sittings.flatMap((sitting, k) =>
    sitting.dishes.includes(r) && mayTravel(dish, sitting) ? [k] : [],
  );
  const cookable = offered.filter(
    (k) =>
      canCook(problem, dish, k) &&
      dish.makings.every(({ food, massG }) => massG <= 0 || isThere(food, sittingAt(problem, k).period)),
  );
  const servable = new Set<number>(cookable);
  const bestOfDay = new Map<number, number>();
  for (const k of cookable) {
    const joining = listJoining(problem, dish, k, offered);
    for (const later of joining) servable.add(later);
    const { day } = sittingAt(problem, k);
    bestOfDay.set(day, Math.max(bestOfDay.get(day) ?? 0, 1 + countJoining(problem, dish, k, joining)));
  }
  const sittings = [...servable].sort((a, b) => a - b);
  const portions = sittings.map((k) => sittingAt(problem, k).portions).sort((a, b) => a - b);
  const fewestBatches = spreadOverDays([...bestOfDay.values()], Math.min(Math.floor(dish.maxUses), sittings.length));
  const most = fewestBatches.length - 1;
  return { sittings, most, fewestBatches, fewestPortions: sumUp(portions, most) };
}

function sittingAt(problem: MenuProblem, k: number): MenuSitting {
  return problem.sittings[k] as MenuSitting;
}

function mayTravel(dish: MenuDish, sitting: MenuSitting): boolean {
  return !sitting.packed || (dish.travels && dish.servedCold);
}

function canCook(problem: MenuProblem, dish: MenuDish, k: number): boolean {
  const sitting = sittingAt(problem, k);
  return (!dish.needsHeat || sitting.heat) && fitsPot(problem, dish, sitting, sitting.portions);
}

function fitsPot(problem: MenuProblem, dish: MenuDish, cooked: MenuSitting, portions: number): boolean {
  const elapsed = dish.elapsed.fixed + dish.elapsed.perPortion * portions;
  return isWithin(elapsed, cooked.minutes) && isWithin(portions, problem.limits.batchPortions);
}

/** Later sittings that a batch cooked for sitting `k` could also serve, each taken by itself. */
function listJoining(problem: MenuProblem, dish: MenuDish, k: number, offered: readonly number[]): number[] {
  const cooked = sittingAt(problem, k);
  return offered.filter((later) => {
    if (later <= k) return false;
    const { day, portions, heat, packed } = sittingAt(problem, later);
    const keeps = day >= cooked.day && day <= cooked.day + dish.keepsDays;
    const warm = dish.servedCold || (heat && !packed);
    return keeps && warm && fitsPot(problem, dish, cooked, cooked.portions + portions);
  });
}

/** Most of them in one batch: the smallest first. */
function countJoining(problem: MenuProblem, dish: MenuDish, k: number, joining: readonly number[]): number {
  const cooked = sittingAt(problem, k);
  let total = cooked.portions;
  let count = 0;
  for (const portions of joining.map((later) => sittingAt(problem, later).portions).sort((a, b) => a - b)) {
    total += portions;
    if (!fitsPot(problem, dish, cooked, total)) break;
    count++;
  }
  return count;
}

function spreadOverDays(bestOfDay: number[], most: number): number[] {
  const days = bestOfDay.sort((a, b) => b - a);
  const fewest = [0];
  let reach = 0;
  for (let batches = 1; fewest.length <= most && batches <= days.length; batches++) {
    reach += days[batches - 1] as number;
    while (fewest.length <= Math.min(most, reach)) fewest.push(batches);
  }
  return fewest;
}

function sumUp(ascending: readonly number[], most: number): number[] {
  const sums = [0];
  for (let k = 1; k <= most; k++) sums.push((sums[k - 1] as number) + (ascending[k - 1] as number));
  return sums;
}

/** Whether some trip or lot could have the food in the stores in a period. */
function tabulateAvailability(problem: MenuProblem): (food: number, period: number) => boolean {
  const periods = problem.periodDay.length;
  const there = new Uint8Array(problem.foods.length * periods);
  const mark = (food: number, fromPeriod: number, lastDay: number): void => {
    for (let period = fromPeriod; period < periods; period++) {
      if ((problem.periodDay[period] as number) <= lastDay) there[food * periods + period] = 1;
    }
  };
  for (const { food, massG, fromPeriod = 0, lastDay } of problem.lots) if (massG > 0) mark(food, fromPeriod, lastDay);
  for (const pack of problem.packs) {
    const unopenedDays = pack.unopenedDays ?? (problem.foods[pack.food]?.unopenedDays as number);
    for (const trip of problem.trips) {
      const sold = trip.shop === pack.shop && trip.day >= pack.fromDay && trip.day <= pack.toDay && pack.limit >= 1;
      if (sold) mark(pack.food, trip.period, trip.day + unopenedDays);
    }
  }
  return (food, period) => there[food * periods + period] === 1;
}
