import type { MenuPlan } from "../plan.ts";
import type { Judge } from "./Judge.ts";
import type { ChangedWeek } from "./MenuChange.ts";
import { putBack, type SettledPlan } from "./putBack.ts";
import { type Remainder, toRemainder } from "./Remainder.ts";
import type { SittingChange } from "./SittingChange.ts";
import { type NearSearch, searchFar, searchNear } from "./searchNear.ts";
import { withKeepCosts } from "./withKeepCosts.ts";

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
const USUAL_MOVES = 28_000;
/** Moves made where nothing near the old menu keeps all limits. */
const FAR_MOVES = 60_000;
/** Share of the old plan's money that another dish at one sitting must save. */
const CHANGE_SHARE = 0.002;

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
  const found = findNear(kept, { seed, moves, farMoves, weekMinor });
  const settled = found.board && putBack(found.board, { week, remainder: kept, judge, changeMinor });
  const plan = settled && remainder.join(settled.plan);
  const verdict = plan && judge(week.problem, plan);
  if (settled === undefined || plan === undefined || verdict === undefined || verdict.faults.length > 0)
    return stands ? keepAll(week, judge, changeMinor) : toNone(remainder, found, settled);
  const { changes } = settled;
  const moneyMinor = verdict.money.totalMinor;
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

function toNone(remainder: Remainder, found: NearSearch, settled: SettledPlan | undefined): ReplanOutcome {
  const { gaps, moves, leastBroken = settled?.plan } = found;
  return { kind: "none", gaps, moves, ...(leastBroken && { leastBroken: remainder.join(leastBroken) }) };
}

interface How {
  readonly seed: number;
  readonly moves: number;
  readonly farMoves: number;
  readonly weekMinor: number;
}

/** The best menu near the old one; where none there keeps the limits, the best of a search that leaves it behind. */
function findNear({ problem, plan }: Remainder, how: How): NearSearch {
  const near = searchNear(problem, plan, how);
  return near.board || near.gaps.length > 0 ? near : searchFar(problem, plan, how);
}
