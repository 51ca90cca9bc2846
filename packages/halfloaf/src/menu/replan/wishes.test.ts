import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuWish } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { wishedWeek } from "../search/wishedWeek.testing.ts";
import { changeProblem } from "./changeProblem.ts";
import { toRemainder } from "./Remainder.ts";

const ALL = [0, 1, 2, 3];

/** Dish 3 on the first day, the cheapest one on the others. */
const plan: MenuPlan = {
  batches: [3, 0, 0, 0].map((dish, k) => ({ dish, sittings: [k] })),
  trips: [0],
  purchases: [
    { trip: 0, pack: 0, count: 3 },
    { trip: 0, pack: 3, count: 1 },
  ],
  uses: [0, 1, 2, 3].map((batch) => {
    return { lot: { purchase: batch === 0 ? 1 : 0, copy: Math.max(0, batch - 1) }, batch, massG: 100 };
  }),
};

function restOf(wish: MenuWish): readonly number[] | undefined {
  const problem = wishedWeek([wish]);
  expect(checkPlan(problem, plan).faults).toEqual([]);
  const { problem: rest, join } = toRemainder({ problem, plan, today: 1, losses: [] });
  const search = new MenuSearch(rest, 1, { expectedMoves: 4000 });
  while (search.advance().moves < 4000);
  const best = search.best();
  if (best === undefined) return undefined;
  const whole = join(best);
  expect(checkPlan(problem, whole).faults).toEqual([]);
  return ALL.map((k) => whole.batches.find(({ sittings }) => sittings.includes(k))?.dish as number);
}

describe("a wish in the middle of the week", () => {
  it("is met by what was eaten before", () => {
    expect(restOf({ dishes: [3], sittings: ALL, least: 1, most: 1 })).toEqual([3, 0, 0, 0]);
  });

  it("asks no more of a week than its sittings that are left", () => {
    const problem = wishedWeek([{ dishes: [3], sittings: [0, 1], least: 2 }]);
    const changed = changeProblem(problem, plan, [{ kind: "skip", sittings: [1] }]);
    expect(changed.ok && changed.value.problem.wishes).toEqual([{ dishes: [3], sittings: [0], least: 1 }]);
    expect(changed.ok && checkPlan(changed.value.problem, changed.value.plan).faults).toEqual([]);
  });
});
