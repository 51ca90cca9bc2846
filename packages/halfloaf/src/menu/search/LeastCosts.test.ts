import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FoodCosting } from "./FoodCosting.ts";
import { LeastCosts } from "./LeastCosts.ts";
import { arbitraryFood, type TinyFood, toProblem } from "./tinyFood.testing.ts";

const MISSING_MINOR = 700;

/** A food in packs of 150 g at 100 with 40 g of it in stock, sold from the first day on. */
function soldByThePack(
  needsG: readonly number[],
  food: TinyFood["food"],
  lastDay: number,
): { readonly costing: FoodCosting; readonly least: LeastCosts } {
  const problem = toProblem({
    needsG,
    food,
    packs: [{ food: 0, shop: 0, massG: 150, priceMinor: 100, fromDay: 0, toDay: 9999, limit: 9999 }],
    lots: [{ food: 0, massG: 40, lastDay, opened: false, mustUse: false }],
    trips: [[0, 0]],
  });
  const costing = new FoodCosting(problem);
  return { costing, least: new LeastCosts(problem, costing.foods) };
}

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
    const food = { openedDays: 2, unopenedDays: 3, wasteMinorPerG: 0.1, creditMinorPerG: 0, creditOpenedMinorPerG: 0 };
    const { least } = soldByThePack([310, 310, 310, 310], food, 3);
    const costOf = [40, 50, 180, 220].map((totalG) => least.of(0, totalG, MISSING_MINOR));
    expect(costOf).toEqual([0, 100, 100, 200]);
    expect(least.of(0, 220, 150)).toBe(150);
  });

  it("counts what is left of a pack as opened, and stock that goes off as lost", () => {
    const worth = { wasteMinorPerG: 0.1, creditMinorPerG: 0.5, creditOpenedMinorPerG: 0.2 };
    const { least } = soldByThePack([100, 0, 0, 0], { openedDays: 2, unopenedDays: 3, ...worth }, 1);
    expect(least.of(0, 0, MISSING_MINOR)).toBeCloseTo(20, 9);
    // 60 g beyond the stock, as nearly as steps of mass tell: a pack less 90 g at 0.2.
    expect(least.of(0, 100, MISSING_MINOR)).toBeGreaterThan(20 + 100 - 0.2 * 92);
    expect(least.of(0, 100, MISSING_MINOR)).toBeLessThanOrEqual(20 + 100 - 0.2 * 90);
  });

  it("counts stock of a food that lasts for what it would be worth if it stayed", () => {
    const worth = { wasteMinorPerG: 0, creditMinorPerG: 0.5, creditOpenedMinorPerG: 0.5 };
    const needsG = [100, 0, 0, 0];
    const { costing, least } = soldByThePack(needsG, { openedDays: 99, unopenedDays: 99, ...worth }, 99);
    expect(costing.foods[0]?.lasting).toBe(true);
    expect(least.of(0, 30, MISSING_MINOR)).toBeCloseTo(15, 9);
    costing.setTrips(Uint8Array.of(1));
    costing.evaluate(0, Float64Array.from(needsG), 0);
    expect(costing.cost).toBeCloseTo(75, 9);
    expect(least.of(0, 100, MISSING_MINOR)).toBeGreaterThan(74);
  });
});
