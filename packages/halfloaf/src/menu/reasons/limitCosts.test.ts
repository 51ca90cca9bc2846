import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPlan } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { limitCosts } from "./limitCosts.ts";
import { readLimits } from "./readLimits.ts";
import { relaxLimit } from "./relaxLimit.ts";
import { soupWeek } from "./soupWeek.testing.ts";

function findPlan(problem: MenuProblem, seed: number, moves = 4000): MenuPlan | undefined {
  const search = new MenuSearch(problem, seed, { expectedMoves: moves });
  if (search.gaps.length > 0) return undefined;
  while (search.advance().moves < moves);
  return search.best();
}

/** The problem with no more minutes and money than a plan takes. */
function tighten(problem: MenuProblem, plan: MenuPlan): MenuProblem {
  const { highTillMinor, tripMinor } = checkPlan(problem, plan).money;
  const handsOnMinutes = problem.limits.handsOnMinutes.map((minutes, day) => {
    const reading = readLimits(problem, plan).find(({ limit }) => limit.kind === "hands-on" && limit.day === day);
    return reading?.reached ?? minutes;
  });
  return { ...problem, limits: { ...problem.limits, handsOnMinutes, budgetMinor: highTillMinor + tripMinor } };
}

test("what the different dishes and the uses cost is known by heart", () => {
  // Bread twice at 80; two pots of leek, on days in a row from one large pack, at 250.
  const plan = findPlan(soupWeek, 1) as MenuPlan;
  expect(checkPlan(soupWeek, plan).money.totalMinor).toBe(410);
  const { limits, base, moves } = limitCosts(soupWeek, plan, { seed: 1, moves: 2000 });
  expect(base.moneyMinor).toBe(410);
  expect(moves).toBeGreaterThan(2000);
  // A third evening of bread leaves one pot of leek from a small pack: 240 + 150.
  const savings = Object.fromEntries(limits.map(({ reading, savesMinor }) => [reading.limit.kind, savesMinor]));
  expect(savings.uses).toBe(20);
  // Plans of 410 differ in how many dishes they have, so this limit may not bind at all.
  expect([undefined, 0]).toContain(savings.distinct);
  const [dearest] = limits;
  if (!dearest?.found) throw new Error("no plan is behind the saving");
  expect([dearest.reading.limit.kind, dearest.found.moneyMinor]).toEqual(["uses", 390]);
  expect(checkPlan(soupWeek, dearest.found.plan).faults).toMatchObject([{ code: "uses" }]);
  expect(checkPlan(relaxLimit(soupWeek, dearest.reading.limit, 1), dearest.found.plan).faults).toEqual([]);
});

test("loosening never makes the best plan found dearer, and what it saves needs the loosening", () => {
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat({ max: 1000 }), (easy, seed) => {
      // Few uses of each dish bind in most weeks, so that there is something to be saved.
      const varied = { ...easy, dishes: easy.dishes.map((dish) => ({ ...dish, maxUses: Math.min(3, dish.maxUses) })) };
      const plan = findPlan(varied, seed);
      if (plan === undefined) return;
      const week = tighten(varied, plan);
      const { limits, base } = limitCosts(week, plan, { seed, moves: 1000 });
      expect(base.moneyMinor).toBeLessThanOrEqual(checkPlan(week, plan).money.totalMinor + 1e-9);
      expect(checkPlan(week, base.plan).faults).toEqual([]);
      for (const { reading, step, savesMinor, found } of limits) {
        expect(savesMinor).toBeGreaterThanOrEqual(0);
        const loose = relaxLimit(week, reading.limit, step);
        expect(checkPlan(loose, base.plan).faults).toEqual([]);
        if (found === undefined) continue;
        expect(savesMinor).toBeCloseTo(base.moneyMinor - found.moneyMinor, 6);
        expect(checkPlan(loose, found.plan).faults).toEqual([]);
        expect(checkPlan(week, found.plan).faults).not.toEqual([]);
      }
    }),
    { numRuns: 40, endOnFailure: true },
  );
});
