import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { LocalSearch, type Menu } from "../search/LocalSearch.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { MenuBoard } from "./MenuBoard.ts";
import { dishesOf } from "./SittingChange.ts";
import { walkBack } from "./walkBack.ts";

/** What a search near a menu came to. */
export interface NearSearch {
  /** The best menu that keeps all limits; absent where none was found. */
  readonly board?: MenuBoard;
  /** The plan that breaks them least, while none keeps them. */
  readonly leastBroken?: MenuPlan;
  /** Sittings without any dish; nothing was searched then. */
  readonly gaps: readonly number[];
  readonly moves: number;
}

/** Falls that stay by the old menu, the last over other orders of the same servings, each with its share of the moves. */
const FALLS = [
  { share: 0.55, hotMinor: 40, coldMinor: 3, reorders: false },
  { share: 0.3, hotMinor: 15, coldMinor: 3, reorders: false },
  { share: 0.15, hotMinor: 30, coldMinor: 3, reorders: true },
] as const;

/** How a search around a menu goes. */
export interface NearRules {
  readonly seed: number;
  readonly moves: number;
  /** Money of such a week (minor units). */
  readonly weekMinor: number;
}

/** The menu where nobody eats any more. */
const NOTHING: Menu = { batches: [], trips: [] };

/**
 * Searches around a menu, so that little moves that need not: falls of temperature that each begin at the best so far, and
 * after each a walk back towards the menu. The same input gives the same plan.
 */
export function searchNear(problem: MenuProblem, menu: Menu, { seed, moves, weekMinor }: NearRules): NearSearch {
  const search = new LocalSearch(problem, { seed });
  const { gaps } = search;
  if (gaps.length > 0) return { gaps, moves: 0 };
  const dishes = dishesOf(problem, menu);
  const isEmpty = problem.sittings.length === 0;
  search.goTo(isEmpty ? NOTHING : menu);
  for (const { share, ...fall } of isEmpty ? [] : FALLS) {
    search.goToBest();
    search.fall({ ...fall, moves: Math.ceil(moves * share), typicalMinor: weekMinor });
    walkBack(search, dishes, menu.trips);
  }
  const leastBroken = search.nearest();
  return { gaps, moves: search.moves, ...(leastBroken ? { leastBroken } : { board: standAtBest(search) }) };
}

/** A search that leaves the menu behind, from scratch or from a menu that is given; then it walks back what it can. */
export function searchFar(
  problem: MenuProblem,
  menu: Menu,
  { seed, moves: most, start }: Pick<NearRules, "seed" | "moves"> & { readonly start?: Menu },
): NearSearch {
  const far = new MenuSearch(problem, seed, { expectedMoves: most, ...(start && { start }) });
  let moves = 0;
  while (moves < most) moves = far.advance().moves;
  const [found, leastBroken] = [far.best(), far.leastBroken()];
  if (found === undefined) return { gaps: [], moves, ...(leastBroken && { leastBroken }) };
  const search = new LocalSearch(problem, { seed });
  search.goTo(found);
  walkBack(search, dishesOf(problem, menu), menu.trips);
  return { gaps: [], moves, board: standAtBest(search) };
}

function standAtBest(search: LocalSearch): MenuBoard {
  search.goToBest();
  return new MenuBoard(search.state);
}
