import fc from "fast-check";
import { expect, test } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuProblem } from "../problem.ts";
import { CountCuts } from "./CountCuts.ts";
import { listMeasures } from "./listMeasures.ts";
import { gatherWeeklyFacts } from "./WeeklyFacts.ts";

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
