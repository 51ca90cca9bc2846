import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { LocalSearch, type Menu } from "../search/LocalSearch.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { walkBack } from "./walkBack.ts";
import { dishesOf } from "./whyChanged.ts";

/** What a search near a menu came to. */
export interface NearSearch {
  /** The best plan that keeps all limits; absent where none was found. */
  readonly plan?: MenuPlan;
  /** The plan that breaks them least, while none keeps them. */
  readonly leastBroken?: MenuPlan;
  /** Sittings without any dish; nothing was searched then. */
  readonly gaps: readonly number[];
  readonly moves: number;
}

/** The falls of temperature, each from the best so far, and the share of the moves that each one has. */
const FALLS = [
  { share: 0.6, hotMinor: 40, coldMinor: 3 },
  { share: 0.4, hotMinor: 15, coldMinor: 3 },
] as const;

/** The plan where nobody eats any more. */
const NOTHING: MenuPlan = { batches: [], trips: [], purchases: [], uses: [] };

/**
 * Searches around a menu, so that little moves that need not: falls of temperature that each begin at the best so far, the
 * first at the menu itself, and after each a walk back towards the menu. The same input gives the same plan.
 */
export function searchNear(
  problem: MenuProblem,
  menu: Menu,
  { seed, moves, weekMinor }: { readonly seed: number; readonly moves: number; readonly weekMinor: number },
): NearSearch {
  if (problem.sittings.length === 0) return { plan: NOTHING, gaps: [], moves: 0 };
  const search = new LocalSearch(problem, { seed });
  const { gaps } = search;
  if (gaps.length > 0) return { gaps, moves: 0 };
  const dishes = dishesOf(problem, menu);
  search.goTo(menu);
  for (const { share, hotMinor, coldMinor } of FALLS) {
    search.goToBest();
    search.fall({ moves: Math.ceil(moves * share), hotMinor, coldMinor, typicalMinor: weekMinor });
    walkBack(search, dishes, menu.trips);
  }
  const [plan, leastBroken] = [search.best(), search.nearest()];
  return { gaps, moves: search.moves, ...(plan ? { plan } : leastBroken && { leastBroken }) };
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
  return { gaps: [], moves, plan: search.best() ?? found };
}
