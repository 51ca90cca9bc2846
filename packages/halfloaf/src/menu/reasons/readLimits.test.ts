import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPlan } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import { tinyPlan, tinyProblem } from "../check/tinyWeek.testing.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { listBinding } from "./limitCosts.ts";
import { readExcesses, readLimits } from "./readLimits.ts";

/** The kinds of limit by the judge's words for them. */
const KIND_OF: Readonly<Record<string, string>> = {
  budget: "budget",
  "hands-on": "hands-on",
  elapsed: "elapsed",
  bound: "bound",
  uses: "uses",
  main: "main",
  distinct: "distinct",
  wish: "wish",
  "max-trips": "trips",
  "batch-size": "pot",
  carry: "carry",
  fridge: "fridge",
  freezer: "freezer",
  "must-use": "must-use",
};

test("a plan that meets every limit to the last gram, minute and coin is read so", () => {
  expect(readExcesses(tinyProblem, tinyPlan)).toEqual([]);
  const full = readLimits(tinyProblem, tinyPlan).filter(({ excess }) => Math.abs(excess) < 1e-9);
  const kinds = new Set(full.map(({ limit }) => limit.kind));
  expect([...kinds].sort()).toEqual(
    [
      "bound",
      "budget",
      "carry",
      "distinct",
      "elapsed",
      "energy",
      "freezer",
      "fridge",
      "hands-on",
      "main",
      "must-use",
      "pot",
      "trips",
      "uses",
    ].sort(),
  );
  expect(listBinding(tinyProblem, tinyPlan).length).toBeGreaterThan(8);
});

test("limits are read as the judge does: the same kinds are gone beyond, by the plans that break fewest", () => {
  let broken = 0;
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat({ max: 1000 }), (week, seed) => {
      const tight = { ...week, limits: { ...week.limits, handsOnMinutes: week.limits.handsOnMinutes.map(() => 20) } };
      const search = new MenuSearch(tight, seed, { expectedMoves: 2000 });
      if (search.gaps.length > 0) return;
      search.advance();
      const plan = search.best() ?? search.leastBroken();
      if (plan === undefined) return;
      const told = new Set(checkPlan(tight, plan).faults.flatMap(({ code }) => KIND_OF[code] ?? []));
      const read = readExcesses(tight, plan).map(({ limit }) => limit.kind);
      // The floor of energy is the judge's alone, so energy is left out on both sides.
      expect(new Set(read.filter((kind) => kind !== "energy"))).toEqual(told);
      broken += told.size;
    }),
    { numRuns: 60, endOnFailure: true },
  );
  expect(broken).toBeGreaterThan(10);
});
