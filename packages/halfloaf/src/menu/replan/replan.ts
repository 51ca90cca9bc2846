import type { MenuPlan } from "../plan.ts";
import { EFFORTS } from "../search/efforts.ts";
import type { Judge, JudgedFault, Verdict } from "./Judge.ts";
import type { ChangedWeek } from "./MenuChange.ts";
import { putBack, type SettledPlan } from "./putBack.ts";
import { isShopping, type Remainder, toRemainder, tripsBegun } from "./Remainder.ts";
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
  /** Moves of two further searches together, made where a better plan may well stand further off; 0 = none. */
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
const USUAL_MOVES = 50_000;
/** The two searches that leave the old menu have so many times the moves together: about two seconds. */
const WIDE = 20;
/** They are told apart from the one before and from each other by their seeds. */
const WIDE_SEED = 100;
/** Share of the old plan's money that another dish at one sitting must save. */
const CHANGE_SHARE = 0.0025;
/** Changes beyond so many cost nothing more: the menu is then another one. */
const MOST_COUNTED = 5;
/** Share of its price that a change must save in a plan that leaves the old menu. */
const WIDE_PRICE = 0.25;
/**
 * A better plan may stand further off where so many sittings change that could have kept their dish, where the week comes so
 * much dearer than the old one, or where not so much is saved of what skipped portions cost. Decision 0004 tells how they were found.
 */
const MANY_CHANGES = 3;
const MUCH_DEARER = 0.02;
const LEAST_SAVED = 1 / 3;

/**
 * Plans a changed week again so that it keeps as much of the old plan as it can: the old plan as it is where it still
 * stands and nothing can be saved, else the best of a search from the old menu in which each other dish must be worth
 * its price, and walks back to it. Where much changes all the same, the week comes much dearer, a price fell, or skipped
 * portions save little, two more searches leave the old menu; a plan of theirs is taken where it saves more than what it
 * changes is worth, of which no more than five sittings count: the rest then holds no plan back that is cheaper by more. The
 * fewer days are left, the shorter the searches. Where trips are begun and no plan is found in which they go on as the old plan has it
 * (`toRemainder`), it is looked for the other way. The same input gives the same plan.
 */
export function replan(week: UnplannedWeek, options: ReplanOptions): ReplanOutcome {
  const goesOn = isShopping(week);
  const remainder = toRemainder(week, goesOn);
  const { isRefused, ...outcome } = replanRest(week, remainder, options);
  if (outcome.kind === "planned" || outcome.gaps.length > 0 || tripsBegun(week).length === 0) return outcome;
  // The trips that go on leave every plan that there is the other way, so that nothing is left to find where none was found with them.
  const { limits, trips } = remainder.problem;
  if (goesOn ? !isRefused : limits.maxTrips >= trips.length) return outcome;
  const { isRefused: _, ...other } = replanRest(week, toRemainder(week, !goesOn), options);
  return other.kind === "planned" ? { ...other, moves: outcome.moves + other.moves } : outcome;
}

/** An outcome, and whether a plan of the remainder was found that the judge of the whole week refused. */
type RestOutcome = ReplanOutcome & { readonly isRefused?: boolean };

/** A changed week that is to be planned again. */
export type UnplannedWeek = Omit<ChangedWeek, "sittingBefore" | "packBefore">;

function replanRest(week: UnplannedWeek, remainder: Remainder, options: ReplanOptions): RestOutcome {
  const { judge } = options;
  const { seed = 1, moves = USUAL_MOVES, wideMoves = WIDE * moves, farMoves = EFFORTS.quick } = options;
  const before = judge(week.problem, week.plan);
  const weekMinor = Math.abs(before.money.totalMinor);
  const changeMinor = options.changeMinor ?? CHANGE_SHARE * weekMinor;
  const stands = judge(remainder.problem, remainder.plan).faults.length === 0 && before.faults.length === 0;
  const maySave = week.isCheaper || week.hasMore === true || week.skippedShare > 0;
  if (stands && !maySave) return keepAll(week, judge, changeMinor);
  const given: Given = { week, remainder, judge, before, weekMinor, changeMinor };
  const found = findNear(given, { seed, moves: Math.ceil(moves * partLeft(week) ** 2), farMoves });
  const near = settle(given, found, changeMinor);
  if (near === undefined || near.faults.length > 0) {
    return stands
      ? keepAll(week, judge, changeMinor)
      : { ...toNone(remainder, found, near), isRefused: near !== undefined };
  }
  const { best, moves: leftMoves } = leaveMenu(given, near, { seed, moves: wideMoves * partLeft(week) });
  if (stands && before.money.totalMinor <= weigh(best, changeMinor)) return keepAll(week, judge, changeMinor);
  const { plan, moneyMinor, changes } = best;
  return {
    kind: "planned",
    plan: remainder.join(plan),
    moneyMinor,
    kept: false,
    changeMinor: best.changeMinor,
    changes,
    moves: found.moves + leftMoves,
  };
}

/** The part of a week's days that is left. */
function partLeft({ today, problem }: Pick<ChangedWeek, "today" | "problem">): number {
  return 1 - Math.min(today, problem.days) / problem.days;
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
  readonly week: Pick<ChangedWeek, "problem" | "isCheaper" | "skippedShare" | "guestShare" | "today">;
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
  const near = searchNear(problem, remainder.plan, { seed, moves, weekMinor });
  if (near.board || near.gaps.length > 0) return near;
  return searchFar(problem, remainder.plan, { seed, moves: farMoves, start: remainder.plan });
}

/** What a plan counts for: its money and the price of its changes, as far as they count. */
function weigh({ moneyMinor, changes }: Settled, changeMinor: number): number {
  return moneyMinor + Math.min(MOST_COUNTED, changes.length) * changeMinor;
}

/**
 * The best of a plan near the old menu and of searches that leave that menu, and the moves of those. They know nothing of
 * the plan near it, or they would refine that instead of what they found; since now and then one ends far from the best,
 * there are two.
 */
function leaveMenu(given: Given, near: Settled, { seed, moves }: Effort): { best: Settled; moves: number } {
  let best = near;
  let made = 0;
  for (const turn of moves > 0 && isPromising(given, near) ? [1, 2] : []) {
    const wide = findWide(given, { seed: seed + turn * WIDE_SEED, moves: moves / 2 });
    if (wide === undefined) continue;
    made += wide.moves;
    const isLess = weigh(wide, given.changeMinor) < weigh(best, given.changeMinor);
    if (wide.faults.length === 0 && isLess) best = wide;
  }
  return { best, moves: made };
}

/**
 * True where a better plan may well stand further off than the search near the old menu went. Guests cost what they eat. An
 * old plan that no longer has all its makings lacks what they cost, so without guests a week may come twice as much dearer;
 * the fewer days are left, the less.
 */
function isPromising({ week, before, weekMinor }: Given, { changes, moneyMinor }: Settled): boolean {
  const { isCheaper, skippedShare, guestShare = 0 } = week;
  if (skippedShare > 0) {
    const savedMinor = before.money.totalMinor - moneyMinor;
    return isCheaper || savedMinor < LEAST_SAVED * skippedShare * weekMinor;
  }
  const isWhole = before.faults.every(({ code }) => code !== "making-short" && code !== "lot-overdrawn");
  const much = (isWhole || guestShare > 0 ? 1 : 2) * MUCH_DEARER * partLeft(week) ** 2;
  const free = changes.filter(({ why }) => why.kind !== "not-offered");
  return isCheaper || free.length >= MANY_CHANGES || moneyMinor > (1 + guestShare + much) * weekMinor;
}

/** A search that owes nothing to the old menu, in which a change need save only a part of its price. */
function findWide(given: Given, { seed, moves }: Effort): Settled | undefined {
  const { remainder } = given;
  const changeMinor = WIDE_PRICE * given.changeMinor;
  return settle(given, searchFar(withKeepCosts(remainder, changeMinor), remainder.plan, { seed, moves }), changeMinor);
}
