import type { MenuPlan } from "../plan.ts";
import { familyOf, type MenuPack, type MenuProblem, type MenuSitting } from "../problem.ts";
import { type EnergyWeight, stayAway, weighByDishes } from "./changeAttendance.ts";
import { type ChangedPacks, changePrice, takeOffSale } from "./changePacks.ts";
import { dropSittings, setPortions, type Week } from "./changePlates.ts";
import { cookedBefore, sittingsOf } from "./cookedBefore.ts";
import { findUnfitChanges, type UnfitChange } from "./findUnfitChanges.ts";
import type { ChangedWeek, Loss, MenuChange } from "./MenuChange.ts";

/** What changing a problem is told besides the changes. */
export interface ChangeOptions {
  /** Days before this one are over; absent = none is. */
  readonly today?: number;
  /** What each sitting brings of a day's energy; absent = the middle energy of its dishes. */
  readonly energyWeight?: EnergyWeight;
}

/** The changed week, or every change that can't be made. */
export type ChangeOutcome =
  | { readonly ok: true; readonly value: ChangedWeek }
  | { readonly ok: false; readonly unfit: readonly UnfitChange[] };

type OfKind<Kind extends MenuChange["kind"]> = Extract<MenuChange, { kind: Kind }>;

/**
 * The week as it is after the changes, all stated in the indices before any of them, and the old plan carried over: it may
 * now break limits, lack makings or buy too much. What was cooked before today is eaten as planned; a sitting that one
 * stays away from although its plates are cooked keeps its plates, which then nobody of the profiles gets. A sitting before
 * today whose batch fed nothing else was not cooked. Pure: nothing given is changed.
 */
export function changeProblem(
  problem: MenuProblem,
  plan: MenuPlan,
  changes: readonly MenuChange[],
  { today = 0, energyWeight = weighByDishes(problem) }: ChangeOptions = {},
): ChangeOutcome {
  const unfit = findUnfitChanges(problem, plan, changes, today);
  if (unfit.length > 0) return { ok: false, unfit };
  const ofKind = <Kind extends MenuChange["kind"]>(kind: Kind): OfKind<Kind>[] =>
    changes.filter((change): change is OfKind<Kind> => change.kind === kind);
  const cooked = cookedBefore(problem, plan, today);
  const fixed = sittingsOf(plan, cooked);
  const packs = changePacks({ problem, plan, packBefore: problem.packs.map((_, at) => at) }, changes, today);
  let week: Week = { plan: packs.plan, problem: wishDishes(packs.problem, ofKind("refuse"), ofKind("wish"), fixed) };
  for (const { sitting, portions } of ofKind("guest"))
    week = setPortions(week, sitting, (week.problem.sittings[sitting] as MenuSitting).portions + portions);
  const dropped = new Set<number>();
  for (const skip of ofKind("skip")) {
    week = {
      ...week,
      problem: { ...week.problem, profiles: stayAway(week.problem, skip.sittings, energyWeight, skip.absent) },
    };
    for (const sitting of skip.sittings) week = skipSitting(week, sitting, skip, { fixed, dropped, today });
  }
  const losses = ofKind("off").map(({ kind: _, ...loss }): Loss => loss);
  const left = dropSittings({ ...week, problem: freeLostLots(week.problem, losses) }, dropped);
  const isCheaper = ofKind("price").some(
    ({ pack, priceMinor }) => priceMinor < (problem.packs[pack] as MenuPack).priceMinor,
  );
  const bought = ofKind("bought").map(({ purchase }) => purchase);
  const skippedShare = shareOf(problem, listSkipped(problem, ofKind("skip"), fixed));
  const guestShare = shareOf(
    problem,
    ofKind("guest").map(({ portions }) => portions),
  );
  return {
    ok: true,
    value: { ...left, today, losses, bought, isCheaper, skippedShare, guestShare, packBefore: packs.packBefore },
  };
}

function changePacks(given: ChangedPacks, changes: readonly MenuChange[], today: number): ChangedPacks {
  let packs = given;
  for (const change of changes) {
    if (change.kind === "price") packs = changePrice(packs, change.pack, change.priceMinor, today);
    if (change.kind === "gone") packs = takeOffSale(packs, change.pack, change.fromDay ?? today);
  }
  return packs;
}

/** Refused dishes leave every sitting that is not cooked for yet; a sitting with a wish has the wished dish alone, in
 * all its ways. */
function wishDishes(
  problem: MenuProblem,
  refused: readonly OfKind<"refuse">[],
  wished: readonly OfKind<"wish">[],
  fixed: ReadonlySet<number>,
): MenuProblem {
  if (refused.length === 0 && wished.length === 0) return problem;
  const out = new Set(refused.map(({ dish }) => dish));
  const wishAt = new Map(wished.map(({ sitting, dish }) => [sitting, dish]));
  const sittings = problem.sittings.map((sitting, k): MenuSitting => {
    if (fixed.has(k)) return sitting;
    const wish = wishAt.get(k);
    return {
      ...sitting,
      dishes: sitting.dishes.filter(
        (dish) => !out.has(dish) && (wish === undefined || familyOf(problem, wish) === familyOf(problem, dish)),
      ),
    };
  });
  return { ...problem, sittings };
}

interface Past {
  readonly fixed: ReadonlySet<number>;
  readonly dropped: Set<number>;
  readonly today: number;
}

/** Takes plates off a sitting, or marks it to be dropped; plates that are cooked already stay. */
function skipSitting(week: Week, sitting: number, { absent }: OfKind<"skip">, { fixed, dropped, today }: Past): Week {
  const { day, portions } = week.problem.sittings[sitting] as MenuSitting;
  const rest = absent === undefined ? 0 : portions - absent.portions;
  const isWhole = rest <= 1e-9;
  if (fixed.has(sitting)) {
    const alone = week.plan.batches.some(({ sittings }) => sittings.length === 1 && sittings[0] === sitting);
    if (isWhole && alone && day < today) dropped.add(sitting);
    return week;
  }
  if (isWhole) dropped.add(sitting);
  return isWhole ? week : setPortions(week, sitting, rest);
}

/** Portions that nobody eats any more; plates that were cooked already save nothing. */
function listSkipped(
  { sittings }: MenuProblem,
  skips: readonly OfKind<"skip">[],
  fixed: ReadonlySet<number>,
): readonly number[] {
  return skips.flatMap(({ sittings: left, absent }) =>
    left.filter((k) => !fixed.has(k)).map((k) => absent?.portions ?? (sittings[k] as MenuSitting).portions),
  );
}

/** Portions as a share of those of the week. */
function shareOf({ sittings }: MenuProblem, portions: readonly number[]): number {
  const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0);
  return portions.length === 0 ? 0 : sum(portions) / sum(sittings.map((sitting) => sitting.portions));
}

/** A lot that is gone need not be used up any more; one that ends early must, by then. */
function freeLostLots(problem: MenuProblem, losses: readonly Loss[]): MenuProblem {
  const lost = new Set(
    losses.flatMap(({ lot, lastDay }) => ("stock" in lot && lastDay === undefined ? [lot.stock] : [])),
  );
  if (lost.size === 0) return problem;
  return { ...problem, lots: problem.lots.map((lot, at) => (lost.has(at) ? { ...lot, mustUse: false } : lot)) };
}
