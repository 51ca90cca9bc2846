import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import { Annealing } from "./Annealing.ts";
import { FIRST_PENALTIES } from "./Penalties.ts";
import { WeekState } from "./WeekState.ts";

describe("bringing servings into another order", () => {
  it("serves each dish as often as before, only where it may be served, with the same trips, and goes nowhere dearer in the cold", () => {
    let moved = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 999 }), (week, seed) => {
        const state = new WeekState(week);
        const rules = { accepts: () => true, mostTrips: week.limits.maxTrips, penalties: FIRST_PENALTIES };
        const annealing = new Annealing(week, state, seed, rules);
        if (annealing.candidates.hasGap) return;
        annealing.restart(() => 0);
        const [dishes, trips, before] = [Array.from(state.dishOf), Array.from(state.tripMade), state.total()];
        annealing.run(500, 1e-9, 1e-9, true);
        expect(state.total()).toBeLessThan(before + 1e-6);
        annealing.run(500, 1e6, 1e6, true);
        expect(Array.from(state.dishOf).sort()).toEqual([...dishes].sort());
        expect(Array.from(state.tripMade)).toEqual(trips);
        state.dishOf.forEach((dish, sitting) => {
          expect(state.mayServe(dish, sitting)).toBe(true);
        });
        if (dishes.some((dish, sitting) => dish !== state.dishOf[sitting])) moved++;
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect(moved).toBeGreaterThan(5);
  });
});
