import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FoodCosting } from "./FoodCosting.ts";
import { LeastCosts } from "./LeastCosts.ts";
import { arbitraryFood, type TinyFood, toProblem } from "./tinyFood.testing.ts";

const MISSING_MINOR = 700;

describe("what a food costs at least", () => {
  it("is never above what its needs come to, whichever trips are made, however they are spread", () => {
    fc.assert(
      fc.property(fc.boolean().chain(arbitraryFood), fc.nat(), (tiny, made) => {
        const problem = toProblem(tiny);
        const costing = new FoodCosting(problem);
        costing.setTrips(Uint8Array.from(problem.trips, (_, trip) => (made >> trip) & 1));
        costing.evaluate(0, Float64Array.from(tiny.needsG), 0);
        const totalG = tiny.needsG.reduce((sum, massG) => sum + massG, 0);
        const least = new LeastCosts(problem, costing.foods).of(0, totalG, MISSING_MINOR);
        expect(least).toBeLessThanOrEqual(costing.cost + MISSING_MINOR * costing.missing + 1e-6);
      }),
      { numRuns: 400, endOnFailure: true },
    );
  });

  it("is the price of whole packs for what goes beyond the stock, and never more than missing it", () => {
    const tiny: TinyFood = {
      needsG: [310, 310, 310, 310],
      food: { openedDays: 2, unopenedDays: 3, wasteMinorPerG: 0.1, creditMinorPerG: 0, creditOpenedMinorPerG: 0 },
      packs: [{ food: 0, shop: 0, massG: 150, priceMinor: 100, fromDay: 0, toDay: 9999, limit: 9999 }],
      lots: [{ food: 0, massG: 40, lastDay: 3, opened: false, mustUse: false }],
      trips: [[0, 0]],
    };
    const problem = toProblem(tiny);
    const least = new LeastCosts(problem, new FoodCosting(problem).foods);
    const costOf = [40, 50, 180, 220].map((totalG) => least.of(0, totalG, MISSING_MINOR));
    expect(costOf).toEqual([0, 100, 100, 200]);
    expect(least.of(0, 220, 150)).toBe(150);
  });
});
