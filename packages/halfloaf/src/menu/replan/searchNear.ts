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

/** A fall of temperature and the share of the moves that it has. */
interface Fall {
  readonly share: number;
  readonly hotMinor: number;
  readonly coldMinor: number;
}

/** Falls that stay by the old menu. */
export const NEAR_FALLS: readonly Fall[] = [
  { share: 0.6, hotMinor: 40, coldMinor: 3 },
  { share: 0.4, hotMinor: 15, coldMinor: 3 },
];
/** Falls that owe nothing to it: the first so hot that little is left of where it begins. */
export const WIDE_FALLS: readonly Fall[] = [
  { share: 0.55, hotMinor: 150, coldMinor: 3 },
  { share: 0.45, hotMinor: 38, coldMinor: 3 },
];

/** How a search around a menu goes. */
export interface NearRules {
  readonly seed: number;
  readonly moves: number;
  /** Money of such a week (minor units). */
  readonly weekMinor: number;
  readonly falls: readonly Fall[];
  /** True where it begins at a menu drawn by lot, so that what it finds owes nothing to the old one. */
  readonly isAfresh?: boolean;
  /** True where dishes are drawn by their reduced costs: what is near the old menu needs none, far from it much is found by them. */
  readonly isSteered?: boolean;
}

/** The menu where nobody eats any more. */
const NOTHING: Menu = { batches: [], trips: [] };

/**
 * Searches around a menu, so that little moves that need not: falls of temperature that each begin at the best so far, and
 * after each a walk back towards the menu. The same input gives the same plan.
 */
export function searchNear(
  problem: MenuProblem,
  menu: Menu,
  { seed, moves, weekMinor, falls, isAfresh = false, isSteered = false }: NearRules,
): NearSearch {
  const search = new LocalSearch(problem, { seed });
  const { gaps } = search;
  if (gaps.length > 0) return { gaps, moves: 0 };
  const dishes = dishesOf(problem, menu);
  const isEmpty = problem.sittings.length === 0;
  if (isSteered && !isEmpty) search.steer(weekMinor);
  if (isAfresh && !isEmpty) search.goAnywhere();
  else search.goTo(isEmpty ? NOTHING : menu);
  for (const { share, hotMinor, coldMinor } of isEmpty ? [] : falls) {
    search.goToBest();
    search.fall({ moves: Math.ceil(moves * share), hotMinor, coldMinor, typicalMinor: weekMinor });
    walkBack(search, dishes, menu.trips);
  }
  const leastBroken = search.nearest();
  return { gaps, moves: search.moves, ...(leastBroken ? { leastBroken } : { board: standAtBest(search) }) };
}

/** A search that leaves the menu behind, for where nothing near it keeps the limits; then it walks back what it can. */
export function searchFar(
  problem: MenuProblem,
  menu: MenuPlan,
  { seed, farMoves }: { readonly seed: number; readonly farMoves: number },
): NearSearch {
  const far = new MenuSearch(problem, seed, { expectedMoves: farMoves, start: menu });
  let moves = 0;
  while (moves < farMoves) moves = far.advance().moves;
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
