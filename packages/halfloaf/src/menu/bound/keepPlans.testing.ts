import fc from "fast-check";
import { expect } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { LinearRow } from "../linear/LinearModel.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import type { ViolatedCut } from "./LevelCuts.ts";
import { type FoodMeasure, listMeasures } from "./listMeasures.ts";
import { projectPlan } from "./projectPlan.testing.ts";
import { gatherWeeklyFacts, type WeeklyFacts } from "./WeeklyFacts.ts";

type MakeCuts = (
  facts: WeeklyFacts,
  measures: readonly FoodMeasure[],
) => { separate(point: (column: string) => number): ViolatedCut[] };

/**
 * Looks for cuts between the plans of random weeks, with fewer packs than they need, and expects none of them to cut a plan
 * off. Gives the number of cuts found.
 */
export function expectPlansKept(makeCuts: MakeCuts, numRuns: number): number {
  const share = fc.integer({ min: 0, max: 10 }).map((tenths) => tenths / 10);
  let found = 0;
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat(99), share, share, (problem, seed, mixed, bought) => {
      const [one, other = one] = findPoints(problem, seed);
      if (one === undefined || other === undefined) return;
      const facts = gatherWeeklyFacts(problem);
      const cuts = makeCuts(facts, listMeasures(facts)).separate((column) => {
        const value = mixed * (one.get(column) ?? 0) + (1 - mixed) * (other.get(column) ?? 0);
        return column.startsWith("n") || column.startsWith("z") ? bought * value : value;
      });
      found += cuts.length;
      for (const { row } of cuts)
        for (const point of [one, other]) expect(missing(row, point), row.name).toBeLessThanOrEqual(1e-6);
    }),
    { numRuns, endOnFailure: true },
  );
  return found;
}

/** Points of the model that short searches from two seeds come to. */
function findPoints(problem: MenuProblem, seed: number): Map<string, number>[] {
  return [seed, seed + 100].flatMap((one) => {
    const search = new MenuSearch(problem, one, { expectedMoves: 4000 });
    if (search.gaps.length > 0) return [];
    search.advance();
    const plan = search.advance() && search.best();
    return plan === undefined ? [] : [projectPlan(problem, plan)];
  });
}

function missing({ lower, entries }: LinearRow, point: ReadonlyMap<string, number>): number {
  return lower - entries.reduce((sum, [column, value]) => sum + value * (point.get(column) ?? 0), 0);
}
