import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tryEveryPlan } from "../bound/tryEveryPlan.testing.ts";
import { checkPlan } from "../check/index.ts";
import type { MenuProblem, MenuWish } from "../problem.ts";
import { MenuSearch } from "./MenuSearch.ts";
import { wishedWeek as week } from "./wishedWeek.testing.ts";

function searchFor(problem: MenuProblem, moves: number): MenuSearch {
  const search = new MenuSearch(problem, 1, { expectedMoves: moves });
  while (search.advance().moves < moves);
  return search;
}

/** The dish of each day. */
function menuOf(problem: MenuProblem): (number | undefined)[] | undefined {
  const plan = searchFor(problem, 6000).best();
  return plan && problem.sittings.map((_, k) => plan.batches.find(({ sittings }) => sittings.includes(k))?.dish);
}

const cheapest = [0, 0, 0, 0];

describe("a wish", () => {
  it("puts a dish on its day, and elsewhere only where it must", () => {
    expect(menuOf(week([]))).toEqual(cheapest);
    expect(menuOf(week([{ dishes: [2, 3], sittings: [2], least: 1 }]))).toEqual([0, 0, 2, 0]);
    expect(menuOf(week([{ dishes: [0], sittings: [0, 1], most: 0 }]))).toEqual([1, 1, 0, 0]);
  });

  it("with a price is met where that is cheaper", () => {
    const wish = (missMinor: number): MenuWish => ({ dishes: [3], sittings: [1], least: 1, missMinor });
    expect(menuOf(week([wish(119)]))).toEqual(cheapest);
    expect(menuOf(week([wish(121)]))?.[1]).toBe(3);
  });

  it("that keeps a dish from two days running leaves a day between", () => {
    const apart = [0, 1, 2].map((day): MenuWish => ({ dishes: [0], sittings: [day, day + 1], most: 1 }));
    expect(menuOf(week(apart))?.filter((dish) => dish === 0)).toHaveLength(2);
  });

  it("that no menu can meet leaves no plan", () => {
    expect(menuOf(week([{ dishes: [2], sittings: [1], least: 2 }]))).toBeUndefined();
    expect(searchFor(week([{ dishes: [2], sittings: [1], least: 2 }]), 3000).leastBroken()).toBeDefined();
  });

  it("is met at the least money of all plans, in nearly every tiny week", () => {
    const draw = fc.record(
      {
        dishes: fc.subarray([0, 1, 2], { minLength: 1 }),
        sittings: fc.subarray([0, 1, 2], { minLength: 1 }),
        least: fc.nat(2),
        most: fc.integer({ min: 2, max: 3 }),
        missMinor: fc.nat(250),
      },
      { requiredKeys: ["dishes", "sittings"] },
    );
    let reached = 0;
    let weeks = 0;
    fc.assert(
      fc.property(
        fc.array(draw, { minLength: 1, maxLength: 3 }),
        fc.array(fc.integer({ min: 60, max: 300 }), { minLength: 4, maxLength: 4 }),
        (wishes, prices) => {
          const problem = week(wishes, prices);
          // Three days of three dishes keep the tries few.
          const small = {
            ...problem,
            packs: problem.packs.slice(0, 3),
            sittings: problem.sittings.slice(0, 3).map((one) => ({ ...one, dishes: [0, 1, 2] })),
          };
          const least = tryEveryPlan(small);
          const plan = searchFor(small, 6000).best();
          if (plan === undefined || least === undefined) {
            expect(plan).toBe(least);
            return;
          }
          const { faults, money } = checkPlan(small, plan);
          expect(faults).toEqual([]);
          expect(money.totalMinor).toBeGreaterThanOrEqual(least - 1e-6);
          weeks++;
          if (money.totalMinor < least + 1e-6) reached++;
        },
      ),
      { numRuns: 12, endOnFailure: true },
    );
    expect(reached).toBeGreaterThanOrEqual(weeks - 1);
  });
});
