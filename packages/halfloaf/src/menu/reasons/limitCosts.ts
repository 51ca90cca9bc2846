import { checkPlan } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { type LimitReading, readExcesses, readLimits } from "./readLimits.ts";
import { knobOf, LIMIT_STEPS, relaxLimit } from "./relaxLimit.ts";
import { type FoundPlan, searchAgain } from "./searchAgain.ts";

/** What one limit costs, as far as a short search can tell. */
export interface LimitCost {
  /** The limit where the plan comes closest to it. */
  readonly reading: LimitReading;
  /** By how much it was loosened, in its unit; a bound by a share of itself. */
  readonly step: number;
  /**
   * At least so much is saved by loosening it (minor units): the best plan found without loosening less the best plan
   * found with it. 0 where none was found; a longer search may find more.
   */
  readonly savesMinor: number;
  /** The cheaper plan, which keeps all limits but this one. */
  readonly found?: FoundPlan;
}

/** The costs of all limits that bind. */
export interface LimitCosts {
  /** Dearest first. */
  readonly limits: readonly LimitCost[];
  /** The best plan found with every limit as it stands: the one given, or a cheaper one met on the way. */
  readonly base: FoundPlan;
  readonly moves: number;
}

/** What limit costs are searched with. */
export interface LimitCostWish {
  readonly seed: number;
  /** Moves for each limit, and as many for a search with every limit as it stands. */
  readonly moves?: number;
  /** Plans of the same problem met before: the cheapest is searched from. */
  readonly known?: readonly FoundPlan[];
}

const USUAL_MOVES = 4000;
/** A limit nearly binds where this share of it or less is left. */
const NEAR_SHARE = 0.05;
/** Savings of less than a coin are none. */
const LEAST_SAVING_MINOR = 1;

/**
 * What each limit costs that a plan comes up to, or nearly: loosened by a natural step, and searched again from the
 * plan. The plan must keep the limits. Since it also keeps the looser ones, loosening never makes it dearer.
 */
export function limitCosts(problem: MenuProblem, plan: MenuPlan, wish: LimitCostWish): LimitCosts {
  const { seed, moves = USUAL_MOVES, known = [] } = wish;
  let base: FoundPlan = { plan, moneyMinor: checkPlan(problem, plan).money.totalMinor };
  for (const one of known) if (one.moneyMinor < base.moneyMinor - LEAST_SAVING_MINOR) base = one;
  let made = 0;
  const seek = (loosened: MenuProblem): FoundPlan | undefined => {
    const answer = searchAgain(loosened, { start: base.plan, moves, seed, isNear: true });
    made += answer.moves;
    if (answer.best === undefined || answer.costMinor > base.moneyMinor - LEAST_SAVING_MINOR) return undefined;
    const { faults, money } = checkPlan(loosened, answer.best);
    return faults.length > 0 ? undefined : { plan: answer.best, moneyMinor: money.totalMinor };
  };
  base = seek(problem) ?? base;
  const tried = listBinding(problem, base.plan).map((reading) => {
    const step = LIMIT_STEPS[reading.limit.kind];
    const found = seek(relaxLimit(problem, reading.limit, step));
    // What keeps the limits as they stand is no merit of the loosening.
    if (!found || readExcesses(problem, found.plan).length > 0) return { reading, step, found };
    base = found;
    return { reading, step, found: undefined };
  });
  const limits = tried.map(({ reading, step, found }): LimitCost => {
    const savesMinor = found === undefined ? 0 : base.moneyMinor - found.moneyMinor;
    return found !== undefined && savesMinor >= LEAST_SAVING_MINOR
      ? { reading, step, savesMinor, found }
      : { reading, step, savesMinor: 0 };
  });
  return { limits: limits.sort((a, b) => b.savesMinor - a.savesMinor), base, moves: made };
}

/** The limits that bind or nearly do, one for each knob: where least is left. */
export function listBinding(problem: MenuProblem, plan: MenuPlan): LimitReading[] {
  const closest = new Map<string, LimitReading>();
  for (const reading of readLimits(problem, plan)) {
    if (!isBinding(problem, reading)) continue;
    const knob = knobOf(reading.limit);
    const known = closest.get(knob);
    if (known === undefined || reading.excess > known.excess) closest.set(knob, reading);
  }
  return [...closest.values()];
}

function isBinding({ trips }: MenuProblem, { limit, allowed, excess }: LimitReading): boolean {
  // One different dish is the least there can be, and no more trips can be made than there are.
  if (limit.kind === "distinct" && allowed <= 1) return false;
  if (limit.kind === "trips" && allowed >= trips.length) return false;
  const isCount = ["uses", "main", "distinct", "wish", "trips"].includes(limit.kind);
  return excess >= (isCount || limit.kind === "must-use" ? -1e-6 : -NEAR_SHARE * allowed);
}
