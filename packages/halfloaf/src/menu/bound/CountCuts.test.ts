import fc from "fast-check";
import { expect, test } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { LinearRow } from "../linear/LinearModel.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { CountCuts } from "./CountCuts.ts";
import { listMeasures } from "./listMeasures.ts";
import { projectPlan } from "./projectPlan.testing.ts";
import { gatherWeeklyFacts } from "./WeeklyFacts.ts";

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

test("no cut found between plans, with fewer packs than they need, cuts a plan off", () => {
  const share = fc.integer({ min: 0, max: 10 }).map((tenths) => tenths / 10);
  let found = 0;
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat(99), share, share, (problem, seed, mixed, bought) => {
      const [one, other = one] = findPoints(problem, seed);
      if (one === undefined || other === undefined) return;
      const facts = gatherWeeklyFacts(problem);
      const cuts = new CountCuts(facts, listMeasures(facts)).separate((column) => {
        const value = mixed * (one.get(column) ?? 0) + (1 - mixed) * (other.get(column) ?? 0);
        return column.startsWith("n") || column.startsWith("z") ? bought * value : value;
      });
      found += cuts.length;
      for (const { row } of cuts)
        for (const point of [one, other]) expect(missing(row, point), row.name).toBeLessThanOrEqual(1e-6);
    }),
    { numRuns: 60, endOnFailure: true },
  );
  expect(found).toBeGreaterThan(40);
}, 120_000);

test("a food bought for half is there for half of the sittings, however many dishes share it", () => {
  const week = fc.sample(arbitraryWeek(), { numRuns: 1, seed: 7 })[0] as MenuProblem;
  const [first] = week.sittings;
  if (first === undefined) throw new Error("the week has no sitting");
  const dish = week.dishes[0] as MenuProblem["dishes"][number];
  const makings = [{ food: 0, massG: 50 }];
  const problem: MenuProblem = {
    ...week,
    lots: [],
    dishes: [0, 1, 2, 3].map((main) => ({ ...dish, id: `dish-${main}`, makings, main, needsHeat: false })),
    sittings: [0, 1, 2, 3].map((day) => ({
      ...first,
      day: Math.min(day, week.days - 1),
      portions: 1,
      minutes: 999,
      packed: false,
      dishes: [0, 1, 2, 3],
    })),
    packs: [{ food: 0, shop: 0, massG: 1000, priceMinor: 500, limit: 9, fromDay: 0, toDay: week.days }],
    limits: { ...week.limits, batchPortions: 99 },
  };
  const facts = gatherWeeklyFacts(problem);
  // Each of the four dishes once, and half a pack that would do for all of them.
  const point = (column: string): number => (column.startsWith("x") ? 1 : 0.5);
  const names = new CountCuts(facts, listMeasures(facts)).separate(point).map(({ row }) => row.name);
  expect(names.some((name) => name.startsWith("count z 0"))).toBe(true);
});
