import { proveShortList } from "@halfloaf/engine";
import { type MenuPlan, type MenuProblem, MenuSearch } from "halfloaf/menu";
import { gapPct } from "./measureProof.ts";
import type { SearchRow } from "./measureSearch.ts";
import { spreadOf } from "./statistics.ts";
import { measurePace, timeSearch } from "./timeSearch.ts";

/** Proven gaps within a short list of one problem in percent, by seconds. */
export type ShortListRow = ReadonlyMap<number, number | undefined>;

const DISHES = 20;
const SEARCHES = 12;
const MOVES = 60_000;
const SEARCH_S = 2;

/**
 * Takes the dishes of the best plan and those that short searches from other seeds serve most, searches among them, and
 * proves how cheap no plan of them can be.
 */
export async function measureShortList(
  { instance: { problem, seed }, bestPlan, bestMinor }: SearchRow,
  seconds: readonly number[],
): Promise<ShortListRow> {
  if (!bestPlan || bestMinor === undefined) return new Map();
  const dishes = chooseDishes(problem, bestPlan);
  const narrow = narrowTo(problem, new Set(dishes));
  const found = timeSearch(narrow, seed, SEARCH_S, measurePace(narrow)).costMinor;
  const costMinor = Math.min(bestMinor, found ?? Number.POSITIVE_INFINITY);
  const bounds = new Map<number, number>();
  await proveShortList(problem, dishes, {
    seconds: Math.max(...seconds),
    incumbentMinor: costMinor,
    onProgress: ({ boundMinor, elapsed }) => {
      for (const s of seconds) if (elapsed <= s) bounds.set(s, boundMinor);
    },
  });
  return new Map(seconds.map((s) => [s, gapPct(costMinor, bounds.get(s))]));
}

function chooseDishes(problem: MenuProblem, best: MenuPlan): number[] {
  const uses = new Map<number, number>();
  for (let seed = 1; seed <= SEARCHES; seed++) {
    const search = new MenuSearch(problem, 5000 + seed, { expectedMoves: MOVES });
    while (search.advance().moves < MOVES);
    for (const { dish, sittings } of search.best()?.batches ?? [])
      uses.set(dish, (uses.get(dish) ?? 0) + sittings.length);
  }
  const often = [...uses].sort((a, b) => b[1] - a[1]).map(([dish]) => dish);
  return [...new Set([...best.batches.map(({ dish }) => dish), ...often])].slice(0, DISHES);
}

function narrowTo(problem: MenuProblem, dishes: ReadonlySet<number>): MenuProblem {
  const sittings = problem.sittings.map((sitting) => ({
    ...sitting,
    dishes: sitting.dishes.filter((dish) => dishes.has(dish)),
  }));
  return { ...problem, sittings };
}

/** Gaps over the problems of a group, by seconds. */
export function summariseShortList(rows: readonly ShortListRow[], seconds: readonly number[]) {
  return Object.fromEntries(seconds.map((s) => [`${s}s`, { gapPct: spreadOf(rows.map((row) => row.get(s))) }]));
}
