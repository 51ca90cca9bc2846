import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { Annealing, type Sketch } from "./Annealing.ts";
import type { TimeTogether } from "./CookedAtOnce.ts";
import { carriesAll } from "./carriesAll.ts";
import { decodePlan } from "./decodePlan.ts";
import { LimitWeights } from "./LimitWeights.ts";
import { FIRST_PENALTIES, LIMIT_KINDS, type Penalties } from "./Penalties.ts";
import { WeekState } from "./WeekState.ts";

/** What a local search is told once and for all. */
export interface LocalRules {
  readonly seed: number;
  /** Limits that may be gone beyond, by their price in minor units for each unit. */
  readonly elastic?: Partial<Penalties>;
  /** How much more than usual the limits weigh that are kept; they must outweigh elastic ones of a high price. */
  readonly weight?: number;
  /** Asked about what a menu cooks at once before it becomes the best; absent = what the problem knows counts. */
  readonly timeTogether?: TimeTogether;
}

/** One fall of temperature. */
export interface Fall {
  readonly moves: number;
  /** Temperatures at the beginning and the end in minor units, for a week of 55.00. */
  readonly hotMinor: number;
  readonly coldMinor: number;
  /** Money of such a plan (minor units); absent = that of the menu the search stands at. */
  readonly typicalMinor?: number;
  /** Ends with the first plan that keeps the limits, where all that counts is whether there is one. */
  readonly untilFound?: boolean;
  /** Only brings the servings there are into other orders. */
  readonly reorders?: boolean;
}

/** A menu as dishes and trips; what is bought follows. */
export type Menu = Pick<MenuPlan, "batches" | "trips">;

/** Moves after which limits weigh anew. */
const ROUND = 500;
const USUAL_MINOR = 5500;

/**
 * Short searches around known menus: falls of temperature with counted moves, the same answer every time. Limits weigh ever
 * more while they are broken, and ease once they are kept.
 */
export class LocalSearch {
  readonly problem: MenuProblem;
  readonly state: WeekState;
  private readonly annealing: Annealing;
  private readonly elastic: Partial<Penalties>;
  private readonly weights: LimitWeights;

  constructor(problem: MenuProblem, { seed, elastic, weight = 1, timeTogether }: LocalRules) {
    this.problem = problem;
    this.elastic = elastic ?? {};
    this.weights = new LimitWeights(this.harden(weight));
    const bent = elastic && { ...allOf(() => 0), ...elastic };
    this.state = new WeekState(problem, this.weights.penalties, bent);
    this.annealing = new Annealing(problem, this.state, seed, {
      accepts: (state) => carriesAll(problem, state),
      mostTrips: "trip" in this.elastic ? problem.trips.length : problem.limits.maxTrips,
      penalties: this.harden(1),
      timeTogether,
    });
  }

  /** Sittings without any dish: nothing can be searched while there is one. */
  get gaps(): number[] {
    return this.annealing.candidates.at.flatMap((dishes, k) => (dishes.length === 0 ? [k] : []));
  }

  get moves(): number {
    return this.annealing.moves;
  }

  /** Money of the best menu that keeps the limits, prices of elastic ones included; Infinity while there is none. */
  get costMinor(): number {
    return this.annealing.best?.costMinor ?? Number.POSITIVE_INFINITY;
  }

  /** Goes to a menu, which need not keep the limits; a sitting that it leaves out gets the dish that costs least there. */
  goTo(menu: Menu): void {
    this.annealing.resume(toSketch(this.problem, this.state, menu));
    const open = this.problem.sittings.flatMap((_, k) => (this.state.dishOf[k] === -1 ? [k] : []));
    for (const sitting of open) this.serve(sitting);
    if (open.length > 0) this.note();
  }

  private serve(sitting: number): void {
    const { state } = this;
    let [least, cheapest] = [Number.POSITIVE_INFINITY, -1];
    for (const dish of this.annealing.candidates.at[sitting] as readonly number[]) {
      state.change([{ sitting, dish }]);
      const cost = state.total();
      state.undo();
      if (cost < least) [least, cheapest] = [cost, dish];
    }
    state.change([{ sitting, dish: cheapest }]);
  }

  /** Goes to a menu drawn by lot, with as many trips as are allowed, evenly over those that could be made. */
  goAnywhere(): void {
    const { trips, limits } = this.problem;
    const count = Math.min(trips.length, limits.maxTrips);
    const spread = Array.from({ length: count }, (_, at) => Math.floor((at * trips.length) / count));
    this.state.toggleTrips(
      ...[...trips.keys()].filter((trip) => spread.includes(trip) !== (this.state.tripMade[trip] === 1)),
    );
    this.annealing.restart(() => 0);
  }

  /** Goes to the best menu, where there is one. */
  goToBest(): void {
    if (this.annealing.best) this.annealing.resume(this.annealing.best);
  }

  /** Takes note of the menu that `state` was brought to from outside. */
  note(): void {
    const { dishOf, tripMade } = this.state;
    this.annealing.resume({ costMinor: Number.POSITIVE_INFINITY, dishOf, tripMade });
  }

  fall({ moves, hotMinor, coldMinor, typicalMinor, untilFound = false, reorders = false }: Fall): void {
    const { annealing, state } = this;
    const scale = Math.max(1, typicalMinor ?? state.total() - state.violation) / USUAL_MINOR;
    const at = (done: number): number => scale * hotMinor * (coldMinor / hotMinor) ** (done / moves);
    for (let done = 0; done < moves; done += ROUND) {
      if (untilFound && annealing.best) break;
      if (done > 0) this.weighAnew();
      const count = Math.min(ROUND, moves - done);
      annealing.run(count, at(done), at(done + count), reorders);
    }
  }

  private weighAnew(): void {
    const { annealing, state, weights } = this;
    if (!weights.adapt((kind) => state.isBroken(kind), annealing.best !== undefined)) return;
    state.setPenalties(weights.penalties);
    annealing.weighAnew();
  }

  /** The best menu that keeps the limits (the elastic ones apart); absent while none was found. */
  best(): MenuPlan | undefined {
    return this.writeDown(this.annealing.best);
  }

  /** The menu that came nearest, while none kept the limits. */
  nearest(): MenuPlan | undefined {
    return this.annealing.best ? undefined : this.writeDown(this.annealing.leastBroken);
  }

  private writeDown(sketch: Sketch | undefined): MenuPlan | undefined {
    if (sketch === undefined) return undefined;
    this.annealing.resume(sketch);
    return decodePlan(this.state);
  }

  private harden(factor: number): Penalties {
    return allOf((name) => (name in this.elastic ? 0 : FIRST_PENALTIES[name] * factor));
  }
}

function allOf(value: (name: keyof Penalties) => number): Penalties {
  return Object.fromEntries(LIMIT_KINDS.map((name) => [name, value(name)])) as unknown as Penalties;
}

function toSketch(problem: MenuProblem, state: WeekState, { batches, trips }: Menu): Sketch {
  const dishOf = new Int16Array(problem.sittings.length).fill(-1);
  for (const { dish, sittings } of batches) for (const k of sittings) if (state.mayServe(dish, k)) dishOf[k] = dish;
  const tripMade = new Uint8Array(problem.trips.length);
  for (const trip of trips) tripMade[trip] = 1;
  return { costMinor: Number.POSITIVE_INFINITY, dishOf, tripMade };
}
