import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuPack, MenuProblem } from "../problem.ts";
import { atHighPrices } from "./atHighPrices.ts";
import { MenuSearch } from "./MenuSearch.ts";
import { wishedWeek } from "./wishedWeek.testing.ts";

const MOVES = 4000;

/** A week of one dish for which there are a pack with a sure price and one that is guessed. */
function guessedWeek(sureMinor: number, guessMinor: number, highMinor: number, budgetMinor: number): MenuProblem {
  const week = wishedWeek([], [sureMinor]);
  const [sure] = week.packs as [MenuPack];
  return {
    ...week,
    sittings: week.sittings.map((sitting) => ({ ...sitting, dishes: [0] })),
    packs: [sure, { ...sure, priceMinor: guessMinor, highMinor }],
    limits: { ...week.limits, budgetMinor },
  };
}

function search(problem: MenuProblem): MenuPlan | undefined {
  const one = new MenuSearch(problem, 1, { expectedMoves: MOVES });
  while (one.advance().moves < MOVES);
  return one.best();
}

describe("the problem at the prices that the budget must stand", () => {
  it("is none where all prices are sure, or nothing limits the money", () => {
    expect(atHighPrices(wishedWeek([]))).toBeUndefined();
    const { limits, ...week } = guessedWeek(100, 90, 120, 0);
    const { budgetMinor: _, ...free } = limits;
    expect(atHighPrices({ ...week, limits: free })).toBeUndefined();
  });

  it("has a plan that keeps the budget wherever any choice of packs does, and it keeps it in the problem itself", () => {
    let rescued = 0;
    const price = fc.integer({ min: 50, max: 150 });
    fc.assert(
      fc.property(price, price, fc.nat({ max: 60 }), fc.nat({ max: 200 }), (sure, guess, rise, spare) => {
        const high = guess + rise;
        const budgetMinor = 4 * Math.min(sure, high) - 100 + spare;
        const problem = guessedWeek(sure, guess, high, budgetMinor);
        const raised = atHighPrices(problem) as MenuProblem;
        const plan = search(raised);
        // Four packs are needed, and at high prices the cheaper kind is the one that stands the least budget.
        expect(plan !== undefined).toBe(4 * Math.min(sure, high) <= budgetMinor);
        if (plan === undefined) return;
        expect(checkPlan(problem, plan).faults).toEqual([]);
        if (search(problem) === undefined) rescued++;
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(rescued).toBeGreaterThan(0);
  });

  it("counts offers at what they come to then", () => {
    const week = guessedWeek(100, 90, 120, 400);
    const packs = week.packs.map((pack) => ({ ...pack, offer: { count: 2, priceMinor: 150, highMinor: 170 } }));
    expect(atHighPrices({ ...week, packs })?.packs).toEqual(
      [100, 120].map((priceMinor, at) => {
        const { highMinor: _, ...pack } = packs[at] as MenuPack;
        return { ...pack, priceMinor, offer: { count: 2, priceMinor: 170 } };
      }),
    );
  });
});
