import fc from "fast-check";
import { expect, test } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { LinearRow } from "../linear/LinearModel.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { CountCuts } from "./CountCuts.ts";
import { HullCuts } from "./HullCuts.ts";
import { listMeasures } from "./listMeasures.ts";
import { projectPlan } from "./projectPlan.testing.ts";
import { gatherWeeklyFacts } from "./WeeklyFacts.ts";

const share = fc.integer({ min: 0, max: 10 }).map((tenths) => tenths / 10);

/** Points of the model that short searches from two seeds come to; of each the first plan it meets. */
function findPoints(problem: MenuProblem, seed: number): Map<string, number>[] {
  return [seed, seed + 100].flatMap((one) => {
    const search = new MenuSearch(problem, one, { expectedMoves: 4000 });
    if (search.gaps.length > 0) return [];
    let plan: MenuPlan | undefined;
    for (let round = 0; round < 2 && plan === undefined; round++) {
      search.advance();
      plan = search.best();
    }
    return plan === undefined ? [] : [projectPlan(problem, plan)];
  });
}

function missing({ lower, entries }: LinearRow, point: ReadonlyMap<string, number>): number {
  return lower - entries.reduce((sum, [column, value]) => sum + value * (point.get(column) ?? 0), 0);
}

test("no cut found between plans, with fewer packs than they need, cuts a plan off", () => {
  const found = { counts: 0, hulls: 0 };
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat(99), share, share, (problem, seed, mixed, bought) => {
      const [one, other = one] = findPoints(problem, seed);
      if (one === undefined || other === undefined) return;
      const facts = gatherWeeklyFacts(problem);
      const measures = listMeasures(facts);
      const between = (column: string): number => {
        const value = mixed * (one.get(column) ?? 0) + (1 - mixed) * (other.get(column) ?? 0);
        return column.startsWith("n") || column.startsWith("z") ? bought * value : value;
      };
      const counts = new CountCuts(facts, measures).separate(between);
      const hulls = new HullCuts(facts, measures).separate(between);
      found.counts += counts.length;
      found.hulls += hulls.length;
      for (const { row } of [...counts, ...hulls])
        for (const point of [one, other]) expect(missing(row, point), row.name).toBeLessThanOrEqual(1e-6);
    }),
    { numRuns: 60, endOnFailure: true },
  );
  expect(found.counts).toBeGreaterThan(40);
  expect(found.hulls).toBeGreaterThan(0);
});
