import { checkPlan } from "../check/index.ts";
import type { MenuPlan, Use } from "../plan.ts";
import { isLasting, type MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { type FoundPlan, type SearchAnswer, searchAgain } from "./searchAgain.ts";
import { traceLots } from "./traceLots.ts";

/** What a dish takes from one lot or bought pack. */
export interface SharedLot {
  readonly lot: Use["lot"];
  readonly food: number;
  readonly massG: number;
  /** True for a food that outlasts the plan, opened or not; sharing it is no merit. */
  readonly isLasting: boolean;
  /** Other batches that are fed from the same lot. */
  readonly withBatches: readonly number[];
  /** True where nothing is left of the lot once this batch is cooked. */
  readonly finishes: boolean;
  /** Grams that no other batch takes and that would go off within the plan. */
  readonly savedFromWasteG: number;
}

/** The best plan that was found without a dish. */
export interface WithoutDish {
  /** What it costs more than the plan (minor units); below 0 where a cheaper one was found. Absent: none was found. */
  readonly extraMinor?: number;
  readonly found?: FoundPlan;
}

/** Why a dish stands at a sitting. */
export interface WhyDish {
  readonly sitting: number;
  readonly dish: number;
  /** Position of its batch in the plan. */
  readonly batch: number;
  readonly lots: readonly SharedLot[];
  /** With another dish at this sitting, and with the dish nowhere. */
  readonly withoutHere: WithoutDish;
  readonly withoutAnywhere: WithoutDish;
  readonly moves: number;
}

/** What reasons are searched with. */
export interface ReasonWish {
  readonly seed: number;
  /** Moves of each search. */
  readonly moves?: number;
  /** Plans of the same problem met before, such as for other reasons: the best that fits the question is searched from. */
  readonly known?: readonly FoundPlan[];
}

const USUAL_MOVES = 4000;

/**
 * Why a plan has the dish that it has at a sitting: the packs and lots it shares, what it finishes, what it saves from
 * going off, and what the best plans found without it cost. Undefined where the plan serves nothing there.
 */
export function whyDish(
  problem: MenuProblem,
  plan: MenuPlan,
  sitting: number,
  { seed, moves = USUAL_MOVES, known = [] }: ReasonWish,
): WhyDish | undefined {
  const batch = plan.batches.findIndex(({ sittings }) => sittings.includes(sitting));
  const dish = plan.batches[batch]?.dish;
  if (dish === undefined) return undefined;
  // Cooked with other alternatives it is still the same dish.
  const id = problem.dishes[dish]?.id;
  const moneyMinor = checkPlan(problem, plan).money.totalMinor;
  let made = 0;
  const without = (refuses: (k: number) => boolean, more: readonly FoundPlan[]): WithoutDish => {
    const sittings = problem.sittings.map((one, k) =>
      refuses(k) ? { ...one, dishes: one.dishes.filter((r) => problem.dishes[r]?.id !== id) } : one,
    );
    const loose = { ...problem, sittings };
    const met = cheapestOf(more.filter((one) => keepsOut(problem, one.plan, id, refuses)));
    const { best, moves: count } = searchAtLength(loose, met?.plan ?? plan, { seed, moves });
    made += count;
    const found = compare(loose, best, moneyMinor);
    return met === undefined ? found : cheaper(found, { extraMinor: met.moneyMinor - moneyMinor, found: met });
  };
  const withoutAnywhere = without(() => true, known);
  // A plan without it anywhere is one without it here too.
  const withoutHere = without(
    (k) => k === sitting,
    [...known, ...(withoutAnywhere.found ? [withoutAnywhere.found] : [])],
  );
  return { sitting, dish, batch, lots: listLots(problem, plan, batch), withoutHere, withoutAnywhere, moves: made };
}

/** True where a plan has a dish at none of the sittings that refuse it. */
function keepsOut(
  { dishes }: MenuProblem,
  { batches }: MenuPlan,
  id: string | undefined,
  refuses: (k: number) => boolean,
): boolean {
  return !batches.some(({ dish, sittings }) => dishes[dish]?.id === id && sittings.some(refuses));
}

function cheapestOf(plans: readonly FoundPlan[]): FoundPlan | undefined {
  return plans.reduce<FoundPlan | undefined>(
    (best, one) => (best === undefined || one.moneyMinor < best.moneyMinor ? one : best),
    undefined,
  );
}

function cheaper(one: WithoutDish, other: WithoutDish): WithoutDish {
  if (one.extraMinor === undefined || other.extraMinor === undefined) return one.extraMinor === undefined ? other : one;
  return other.extraMinor < one.extraMinor ? other : one;
}

/** How many times longer is searched where a short search finds no plan. */
const AT_LENGTH = 18;

/** The best plan found around a menu; where a short search finds none, one from a new start. */
export function searchAtLength(
  problem: MenuProblem,
  start: Pick<MenuPlan, "batches" | "trips">,
  { seed, moves }: { readonly seed: number; readonly moves: number },
): Pick<SearchAnswer, "best" | "nearest" | "moves"> {
  const near = searchAgain(problem, { start, seed, moves, isNear: true });
  if (near.best || near.moves === 0) return near;
  const onward = near.nearest && searchAgain(problem, { start: near.nearest, seed, moves });
  if (onward?.best) return { ...onward, moves: near.moves + onward.moves };
  const search = new MenuSearch(problem, seed, { expectedMoves: AT_LENGTH * moves });
  let report = search.advance();
  while (report.moves < AT_LENGTH * moves) report = search.advance();
  const best = search.best();
  return { ...near, ...(best && { best }), moves: near.moves + (onward?.moves ?? 0) + report.moves };
}

/** What a plan of an altered problem costs beyond another, where it is a plan that can be carried out. */
export function compare(problem: MenuProblem, best: MenuPlan | undefined, moneyMinor: number): WithoutDish {
  if (best === undefined) return {};
  const { faults, money } = checkPlan(problem, best);
  if (faults.length > 0) return {};
  return { extraMinor: money.totalMinor - moneyMinor, found: { plan: best, moneyMinor: money.totalMinor } };
}

/** Everything that a batch takes from lots and packs, by lot. */
export function listLots(problem: MenuProblem, plan: MenuPlan, batch: number): SharedLot[] {
  return traceLots(problem, plan).flatMap(({ lot, food, uses, leftG, perishes }): SharedLot[] => {
    const massG = uses.reduce((sum, use) => (use.batch === batch ? sum + use.massG : sum), 0);
    if (massG <= 0) return [];
    const withBatches = [...new Set(uses.map((use) => use.batch))].filter((other) => other !== batch);
    const isLast = withBatches.every((other) => startOf(plan, other) <= startOf(plan, batch));
    // A pack bought for this batch alone would not have been bought without it.
    const wouldBeThere = "stock" in lot || withBatches.length > 0;
    return [
      {
        lot,
        food,
        massG,
        isLasting: isLasting(problem, food),
        withBatches,
        finishes: leftG === 0 && isLast,
        savedFromWasteG: perishes && wouldBeThere ? massG : 0,
      },
    ];
  });
}

function startOf(plan: MenuPlan, batch: number): number {
  return plan.batches[batch]?.sittings[0] ?? 0;
}
