import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { Annealing, type Sketch } from "./Annealing.ts";
import { carriesAll } from "./carriesAll.ts";
import { decodePlan } from "./decodePlan.ts";
import { EFFORTS } from "./efforts.ts";
import { LimitWeights } from "./LimitWeights.ts";
import { FIRST_PENALTIES, LIMIT_KINDS, type Penalties } from "./Penalties.ts";
import { estimateDishes, steerDraws } from "./steerDraws.ts";
import { WeekState } from "./WeekState.ts";

/** What the search has so far; it never ends by itself. */
export interface SearchReport {
  /** Moves made up to now. */
  readonly moves: number;
  /** Money of the best plan in minor units; absent while there is none. */
  readonly costMinor?: number;
  /** True when this report brings a better plan than the one before. */
  readonly improved: boolean;
}

/** What a search may be told besides the problem. */
export interface SearchOptions {
  /** How many moves the caller thinks to make; better known beforehand than not. */
  readonly expectedMoves?: number;
  /** A menu to begin from, such as an earlier plan; it need not keep the limits. */
  readonly start?: Pick<MenuPlan, "batches" | "trips">;
  /**
   * Limits that may be gone beyond, by their price for each unit in minor units; `checkPlan` then says by how much
   * the best plan does so. All other limits are kept.
   */
  readonly elastic?: Partial<Penalties>;
}

/** Moves between two reports. */
const CHUNK = 2000;
/** Moves of each round until there is a plan. */
const SEEKING_ROUND = 8000;
/**
 * What follows one another once there is a plan: a long fall from a new start, a refinement of the best, the best's servings in
 * other orders. Each with its share of the moves expected and its temperatures in minor units, for a week of 55.00.
 */
const PHASES = [
  { share: 0.57, isNew: true, hot: 80, cold: 4, reorders: false },
  { share: 0.33, isNew: false, hot: 30, cold: 3, reorders: false },
  { share: 0.1, isNew: false, hot: 80, cold: 3, reorders: true },
] as const;
/** Money of a week for which temperatures and penalties are made; those of dearer weeks are raised. */
const USUAL_MINOR = 5500;
const USUAL_SITTINGS = 28;
/**
 * Searches for ever better menus by annealing: quick rounds until there is a plan, one long fall from a new start among
 * dishes with small reduced costs, a refinement of the best, its servings in other orders; then the three again, each time twice as long. All the while
 * limits that stay broken weigh more and more. Reports after every few thousand moves, so that the caller can stop at
 * any time; the same seed, expected moves and number of moves give the same plan.
 */
export class MenuSearch {
  private readonly state: WeekState;
  private readonly annealing: Annealing;
  private readonly estimates: Float64Array;
  private readonly expectedMoves: number;
  private readonly startTrips: Uint8Array;
  private readonly weights: LimitWeights;
  /** Rounds begun since there is a plan. */
  private round = 0;
  /** Moves it took to come to a plan. */
  private soughtMoves = 0;
  private leftInRound = 0;
  private roundLength = 0;
  private reorders = false;
  private hot = 0;
  private cold = 0;

  private readonly problem: MenuProblem;

  private readonly options: SearchOptions;

  constructor(problem: MenuProblem, seed: number, options: SearchOptions = {}) {
    this.problem = problem;
    this.options = options;
    this.expectedMoves = options.expectedMoves ?? EFFORTS.usual;
    this.state = this.createState();
    const penalties = this.hardPenalties(1);
    const mostTrips = "trip" in (options.elastic ?? {}) ? problem.trips.length : problem.limits.maxTrips;
    const accepts = (state: WeekState): boolean => carriesAll(problem, state);
    this.annealing = new Annealing(problem, this.state, seed, { accepts, mostTrips, penalties });
    this.estimates = estimateDishes(problem);
    this.startTrips = chooseStartTrips(problem);
    this.weights = new LimitWeights(this.hardPenalties(Math.max(1, this.roughCost() / USUAL_MINOR)));
    this.state.setPenalties(this.weights.penalties);
  }

  /** Sittings for which there is no dish at all: no search can mend that. */
  get gaps(): number[] {
    return this.annealing.candidates.at.flatMap((dishes, sitting) => (dishes.length === 0 ? [sitting] : []));
  }

  /** Makes a few thousand moves. Throws where a sitting has no dish: look at `gaps` first. */
  advance(): SearchReport {
    const [gap] = this.gaps;
    if (gap !== undefined) throw new RangeError(`sitting ${gap} has no dish`);
    const before = this.annealing.best;
    if (this.leftInRound <= 0) this.beginRound();
    const count = Math.min(CHUNK, this.leftInRound);
    const at = (left: number): number => this.hot * (this.cold / this.hot) ** (1 - left / this.roundLength);
    this.annealing.run(count, at(this.leftInRound), at(this.leftInRound - count), this.reorders);
    this.leftInRound -= count;
    this.adaptWeights();
    const { best, moves } = this.annealing;
    return { moves, improved: best !== before, ...(best ? { costMinor: best.costMinor } : {}) };
  }

  private adaptWeights(): void {
    const { state, weights } = this;
    if (!weights.adapt((kind) => state.isBroken(kind), this.annealing.best !== undefined)) return;
    state.setPenalties(weights.penalties);
    this.annealing.weighAnew();
  }

  /** The best menu so far as a plan; absent while no menu keeps all limits. */
  best(): MenuPlan | undefined {
    return this.annealing.best ? this.planOf(this.annealing.best) : undefined;
  }

  /** The menu that breaks the limits least, as a plan, to say which limits could not be kept. */
  leastBroken(): MenuPlan | undefined {
    return this.annealing.leastBroken ? this.planOf(this.annealing.leastBroken) : undefined;
  }

  private planOf(sketch: Sketch): MenuPlan {
    const state = this.createState();
    state.toggleTrips(...[...sketch.tripMade.keys()].filter((trip) => sketch.tripMade[trip]));
    state.change(Array.from(sketch.dishOf, (dish, sitting) => ({ sitting, dish })));
    return decodePlan(state);
  }

  private beginRound(): void {
    const { best } = this.annealing;
    const perSitting = (best?.costMinor ?? this.roughCost()) / Math.max(1, this.problem.sittings.length);
    const scale = (perSitting * USUAL_SITTINGS) / USUAL_MINOR;
    if (!best) {
      this.beginSeeking(scale);
      return;
    }
    if (this.round === 0) {
      this.soughtMoves = this.annealing.moves;
      steerDraws(this.problem, this.annealing.candidates, this.estimates, scale);
    }
    const phase = PHASES[this.round % PHASES.length] as (typeof PHASES)[number];
    if (phase.isNew) this.startAnew();
    else this.annealing.resume(best);
    this.setRound(this.lengthOfRound(phase.share), phase.hot * scale, phase.cold * scale, phase.reorders);
    this.round++;
  }

  /** The first time from a start that is given or chosen, then hotter from where the search stands. */
  private beginSeeking(scale: number): void {
    const { start } = this.options;
    const isFirst = this.annealing.moves === 0;
    if (isFirst && start) this.annealing.resume(this.sketchOf(start));
    else if (isFirst) this.startAnew();
    this.setRound(SEEKING_ROUND, (isFirst ? (start ? 30 : 80) : 120) * scale, 8 * scale);
  }

  private setRound(length: number, hot: number, cold: number, reorders = false): void {
    this.reorders = reorders;
    this.roundLength = length;
    this.leftInRound = length;
    this.hot = hot;
    this.cold = cold;
  }

  private createState(): WeekState {
    const { elastic } = this.options;
    const bent = elastic && { ...Object.fromEntries(LIMIT_KINDS.map((kind) => [kind, 0])), ...elastic };
    return new WeekState(this.problem, this.hardPenalties(1), bent as Penalties | undefined);
  }

  private hardPenalties(factor: number): Penalties {
    const { elastic = {} } = this.options;
    const entries = Object.entries(FIRST_PENALTIES).map(([name, value]) => [
      name,
      name in elastic ? 0 : value * factor,
    ]);
    return Object.fromEntries(entries) as Penalties;
  }

  private sketchOf({ batches, trips }: Pick<MenuPlan, "batches" | "trips">): Sketch {
    const dishOf = new Int16Array(this.problem.sittings.length).fill(-1);
    for (const { dish, sittings } of batches)
      for (const k of sittings) if (this.state.mayServe(dish, k)) dishOf[k] = dish;
    const tripMade = new Uint8Array(this.problem.trips.length);
    for (const trip of trips) tripMade[trip] = 1;
    return { costMinor: Infinity, dishOf, tripMade };
  }

  private lengthOfRound(share: number): number {
    const left = Math.max(SEEKING_ROUND, this.expectedMoves - this.soughtMoves);
    return Math.ceil(2 ** Math.floor(this.round / PHASES.length) * left * share);
  }

  private startAnew(): void {
    const { state, startTrips } = this;
    state.toggleTrips(...[...startTrips.keys()].filter((trip) => state.tripMade[trip] !== startTrips[trip]));
    this.annealing.restart((dish) => this.estimates[dish] as number);
  }

  private roughCost(): number {
    const typical = median(this.estimates);
    return Math.max(1, typical * this.problem.sittings.reduce((sum, sitting) => sum + sitting.portions, 0));
  }
}

function median(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1] ?? 0;
}

/** The first trip, one near the middle, and every trip that costs nothing; within the number allowed. */
function chooseStartTrips(problem: MenuProblem): Uint8Array {
  const { trips, packs, limits, days } = problem;
  const made = new Uint8Array(trips.length);
  const variety = (shop: number): number =>
    new Set(packs.filter((pack) => pack.shop === shop).map((pack) => pack.food)).size;
  const nearest = (day: number): number => {
    const rank = (i: number): number => Math.abs((trips[i]?.day ?? 0) - day) - 0.02 * variety(trips[i]?.shop ?? 0);
    return trips.map((_, i) => i).sort((a, b) => rank(a) - rank(b))[0] ?? -1;
  };
  for (const trip of [nearest(0), nearest(Math.floor(days / 2))])
    if (trip >= 0 && count(made) < limits.maxTrips) made[trip] = 1;
  trips.forEach((trip, i) => {
    if (trip.costMinor === 0 && trip.minutes === 0 && count(made) < limits.maxTrips) made[i] = 1;
  });
  return made;
}

function count(made: Uint8Array): number {
  return made.reduce((sum, one) => sum + one, 0);
}
