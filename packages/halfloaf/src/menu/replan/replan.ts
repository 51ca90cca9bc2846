import type { MenuPlan } from "../plan.ts";
import { familyOf, type MenuProblem, type MenuSitting } from "../problem.ts";
import type { Judge } from "./Judge.ts";
import type { ChangedWeek } from "./MenuChange.ts";
import { type Remainder, toRemainder } from "./Remainder.ts";
import { type NearSearch, searchFar, searchNear } from "./searchNear.ts";
import { dishesOf, type SittingChange, whyChanged } from "./whyChanged.ts";

/** How a week is planned again. */
export interface ReplanOptions {
  /** Checks every plan before it is shown: `checkPlan`. */
  readonly judge: Judge;
  readonly seed?: number;
  /** Moves of the search near the old menu. */
  readonly moves?: number;
  /** Moves of the search that leaves it behind, where nothing near it keeps all limits. */
  readonly farMoves?: number;
  /** What another dish at a sitting must save at least; absent = a share of the old plan's money. */
  readonly changeMinor?: number;
}

/** A changed week planned again, or that no plan keeps all limits. */
export type ReplanOutcome =
  | {
      readonly kind: "planned";
      /** Plan of the whole week, what is over included. */
      readonly plan: MenuPlan;
      readonly moneyMinor: number;
      /** True where the old plan still stands and is kept as it is. */
      readonly kept: boolean;
      /** What another dish at a sitting had to save at least (minor units). */
      readonly changeMinor: number;
      readonly changes: readonly SittingChange[];
      readonly moves: number;
    }
  | {
      readonly kind: "none";
      /** Sittings without any dish. */
      readonly gaps: readonly number[];
      /** The plan that breaks the limits least. */
      readonly leastBroken?: MenuPlan;
      readonly moves: number;
    };

/** Moves that keep a re-plan of 150 dishes within a quarter of a second. */
const USUAL_MOVES = 20_000;
/** Moves made where nothing near the old menu keeps all limits. */
const FAR_MOVES = 60_000;
/** Share of the old plan's money that another dish at one sitting must save. */
const CHANGE_SHARE = 0.004;

/**
 * Plans a changed week again so that it keeps as much of the old plan as it can: the old plan as it is where it still
 * stands and nothing new was opened, else the best of a search from the old menu in which each other dish must be worth
 * its price, and walks back to it. The same input gives the same plan.
 */
export function replan(week: Omit<ChangedWeek, "sittingBefore" | "packBefore">, options: ReplanOptions): ReplanOutcome {
  const remainder = toRemainder(week);
  const { judge } = options;
  const { seed = 1, moves = USUAL_MOVES, farMoves = FAR_MOVES } = options;
  const weekMinor = Math.abs(judge(week.problem, week.plan).money.totalMinor);
  const changeMinor = options.changeMinor ?? CHANGE_SHARE * weekMinor;
  const stands =
    judge(remainder.problem, remainder.plan).faults.length === 0 && judge(week.problem, week.plan).faults.length === 0;
  if (stands && !week.opens) return keepAll(week, judge, changeMinor);
  const kept = { ...remainder, problem: withKeepCosts(remainder, changeMinor) };
  const found = findNear(week.problem, kept, { judge, seed, moves, farMoves, weekMinor });
  if (found.plan === undefined) return stands ? keepAll(week, judge, changeMinor) : toNone(remainder, found);
  const plan = remainder.join(found.plan);
  const moneyMinor = judge(week.problem, plan).money.totalMinor;
  const changes = whyChanged(week.problem, remainder, found.plan, judge);
  if (stands && judge(week.problem, week.plan).money.totalMinor <= moneyMinor + changes.length * changeMinor) {
    return keepAll(week, judge, changeMinor);
  }
  return { kind: "planned", plan, moneyMinor, kept: false, changeMinor, changes, moves: found.moves };
}

function keepAll(
  { problem, plan }: Pick<ChangedWeek, "problem" | "plan">,
  judge: Judge,
  changeMinor: number,
): ReplanOutcome {
  const { money } = judge(problem, plan);
  return { kind: "planned", plan, moneyMinor: money.totalMinor, kept: true, changeMinor, changes: [], moves: 0 };
}

function toNone(remainder: Remainder, { gaps, leastBroken, moves }: NearSearch): ReplanOutcome {
  return { kind: "none", gaps, moves, ...(leastBroken && { leastBroken: remainder.join(leastBroken) }) };
}

/** Every sitting that can still have its old dish asks a price for another one. */
function withKeepCosts({ problem, plan }: Remainder, changeMinor: number): MenuProblem {
  const before = dishesOf(problem, plan);
  const sittings = problem.sittings.map((sitting, k): MenuSitting => {
    const dish = before[k] as number;
    const family = familyOf(problem, dish);
    const isOffered = sitting.dishes.some((other) => familyOf(problem, other) === family);
    return isOffered ? { ...sitting, keep: { dish, changeMinor } } : sitting;
  });
  return { ...problem, sittings };
}

interface How {
  readonly judge: Judge;
  readonly seed: number;
  readonly moves: number;
  readonly farMoves: number;
  readonly weekMinor: number;
}

/** The best plan near the old one that keeps the limits of the whole week. */
function findNear(whole: MenuProblem, { problem, plan, join }: Remainder, { judge, ...how }: How): NearSearch {
  const near = searchNear(problem, plan, how);
  const { plan: best, ...rest } = near.plan || near.gaps.length > 0 ? near : searchFar(problem, plan, how);
  if (best === undefined) return rest;
  const isSound = judge(whole, join(best)).faults.length === 0;
  return { ...rest, ...(isSound ? { plan: best } : { leastBroken: best }) };
}
