import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuProblem } from "../problem.ts";
import { Availability } from "./Availability.ts";
import { FoodCosting } from "./FoodCosting.ts";

/** Whether the makings of each dish can be had in each period, one after the other. */
function askAll({ dishes, periodDay }: MenuProblem, availability: Availability): boolean[] {
  return dishes.flatMap((_, dish) => periodDay.map((_, period) => availability.hasAll(dish, period)));
}

describe("what can be had at all", () => {
  it("hangs on the trips made now and on none made before", () => {
    let [had, lacked] = [0, 0];
    fc.assert(
      fc.property(arbitraryWeek(), fc.array(fc.nat({ max: 9 }), { minLength: 2, maxLength: 6 }), (problem, toggles) => {
        const costing = new FoodCosting(problem);
        const availability = new Availability(problem, costing);
        const made = new Uint8Array(problem.trips.length);
        for (const toggle of toggles) {
          if (made.length > 0) made[toggle % made.length] = 1 - (made[toggle % made.length] as number);
          costing.setTrips(made);
          const fresh = new FoodCosting(problem);
          fresh.setTrips(made);
          const answers = askAll(problem, availability);
          expect(answers).toEqual(askAll(problem, new Availability(problem, fresh)));
          if (answers.includes(true)) had++;
          if (answers.includes(false)) lacked++;
        }
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(Math.min(had, lacked)).toBeGreaterThan(10);
  });
});
