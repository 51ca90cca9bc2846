import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { LocalSearch, type Menu } from "../search/LocalSearch.ts";
import type { Penalties } from "../search/Penalties.ts";

/** A plan without fault and its money as `checkPlan` reckons it, in minor units. */
export interface FoundPlan {
  readonly plan: MenuPlan;
  readonly moneyMinor: number;
}

/** What a short search is told. */
export interface SearchWish {
  /** Menu to begin from; it need not keep the limits, nor serve every sitting. Absent: one drawn by lot. */
  readonly start?: Menu;
  /** Moves to make. */
  readonly moves: number;
  readonly seed: number;
  /** True where `start` is a good plan that little is asked of: the search stays nearer to it and is done in fewer moves. */
  readonly isNear?: boolean;
  /** Limits that may be gone beyond, by their price in minor units for each unit. */
  readonly elastic?: Partial<Penalties>;
  /** How much more than usual the limits weigh that are kept; they must outweigh elastic ones of a high price. */
  readonly weight?: number;
  /** Money of such a plan, where it is known (minor units); moves are proposed in its measure. */
  readonly typicalMinor?: number;
  /** Ends with the first plan that keeps the limits, where all that counts is whether there is one. */
  readonly untilFound?: boolean;
}

/** What a short search came to. */
export interface SearchAnswer {
  /** Best menu that keeps the limits (the elastic ones apart); absent where none was found. */
  readonly best?: MenuPlan;
  /** What the search makes it cost, prices of elastic limits included (minor units). */
  readonly costMinor: number;
  /** The menu that came nearest, while none kept the limits. */
  readonly nearest?: MenuPlan;
  readonly moves: number;
}

/** Temperatures at the beginning and the end, for a week of 55.00: near a good plan, around a menu, from one drawn by lot. */
const NEAR = { hotMinor: 12, coldMinor: 2 };
const AROUND = { hotMinor: 30, coldMinor: 4 };
const ANEW = { hotMinor: 80, coldMinor: 4 };

/** Searches a little around a known menu, or from one drawn by lot. */
export function searchAgain(problem: MenuProblem, wish: SearchWish): SearchAnswer {
  const { start, moves, isNear, typicalMinor, untilFound } = wish;
  const search = new LocalSearch(problem, wish);
  if (search.gaps.length > 0) return { costMinor: Number.POSITIVE_INFINITY, moves: 0 };
  if (start) search.goTo(start);
  else search.goAnywhere();
  search.fall({
    moves,
    ...(isNear ? NEAR : start ? AROUND : ANEW),
    ...(typicalMinor !== undefined && { typicalMinor }),
    ...(untilFound && { untilFound }),
  });
  const { costMinor } = search;
  const [best, nearest] = [search.best(), search.nearest()];
  return { ...(best && { best }), costMinor, ...(nearest && { nearest }), moves: search.moves };
}
