/**
 * The order of work of one cooking as one problem: whole minutes from the moment the cook can begin, plain numbers.
 *
 * Indices (`dish`, `from`, `to`, `last`, `kind`) point into the arrays of the problem. A schedule gives every step a
 * start so that all rules below hold; among those it is, in this order,
 *
 *     0. least minutes beyond holds that are not firm (0 unless the holds collide),
 *     1. earliest to be served,
 *     2. least keeping: minutes that finished dishes wait for the plate and hot food waits between steps, by weight,
 *        and board washes, by weight,
 *     3. least often turning from one dish to another with both hands (with one cook).
 */
export interface WorkProblem {
  readonly cooks: 1 | 2;
  readonly steps: readonly WorkStep[];
  readonly dishes: readonly WorkDish[];
  readonly waits: readonly WorkWait[];
  readonly kit: readonly WorkKit[];
  readonly uses: readonly WorkUse[];
  /** Absent = there is no oven; then no step may ask for one. */
  readonly oven?: WorkOven;
  /** Absent = steps at the board need no board (nothing is cut). */
  readonly board?: WorkBoard;
}

/** A step of the method. All steps end before the meal is served. */
export interface WorkStep {
  readonly id: string;
  readonly dish: number;
  readonly minutes: number;
  /**
   * 2 = both hands, 1 = keep an eye on it, 0 = it does itself. One cook gives 2 at a time: both hands, or an eye on two
   * things and no more. An eye can be handed over.
   */
  readonly hands: 0 | 1 | 2;
  /** What is handled at the board: `raw` leaves it unfit for what is `ready` to eat until it is washed. */
  readonly board?: "raw" | "ready";
  readonly oven?: { readonly tempC: number; readonly shelves: number };
  /** Earliest and latest start; equal for a step that has begun. Absent = any. */
  readonly earliestMinutes?: number;
  readonly latestMinutes?: number;
}

export interface WorkDish {
  readonly id: string;
  /** The step that finishes it. */
  readonly last: number;
  /** Longest wait from its end until all is served; absent = it can wait. */
  readonly holdMinutes?: number;
  /** True where the hold must never be gone beyond (safety). */
  readonly isFirm?: boolean;
  /** Weight of a minute that the finished dish waits. */
  readonly holdWeight: number;
}

/** From the end of one step to the start of another. */
export interface WorkWait {
  readonly from: number;
  readonly to: number;
  readonly leastMinutes: number;
  /** The hold; absent = it can wait. */
  readonly mostMinutes?: number;
  readonly isFirm?: boolean;
  /** Weight of a minute waited (food that must be kept hot); absent = none. */
  readonly weight?: number;
}

/** Rings, pans, pots: so many alike. */
export interface WorkKit {
  readonly id: string;
  readonly count: number;
  /** Minutes with both hands to wash one up for its next use; absent = it is used again as it is (a ring). */
  readonly washMinutes?: number;
}

/** One piece of kit held from the start of one step to the end of another, with what is in it. */
export interface WorkUse {
  readonly kind: number;
  readonly from: number;
  readonly to: number;
}

/** An oven has one temperature at a time, and is at `roomC` at the start. */
export interface WorkOven {
  readonly shelves: number;
  readonly roomC: number;
  readonly warmCPerMinute: number;
  readonly coolCPerMinute: number;
}

/** With one board, a wash stands between raw and ready to eat; with more, one is kept for what is raw. */
export interface WorkBoard {
  readonly count: number;
  readonly washMinutes: number;
  readonly washWeight: number;
}

/** Minutes until the oven is at another temperature. */
export function ovenMinutes(oven: WorkOven, fromC: number, toC: number): number {
  return fromC < toC ? Math.ceil((toC - fromC) / oven.warmCPerMinute) : Math.ceil((fromC - toC) / oven.coolCPerMinute);
}
