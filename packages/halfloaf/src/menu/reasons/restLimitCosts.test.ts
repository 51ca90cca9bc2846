import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPlan } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuPlan, MenuProblem } from "../index.ts";
import { changeProblem } from "../replan/changeProblem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { limitCosts } from "./limitCosts.ts";
import { restLimitCosts } from "./restLimitCosts.ts";
import { soupWeek } from "./soupWeek.testing.ts";

function changed(problem: MenuProblem, plan: MenuPlan, today: number) {
  const outcome = changeProblem(problem, plan, [], { today });
  if (!outcome.ok) throw new Error("nothing was changed, and that could not be done");
  return outcome.value;
}

/** Bread on two days and a pot of rice on the others, all bought on the first. */
const plan: MenuPlan = {
  batches: [3, 2, 3, 2].map((dish, k) => ({ dish, sittings: [k] })),
  trips: [0],
  purchases: [
    { trip: 0, pack: 2, count: 1 },
    { trip: 0, pack: 3, count: 2 },
  ],
  uses: [0, 1, 2, 3].map((k) => ({
    lot: k % 2 === 1 ? { purchase: 0, copy: 0 } : { purchase: 1, copy: k / 2 },
    batch: k,
    massG: 100,
  })),
};

test("minutes bind on the days to come alone, by the limits as they are now", () => {
  expect(checkPlan(soupWeek, plan).faults).toEqual([]);
  const limits = { ...soupWeek.limits, handsOnMinutes: [5, 15, 5, 60] };
  const costs = (of: MenuProblem, today: number) =>
    (restLimitCosts(changed(of, plan, today), { seed: 1, moves: 300 }) ?? []).flatMap(({ reading: { limit } }) =>
      limit.kind === "hands-on" ? [limit.day] : [],
    );
  expect(costs({ ...soupWeek, limits }, 0)).not.toEqual([]);
  expect(costs({ ...soupWeek, limits }, 2)).toEqual([2]);
  expect(costs({ ...soupWeek, limits }, 3)).toEqual([]);
  const broken = { ...soupWeek, limits: { ...soupWeek.limits, handsOnMinutes: [60, 60, 60, 3] } };
  expect(restLimitCosts(changed(broken, plan, 2), { seed: 1, moves: 300 })).toBeUndefined();
});

test("of a week that has not begun they are those of the whole week, and trips are named by the week's own indices", () => {
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat({ max: 3 }), (problem, day) => {
      const search = new MenuSearch(problem, 1, { expectedMoves: 800 });
      if (search.gaps.length > 0) return;
      while (search.advance().moves < 800);
      const found = search.best();
      if (found === undefined) return;
      const wish = { seed: 1, moves: 100 };
      const whole = limitCosts(problem, found, wish).limits.map(({ found: _, ...cost }) => cost);
      expect(restLimitCosts(changed(problem, found, 0), wish)).toEqual(whole);
      const today = Math.min(day, problem.days - 1);
      for (const { reading } of restLimitCosts(changed(problem, found, today), wish) ?? [])
        if (reading.limit.kind === "carry")
          expect(problem.trips[reading.limit.trip]?.day).toBeGreaterThanOrEqual(today);
    }),
    { numRuns: 10, endOnFailure: true },
  );
});
