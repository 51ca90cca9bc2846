import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPlan } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuProblem } from "../problem.ts";
import { explainImpossible } from "./explainImpossible.ts";
import { soupWeek } from "./soupWeek.testing.ts";

function limited(limits: Partial<MenuProblem["limits"]>, rest: Partial<MenuProblem> = {}): MenuProblem {
  return { ...soupWeek, ...rest, limits: { ...soupWeek.limits, ...limits } };
}

function explain(problem: MenuProblem) {
  return explainImpossible(problem, { seed: 1, moves: 2000 });
}

test("a budget too small by so much is told to the coin, and it collides with the variety", () => {
  // The cheapest week is 410; with bread every evening it would be 320, so uses and budget stand against each other.
  const why = explain(limited({ budgetMinor: 330, distinct: 1 }));
  if (why.kind !== "collision") throw new Error(why.kind);
  const budget = why.alone.find(({ limit }) => limit === "budget");
  expect(budget?.excesses).toMatchObject([{ limit: { kind: "budget" }, allowed: 330, reached: 410, excess: 80 }]);
  const uses = why.alone.find(({ limit }) => limit === "uses");
  expect(uses?.excesses).toMatchObject([{ limit: { kind: "uses", dish: 3 }, reached: 4, excess: 2 }]);
  expect(why.collisions).toEqual([["budget", "uses"]]);
  expect(why.notAlone).toContain("hands-on");
});

test("what only whole packs make impossible is told so", () => {
  // Rice would be 40 an evening, but its pack is 400; leeks cut at will 100, two of each and of bread 80.
  const why = explain(limited({ budgetMinor: 300 }));
  if (why.kind !== "collision") throw new Error(why.kind);
  expect(why.onlyWholePacks).toBe(true);
  const poor = explain(limited({ budgetMinor: 100 }));
  expect(poor.kind === "collision" && poor.onlyWholePacks).toBe(false);
});

test("two collisions that have nothing to do with each other are both found, and all is loosened jointly", () => {
  const why = explain(limited({ budgetMinor: 200, handsOnMinutes: [1, 60, 60, 60] }));
  if (why.kind !== "collision") throw new Error(why.kind);
  expect(why.alone).toEqual([]);
  expect(why.collisions.map((kinds) => kinds[0]).sort()).toEqual(["budget", "hands-on"]);
  const excesses = Object.fromEntries((why.jointly?.excesses ?? []).map(({ limit, excess }) => [limit.kind, excess]));
  expect(excesses["hands-on"]).toBe(4);
  expect(excesses.budget).toBeGreaterThanOrEqual(120);
});

test("a sitting without a dish comes first, with the minutes that would give it one", () => {
  const sittings = soupWeek.sittings.map((sitting, k) => (k === 2 ? { ...sitting, minutes: 3 } : sitting));
  expect(explain({ ...soupWeek, sittings })).toEqual({ kind: "gaps", gaps: [{ sitting: 2, moreMinutes: 2 }] });
});

test("a sitting before the first trip is told apart from one that lacks minutes", () => {
  const trips = soupWeek.trips.map((trip) => ({ ...trip, period: 2 }));
  const hurried = soupWeek.sittings.map((sitting, k) => (k === 1 ? { ...sitting, minutes: 3 } : sitting));
  expect(explain({ ...soupWeek, trips, sittings: hurried })).toEqual({
    kind: "gaps",
    gaps: [
      { sitting: 0, isBeforeTrips: true },
      { sitting: 1, moreMinutes: 2, isBeforeTrips: true },
    ],
  });
});

test("a week that is possible is said to be so, with a plan", () => {
  const why = explain(soupWeek);
  expect(why.kind === "possible" && checkPlan(soupWeek, why.found.plan).faults).toEqual([]);
});

test("whatever is said to be enough is shown by a plan that keeps all other limits", () => {
  const told: Record<string, number> = { gaps: 0, possible: 0, collision: 0 };
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat({ max: 1000 }), (week, seed) => {
      const handsOnMinutes = week.limits.handsOnMinutes.map((minutes) => 0.25 * minutes);
      const tight = { ...week, limits: { ...week.limits, handsOnMinutes, budgetMinor: 600 } };
      const why = explainImpossible(tight, { seed, moves: 1000 });
      told[why.kind] = (told[why.kind] ?? 0) + 1;
      if (why.kind === "possible") expect(checkPlan(tight, why.found.plan).faults).toEqual([]);
      if (why.kind !== "collision") return;
      for (const { limit, excesses, found } of why.alone) {
        expect(new Set(excesses.map((reading) => reading.limit.kind))).toEqual(new Set([limit]));
        const { faults } = checkPlan(tight, found.plan);
        expect(faults.length).toBeGreaterThan(0);
        expect(new Set(faults.map(({ code }) => code)).size).toBe(1);
      }
      expect(why.jointly?.excesses.length).not.toBe(0);
      for (const kinds of why.collisions) for (const { limit } of why.alone) expect(kinds).toContain(limit);
    }),
    { numRuns: 15 },
  );
  expect(told.collision).toBeGreaterThan(1);
});
