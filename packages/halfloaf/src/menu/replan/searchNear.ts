import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { Annealing, type Sketch } from "../search/Annealing.ts";
import { FIRST_PENALTIES } from "../search/Penalties.ts";
import { WeekState } from "../search/WeekState.ts";
import { isCarried } from "./isCarried.ts";
import { MenuBoard } from "./MenuBoard.ts";

/** What a search near a menu came to. */
export interface NearSearch {
  /** The best plan that keeps all limits; absent where none was found. */
  readonly plan?: MenuPlan;
  /** The plan that breaks them least, while none keeps them. */
  readonly leastBroken?: MenuPlan;
  /** Sittings without any dish; nothing was searched then. */
  readonly gaps: readonly number[];
  readonly moves: number;
}

/** Temperatures in minor units for a week of 55.00: how far the search strays from the menu, and where it comes to rest. */
const HOT = 25;
const COLD = 3;
const ROUNDS = 2;

/** The plan where nobody eats any more. */
const NOTHING: MenuPlan = { batches: [], trips: [], purchases: [], uses: [] };

/**
 * Searches around a menu: rounds of annealing that each begin at the best so far, and the first at the menu itself, so
 * that little moves that need not. The same input gives the same plan.
 */
export function searchNear(
  problem: MenuProblem,
  menu: Pick<MenuPlan, "batches" | "trips">,
  { seed, moves, weekMinor }: { readonly seed: number; readonly moves: number; readonly weekMinor: number },
): NearSearch {
  if (problem.sittings.length === 0) return { plan: NOTHING, gaps: [], moves: 0 };
  const state = new WeekState(problem);
  const accepts = (now: WeekState): boolean => isCarried(problem, now);
  const { maxTrips: mostTrips } = problem.limits;
  const annealing = new Annealing(problem, state, seed, { accepts, mostTrips, penalties: FIRST_PENALTIES });
  const gaps = annealing.candidates.at.flatMap((dishes, k) => (dishes.length === 0 ? [k] : []));
  if (gaps.length > 0) return { gaps, moves: 0 };
  const scale = Math.max(1, weekMinor) / 5500;
  const count = Math.ceil(moves / ROUNDS);
  annealing.resume(toSketch(problem, state, menu));
  for (let round = 0; round < ROUNDS; round++) {
    if (annealing.best) annealing.resume(annealing.best);
    annealing.run(count, (HOT * scale) / (1 + round), COLD * scale);
  }
  const [best, broken] = [annealing.best, annealing.leastBroken].map((sketch) => sketch && toPlan(problem, sketch));
  return { gaps, moves: annealing.moves, ...(best ? { plan: best } : broken && { leastBroken: broken }) };
}

function toSketch(
  problem: MenuProblem,
  state: WeekState,
  { batches, trips }: Pick<MenuPlan, "batches" | "trips">,
): Sketch {
  const dishOf = new Int16Array(problem.sittings.length).fill(-1);
  for (const { dish, sittings } of batches) for (const k of sittings) if (state.mayServe(dish, k)) dishOf[k] = dish;
  const tripMade = new Uint8Array(problem.trips.length);
  for (const trip of trips) tripMade[trip] = 1;
  return { costMinor: Number.POSITIVE_INFINITY, dishOf, tripMade };
}

function toPlan(problem: MenuProblem, { dishOf, tripMade }: Sketch): MenuPlan {
  const batches = Array.from(dishOf).flatMap((dish, k) => (dish < 0 ? [] : [{ dish, sittings: [k] }]));
  return new MenuBoard(problem, { batches, trips: [...tripMade.keys()].filter((trip) => tripMade[trip]) }).plan();
}
