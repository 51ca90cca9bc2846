import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/index.ts";
import type { MenuProblem } from "../problem.ts";
import { decodePlan } from "./decodePlan.ts";
import { toProblem } from "./tinyFood.testing.ts";
import { WeekState } from "./WeekState.ts";

const DAYS = 90;

/** One dish on every one of many days; a pack does not keep once it is opened, so each day opens its own. */
function oneDishForLong(): MenuProblem {
  const problem = toProblem({
    needsG: Array.from({ length: DAYS }, () => 60),
    food: { openedDays: 0, unopenedDays: DAYS, creditMinorPerG: 0, creditOpenedMinorPerG: 0, wasteMinorPerG: 0.5 },
    packs: [{ food: 0, shop: 0, massG: 100, priceMinor: 80, limit: 9999, fromDay: 0, toDay: 9999 }],
    lots: [],
    trips: [[0, 0]],
  });
  return {
    ...problem,
    dishes: problem.dishes.slice(0, 1).map((dish) => ({ ...dish, maxUses: DAYS })),
    sittings: problem.sittings.map((sitting) => ({ ...sitting, dishes: [0] })),
  };
}

describe("a plan of many days", () => {
  it("has room for one dish at all its sittings, and for a need on each of its days", () => {
    const problem = oneDishForLong();
    const state = new WeekState(problem);
    state.toggleTrips(0);
    state.change(problem.sittings.map((_, sitting) => ({ sitting, dish: 0 })));
    // The last pack's rest is still good on the last day, at no worth.
    const expected = DAYS * 80 + (DAYS - 1) * 40 * 0.5;
    expect(state.total()).toBeCloseTo(expected, 6);
    expect(state.violation).toBe(0);
    expect(state.sittingsOf(0)).toHaveLength(DAYS);
    const { faults, money } = checkPlan(problem, decodePlan(state));
    expect(faults).toEqual([]);
    expect(money.totalMinor).toBeCloseTo(expected, 6);
  });

  it("is weighed in reasonable steps where many small packs of many sizes feed each of its days", () => {
    const one = oneDishForLong();
    const sizes = [70, 110, 160, 230];
    const problem: MenuProblem = {
      ...one,
      foods: one.foods.map((food) => ({ ...food, openedDays: 2, unopenedDays: DAYS })),
      dishes: one.dishes.map((dish) => ({ ...dish, makings: [{ food: 0, massG: 347 }] })),
      packs: sizes.map((massG) => ({
        food: 0,
        shop: 0,
        massG,
        priceMinor: Math.round(massG ** 0.93),
        limit: 9999,
        fromDay: 0,
        toDay: 9999,
      })),
    };
    const state = new WeekState(problem);
    state.toggleTrips(0);
    state.change(problem.sittings.map((_, sitting) => ({ sitting, dish: 0 })));
    const { faults, money } = checkPlan(problem, decodePlan(state));
    expect(faults).toEqual([]);
    expect(money.totalMinor).toBeCloseTo(state.total(), 6);
  });
});
