import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { Annealing, type Sketch } from "../search/Annealing.ts";
import { decodePlan } from "../search/decodePlan.ts";
import { FIRST_PENALTIES, type Penalties } from "../search/Penalties.ts";
import { reckonLoads } from "../search/reckonLoads.ts";
import { WeekState } from "../search/WeekState.ts";

/** A plan without fault and its money as `checkPlan` reckons it, in minor units. */
export interface FoundPlan {
  readonly plan: MenuPlan;
  readonly moneyMinor: number;
}

/** What a short search is told. */
export interface SearchWish {
  /** Menu to begin from; it need not keep the limits, nor serve every sitting. Absent: one drawn by lot. */
  readonly start?: Pick<MenuPlan, "batches" | "trips">;
  /** Moves to make. */
  readonly moves: number;
  readonly seed: number;
  /** Limits that may be gone beyond, by their price in minor units for each unit. */
  readonly elastic?: Partial<Penalties>;
  /** How much more than usual the limits weigh that are kept; they must outweigh elastic ones of a high price. */
  readonly weight?: number;
  /** Money of such a plan, where it is known (minor units); moves are proposed in its measure. */
  readonly typicalMinor?: number;
  /** Ends with the first plan that keeps the limits, where all that counts is whether there is one. */
  readonly untilFound?: boolean;
}

/** What a short search came to. */
export interface SearchAnswer {
  /** Best menu that keeps the limits (the elastic ones apart); absent where none was found. */
  readonly best?: MenuPlan;
  /** What the search makes it cost, prices of elastic limits included (minor units). */
  readonly costMinor: number;
  /** The menu that came nearest, while none kept the limits. */
  readonly nearest?: MenuPlan;
  readonly moves: number;
}

/** Moves after which limits not kept yet weigh more. */
const ROUND = 2000;
/** Temperatures at the beginning and the end, for a week of 55.00. */
const HOT_MINOR = 30;
const HOT_ANEW_MINOR = 80;
const COLD_MINOR = 4;
const USUAL_MINOR = 5500;

/**
 * Searches a little around a known menu: one fall of temperature, counted moves, the same answer every time. Where no
 * menu keeps the limits after some thousand moves, broken limits weigh ever more.
 */
export function searchAgain(problem: MenuProblem, wish: SearchWish): SearchAnswer {
  const { elastic = {}, weight = 1 } = wish;
  const bent = wish.elastic && { ...allOf(() => 0), ...elastic };
  const state = new WeekState(problem, hardened(elastic, weight), bent);
  const annealing = new Annealing(problem, state, wish.seed, {
    accepts: (now) => carriesAll(problem, now),
    mostTrips: "trip" in elastic ? problem.trips.length : problem.limits.maxTrips,
    penalties: hardened(elastic, 1),
  });
  const gap = annealing.candidates.at.some((dishes) => dishes.length === 0);
  if (gap) return { costMinor: Number.POSITIVE_INFINITY, moves: 0 };
  if (wish.start) annealing.resume(toSketch(problem, state, wish.start));
  else {
    state.toggleTrips(...spreadTrips(problem));
    annealing.restart(() => 0);
  }
  const scale = Math.max(1, wish.typicalMinor ?? state.total() - state.violation) / USUAL_MINOR;
  const hot = wish.start ? HOT_MINOR : HOT_ANEW_MINOR;
  const at = (done: number): number => scale * hot * (COLD_MINOR / hot) ** (done / wish.moves);
  for (let done = 0; done < wish.moves; done += ROUND) {
    if (wish.untilFound && annealing.best) break;
    if (done > 0 && !annealing.best) {
      state.setPenalties(hardened(elastic, weight * Math.min(16, 1 + done / ROUND)));
      annealing.weighAnew();
    }
    const count = Math.min(ROUND, wish.moves - done);
    annealing.run(count, at(done), at(done + count));
  }
  const { best, leastBroken, moves } = annealing;
  return {
    ...(best && { best: writeDown(annealing, best) }),
    costMinor: best?.costMinor ?? Number.POSITIVE_INFINITY,
    ...(!best && leastBroken && { nearest: writeDown(annealing, leastBroken) }),
    moves,
  };
}

function allOf(value: (name: keyof Penalties) => number): Penalties {
  const names = Object.keys(FIRST_PENALTIES) as (keyof Penalties)[];
  return Object.fromEntries(names.map((name) => [name, value(name)])) as unknown as Penalties;
}

function hardened(elastic: Partial<Penalties>, factor: number): Penalties {
  return allOf((name) => (name in elastic ? 0 : FIRST_PENALTIES[name] * factor));
}

/** As many trips as are allowed, evenly over those that could be made. */
function spreadTrips({ trips, limits }: MenuProblem): number[] {
  const count = Math.min(trips.length, limits.maxTrips);
  return Array.from({ length: count }, (_, at) => Math.floor((at * trips.length) / count));
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

function writeDown(annealing: Annealing, sketch: Sketch): MenuPlan {
  annealing.resume(sketch);
  return decodePlan(annealing.state);
}

/** True if the plan of this state can be carried home and put away. */
function carriesAll(problem: MenuProblem, state: WeekState): boolean {
  const { fridgeLitres, freezerLitres } = problem.limits;
  const isFree =
    fridgeLitres === undefined &&
    freezerLitres === undefined &&
    problem.trips.every(({ carryG }) => carryG === undefined);
  return isFree || reckonLoads(problem, decodePlan(state)).length === 0;
}
