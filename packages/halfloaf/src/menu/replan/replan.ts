import type { MenuPlan } from "../plan.ts";
import type { Judge, JudgedFault, Verdict } from "./Judge.ts";
import type { ChangedWeek } from "./MenuChange.ts";
import { putBack, type SettledPlan } from "./putBack.ts";
import { type Remainder, toRemainder } from "./Remainder.ts";
import type { SittingChange } from "./SittingChange.ts";
import { NEAR_FALLS, type NearSearch, searchFar, searchNear, WIDE_FALLS } from "./searchNear.ts";
import { withKeepCosts } from "./withKeepCosts.ts";

/** How a week is planned again. */
export interface ReplanOptions {
  /** Checks every plan before it is shown: `checkPlan`. */
  readonly judge: Judge;
  readonly seed?: number;
  /** Moves of the search near the old menu. */
  readonly moves?: number;
  /** Moves of the second search, made where a better plan may well stand further off. */
  readonly wideMoves?: number;
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
const USUAL_MOVES = 22_000;
/** The search that leaves the old menu has so many times the moves: about a second. */
const WIDE = 12;
/** It is told apart from the one before by its seed. */
const WIDE_SEED = 100;
/** Moves made where nothing near the old menu keeps all limits. */
const FAR_MOVES = 60_000;
/** Share of the old plan's money that another dish at one sitting must save. */
const CHANGE_SHARE = 0.002;
/** Changes beyond so many cost nothing more: the menu is then another one. */
const MOST_COUNTED = 8;
/** Share of its price that a change must save in a plan that leaves the old menu. */
const WIDE_PRICE = 0.25;
/** Where so many sittings change, or the week comes so much dearer than the old one, a better plan may stand further off. */
const MANY_CHANGES = 8;
const MUCH_DEARER = 1.025;

/**
 * Plans a changed week again so that it keeps as much of the old plan as it can: the old plan as it is where it still
 * stands and nothing new was opened, else the best of a search from the old menu in which each other dish must be worth
 * its price, and walks back to it. Where much changes all the same, the week comes much dearer or something new was opened,
 * a second search leaves the old menu; its plan is taken where it saves more than what it changes is worth, of which no
 * more than eight sittings count: the rest then holds no plan back that is cheaper by more. The same input gives the same
 * plan.
 */
export function replan(week: Omit<ChangedWeek, "sittingBefore" | "packBefore">, options: ReplanOptions): ReplanOutcome {
  const remainder = toRemainder(week);
  const { judge } = options;
  const { seed = 1, moves = USUAL_MOVES, wideMoves = WIDE * moves, farMoves = FAR_MOVES } = options;
  const before = judge(week.problem, week.plan);
  const weekMinor = Math.abs(before.money.totalMinor);
  const changeMinor = options.changeMinor ?? CHANGE_SHARE * weekMinor;
  const stands = judge(remainder.problem, remainder.plan).faults.length === 0 && before.faults.length === 0;
  if (stands && !week.opens) return keepAll(week, judge, changeMinor);
  const given: Given = { week, remainder, judge, before, weekMinor, changeMinor };
  const found = findNear(given, { seed, moves, farMoves });
  const near = settle(given, found, changeMinor);
  if (near === undefined || near.faults.length > 0) {
    return stands ? keepAll(week, judge, changeMinor) : toNone(remainder, found, near);
  }
  const wide = isPromising(given, near) ? findWide(given, near, { seed, moves: wideMoves }) : undefined;
  const weigh = ({ moneyMinor, changes }: Settled): number =>
    moneyMinor + Math.min(MOST_COUNTED, changes.length) * changeMinor;
  const best = wide !== undefined && wide.faults.length === 0 && weigh(wide) < weigh(near) ? wide : near;
  if (stands && before.money.totalMinor <= weigh(best)) return keepAll(week, judge, changeMinor);
  const { plan, moneyMinor, changes } = best;
  return {
    kind: "planned",
    plan: remainder.join(plan),
    moneyMinor,
    kept: false,
    changeMinor: best.changeMinor,
    changes,
    moves: found.moves + (wide?.moves ?? 0),
  };
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

/** What all searches of one re-plan share. */
interface Given {
  readonly week: Pick<ChangedWeek, "problem" | "opens">;
  readonly remainder: Remainder;
  readonly judge: Judge;
  /** What the judge says of the old plan in the changed week, and its money (minor units). */
  readonly before: Verdict;
  readonly weekMinor: number;
  readonly changeMinor: number;
}

/** What a search came to, settled and judged as a whole week. */
interface Settled extends SettledPlan {
  readonly faults: readonly JudgedFault[];
  readonly moneyMinor: number;
  /** What each of its changes had to save (minor units). */
  readonly changeMinor: number;
  readonly moves: number;
}

function settle({ week, remainder, judge }: Given, found: NearSearch, changeMinor: number): Settled | undefined {
  if (found.board === undefined) return undefined;
  const settled = putBack(found.board, { week, remainder, judge, changeMinor });
  const { faults, money } = judge(week.problem, remainder.join(settled.plan));
  return { ...settled, faults, moneyMinor: money.totalMinor, changeMinor, moves: found.moves };
}

type Effort = { readonly seed: number; readonly moves: number };

/** The best menu near the old one; where none there keeps the limits, the best of a search that leaves it behind. */
function findNear(given: Given, { seed, moves, farMoves }: Effort & { readonly farMoves: number }): NearSearch {
  const { remainder, weekMinor, changeMinor } = given;
  const problem = withKeepCosts(remainder, changeMinor);
  const near = searchNear(problem, remainder.plan, { seed, moves, weekMinor, falls: NEAR_FALLS });
  return near.board || near.gaps.length > 0 ? near : searchFar(problem, remainder.plan, { seed, farMoves });
}

/**
 * True where a better plan may well stand further off than the search near the old menu went. Money is compared where the
 * old plan still has all its makings: else it lacks what they cost.
 */
function isPromising({ week, before, weekMinor }: Given, { changes, moneyMinor }: Settled): boolean {
  const isWhole = before.faults.every(({ code }) => code !== "making-short" && code !== "lot-overdrawn");
  const isDear = isWhole && changes.length > 0 && moneyMinor > MUCH_DEARER * weekMinor;
  return week.opens || changes.length >= MANY_CHANGES || isDear;
}

/** A search from a plan that leaves the old menu, in which a change need save only a part of its price. */
function findWide(given: Given, { plan }: Settled, { seed, moves }: Effort): Settled | undefined {
  const { remainder, weekMinor } = given;
  const changeMinor = WIDE_PRICE * given.changeMinor;
  const found = searchNear(withKeepCosts(remainder, changeMinor), remainder.plan, {
    seed: seed + WIDE_SEED,
    moves,
    weekMinor,
    falls: WIDE_FALLS,
    from: plan,
  });
  return settle(given, found, changeMinor);
}
