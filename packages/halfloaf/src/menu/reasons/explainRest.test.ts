import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPlan, type PlanFaultCode } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuPlan, MenuProblem } from "../index.ts";
import { changeProblem } from "../replan/changeProblem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { explainRest } from "./explainRest.ts";
import { soupWeek } from "./soupWeek.testing.ts";

const MOVES = 1500;

function changed(problem: MenuProblem, plan: MenuPlan, today: number) {
  const outcome = changeProblem(problem, plan, [], { today });
  if (!outcome.ok) throw new Error("nothing was changed, and that could not be done");
  return outcome.value;
}

function findPlan(problem: MenuProblem): MenuPlan | undefined {
  const search = new MenuSearch(problem, 1, { expectedMoves: MOVES });
  if (search.gaps.length > 0) return undefined;
  while (search.advance().moves < MOVES);
  return search.best();
}

/** Leeks on two days, then bread: 250 and 80 a day, all bought on the first. */
const plan: MenuPlan = {
  batches: [0, 1, 3, 3].map((dish, k) => ({ dish, sittings: [k] })),
  trips: [0],
  purchases: [
    { trip: 0, pack: 1, count: 1 },
    { trip: 0, pack: 3, count: 2 },
  ],
  uses: [0, 1, 2, 3].map((k) => ({
    lot: k < 2 ? { purchase: 0, copy: 0 } : { purchase: 1, copy: k - 2 },
    batch: k,
    massG: k < 2 ? 200 : 100,
  })),
};

test("minutes that are too few for what is left are told of the day to come, as short as they are", () => {
  expect(checkPlan(soupWeek, plan).faults).toEqual([]);
  const tight = { ...soupWeek, limits: { ...soupWeek.limits, handsOnMinutes: [60, 60, 60, 3] } };
  const why = explainRest(changed(tight, plan, 2), { seed: 1, moves: 2000 });
  if (why.kind !== "collision") throw new Error(why.kind);
  const minutes = why.alone.find(({ limit }) => limit === "hands-on");
  expect(minutes?.excesses).toMatchObject([{ limit: { kind: "hands-on", day: 3 }, allowed: 3, reached: 5, excess: 2 }]);
  expect(minutes?.found.plan.batches.slice(0, 2)).toEqual(plan.batches.slice(0, 2));
  expect(why.collisions).toEqual([["hands-on"]]);
});

const FAULTS: Readonly<Record<string, PlanFaultCode>> = { trips: "max-trips", pot: "batch-size" };

test("whatever is said to be enough is shown by a plan of the whole week that keeps what is over and all other limits", () => {
  const told: Record<string, number> = { gaps: 0, possible: 0, collision: 0 };
  fc.assert(
    fc.property(arbitraryWeek(), fc.integer({ min: 1, max: 3 }), fc.constantFrom(0.5, 0.8), (problem, today, share) => {
      const old = findPlan(problem);
      if (old === undefined || today >= problem.days) return;
      const { highTillMinor, tripMinor } = checkPlan(problem, old).money;
      const over = old.purchases.filter(({ trip }) => (problem.trips[trip]?.day ?? 0) < today);
      const budgetMinor = Math.floor(share * (highTillMinor + tripMinor));
      const week = changed({ ...problem, limits: { ...problem.limits, budgetMinor } }, old, today);
      const why = explainRest(week, { seed: 1, moves: 300 });
      told[why.kind] = (told[why.kind] ?? 0) + 1;
      if (why.kind !== "collision") return;
      for (const { excesses, found } of [...why.alone, ...(why.jointly ? [why.jointly] : [])]) {
        const codes = new Set<string>(excesses.map(({ limit }) => FAULTS[limit.kind] ?? limit.kind));
        const { faults } = checkPlan(week.problem, found.plan);
        expect(faults.length).toBeGreaterThan(0);
        expect(faults.filter(({ code }) => !codes.has(code))).toEqual([]);
        for (const purchase of over) expect(found.plan.purchases).toContainEqual(purchase);
      }
    }),
    { numRuns: 12, endOnFailure: true },
  );
  expect(told.collision).toBeGreaterThan(0);
});
