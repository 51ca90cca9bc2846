import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createRandomSource } from "../../quantity/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuProblem } from "../problem.ts";
import { decodePlan } from "./decodePlan.ts";
import { MenuSearch } from "./MenuSearch.ts";
import { reckonLoads } from "./reckonLoads.ts";
import { WeekState } from "./WeekState.ts";

/** A menu drawn by lot with some trips. */
function drawMenu(problem: MenuProblem, seed: number): WeekState {
  const random = createRandomSource(seed);
  const state = new WeekState(problem);
  const trips = [...problem.trips.keys()].filter(() => random() < 0.6);
  if (trips.length > 0) state.toggleTrips(...trips);
  const changes = problem.sittings.map((_, sitting) => {
    const dish = Math.floor(random() * problem.dishes.length);
    return { sitting, dish: state.mayServe(dish, sitting) ? dish : -1 };
  });
  state.change(changes);
  return state;
}

describe("room in fridge and freezer", () => {
  it("is never said to be short where the plan's loads fit", () => {
    let short = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 9999 }), fc.integer({ min: 1, max: 8 }), (week, seed, halves) => {
        const problem = { ...week, limits: { ...week.limits, fridgeLitres: halves / 2, freezerLitres: halves / 2 } };
        const state = drawMenu(problem, seed);
        if (!state.isBroken("cold")) return;
        short++;
        const loads = reckonLoads(problem, decodePlan(state));
        expect(loads.filter(({ what }) => what !== "carry")).not.toEqual([]);
      }),
      { numRuns: 300, endOnFailure: true },
    );
    expect(short).toBeGreaterThan(10);
  });

  it("leads to a plan that buys twice where the fridge takes only half of it", () => {
    const fridge = { place: "fridge" as const, litresPerG: 0.001 };
    const worth = { creditMinorPerG: 0, creditOpenedMinorPerG: 0, wasteMinorPerG: 0 };
    const none = { fixed: 0, perPortion: 0 };
    const foods = Array.from({ length: 8 }, (_, at) => {
      return { id: `food-${at}`, openedDays: 9, unopenedDays: 9, cold: fridge, ...worth };
    });
    const problem: MenuProblem = {
      days: 8,
      periodDay: foods.map((_, day) => day),
      foods,
      dishes: foods.map((_, main) => ({
        id: `dish-${main}`,
        makings: [{ food: main, massG: 1000 }],
        handsOn: none,
        elapsed: none,
        keepsDays: 0,
        needsHeat: false,
        servedCold: true,
        travels: true,
        main,
        maxUses: 1,
        dislikeMinor: 0,
        energyKj: 0,
        components: [],
      })),
      sittings: foods.map((_, day) => ({
        day,
        period: day,
        portions: 1,
        minutes: 9,
        heat: true,
        packed: false,
        dishes: foods.map((_, dish) => dish),
        variety: false,
      })),
      lots: [],
      packs: foods.map((_, food) => ({
        food,
        shop: 0,
        massG: 1000,
        priceMinor: 100,
        limit: 9999,
        fromDay: 0,
        toDay: 9,
      })),
      shopCount: 1,
      trips: [0, 2, 4, 6].map((day) => ({ shop: 0, day, period: day, costMinor: 60, minutes: 0 })),
      components: [],
      profiles: [],
      limits: {
        handsOnMinutes: foods.map(() => 9),
        energyTolerance: 1,
        distinct: 0,
        mainMax: 9,
        batchPortions: 1,
        maxTrips: 4,
        fridgeLitres: 4,
      },
      worth: { minuteMinor: 0, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
    };
    const search = new MenuSearch(problem, 1, { expectedMoves: 6000 });
    while (search.advance().moves < 6000);
    // The trips of days 0 and 4.
    expect(search.best()?.trips).toEqual([0, 2]);
  });
});
