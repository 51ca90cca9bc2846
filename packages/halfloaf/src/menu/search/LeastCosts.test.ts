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

  it("counts what is left of a pack as opened, and stock that goes off as lost", () => {
    const tiny: TinyFood = {
      needsG: [100, 0, 0, 0],
      food: { openedDays: 2, unopenedDays: 3, wasteMinorPerG: 0.1, creditMinorPerG: 0.5, creditOpenedMinorPerG: 0.2 },
      packs: [{ food: 0, shop: 0, massG: 150, priceMinor: 100, fromDay: 0, toDay: 9999, limit: 9999 }],
      lots: [{ food: 0, massG: 40, lastDay: 1, opened: false, mustUse: false }],
      trips: [[0, 0]],
    };
    const problem = toProblem(tiny);
    const least = new LeastCosts(problem, new FoodCosting(problem).foods);
    expect(least.of(0, 0, MISSING_MINOR)).toBeCloseTo(20, 9);
    // 60 g beyond the stock, as nearly as steps of mass tell: a pack less 90 g at 0.2.
    expect(least.of(0, 100, MISSING_MINOR)).toBeGreaterThan(20 + 100 - 0.2 * 92);
    expect(least.of(0, 100, MISSING_MINOR)).toBeLessThanOrEqual(20 + 100 - 0.2 * 90);
  });

  it("counts stock of a food that lasts for what it would be worth if it stayed", () => {
    const tiny: TinyFood = {
      needsG: [100, 0, 0, 0],
      food: { wasteMinorPerG: 0, creditMinorPerG: 0.5, creditOpenedMinorPerG: 0.5, openedDays: 99, unopenedDays: 99 },
      packs: [{ food: 0, shop: 0, massG: 150, priceMinor: 100, fromDay: 0, toDay: 9999, limit: 9999 }],
      lots: [{ food: 0, massG: 40, lastDay: 99, opened: false, mustUse: false }],
      trips: [[0, 0]],
    };
    const problem = toProblem(tiny);
    const costing = new FoodCosting(problem);
    const least = new LeastCosts(problem, costing.foods);
    expect(costing.foods[0]?.lasting).toBe(true);
    expect(least.of(0, 30, MISSING_MINOR)).toBeCloseTo(15, 9);
    costing.setTrips(Uint8Array.of(1));
    costing.evaluate(0, Float64Array.from(tiny.needsG), 0);
    expect(costing.cost).toBeCloseTo(75, 9);
    expect(least.of(0, 100, MISSING_MINOR)).toBeGreaterThan(74);
  });
});
