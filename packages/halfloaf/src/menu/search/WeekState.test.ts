import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createRandomSource } from "../../quantity/index.ts";
import { checkPlan } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuProblem } from "../problem.ts";
import { decodePlan } from "./decodePlan.ts";
import { type Change, WeekState } from "./WeekState.ts";

type Move = { readonly changes: Change[]; readonly trips?: number[] };

/** Draws one random move: a few sittings get other dishes (or none), or a trip or two are made or left out. */
function drawMove(state: WeekState, random: () => number): Move {
  const { sittings, dishes, trips } = state.problem;
  const pick = (n: number): number => Math.floor(random() * n);
  if (trips.length > 0 && random() < 0.2) {
    return { changes: [], trips: [...new Set([pick(trips.length), pick(trips.length)])] };
  }
  const chosen = new Set(Array.from({ length: 1 + pick(3) }, () => pick(sittings.length)));
  const changes = [...chosen].map((sitting) => {
    const dish = pick(dishes.length + 1) - 1;
    return { sitting, dish: dish >= 0 && state.mayServe(dish, sitting) ? dish : -1 };
  });
  return { changes };
}

function moveAtRandom(state: WeekState, random: () => number): void {
  const { changes, trips } = drawMove(state, random);
  if (trips) state.toggleTrips(...trips);
  else state.change(changes);
}

function freshTwin(problem: MenuProblem, state: WeekState): WeekState {
  const twin = new WeekState(problem);
  twin.toggleTrips(...[...state.tripMade.keys()].filter((trip) => state.tripMade[trip]));
  twin.change(Array.from(state.dishOf, (dish, sitting) => ({ sitting, dish })));
  return twin;
}

describe("the state of a week", () => {
  it("costs the same however its menu came about", () => {
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 9999 }), (problem, seed) => {
        const random = createRandomSource(seed);
        const state = new WeekState(problem);
        for (let move = 0; move < 30; move++) moveAtRandom(state, random);
        const twin = freshTwin(problem, state);
        expect(state.total()).toBeCloseTo(twin.total(), 5);
        expect(state.violation).toBeCloseTo(twin.violation, 5);
      }),
      { numRuns: 150 },
    );
  });

  it("is as it was, to the bit, when a move is taken back", () => {
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 9999 }), (problem, seed) => {
        const random = createRandomSource(seed);
        const state = new WeekState(problem);
        for (let move = 0; move < 12; move++) {
          moveAtRandom(state, random);
          const before = {
            total: state.total(),
            violation: state.violation,
            dishes: Array.from(state.dishOf),
            trips: Array.from(state.tripMade),
            needs: problem.foods.map((_, food) => Array.from(state.needsOf(food))),
          };
          moveAtRandom(state, random);
          state.undo();
          expect({
            total: state.total(),
            violation: state.violation,
            dishes: Array.from(state.dishOf),
            trips: Array.from(state.tripMade),
            needs: problem.foods.map((_, food) => Array.from(state.needsOf(food))),
          }).toEqual(before);
        }
      }),
      { numRuns: 100 },
    );
  });

  it("gives up a move only where it comes to more than it may, and is then taken back to the bit", () => {
    let [within, beyond] = [0, 0];
    fc.assert(
      fc.property(
        arbitraryWeek(),
        fc.nat({ max: 9999 }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (week, seed, far) => {
          const random = createRandomSource(seed);
          const state = new WeekState(week);
          for (let move = 0; move < 12; move++) {
            moveAtRandom(state, random);
            const before = state.total();
            const { changes, trips } = drawMove(state, random);
            const mostMinor = before + far * 2000;
            const twin = freshTwin(week, state);
            if (trips) twin.toggleTrips(...trips);
            else twin.change(changes);
            const whole = twin.total();
            const found = trips ? state.toggleTripsWithin(trips, mostMinor) : state.changeWithin(changes, mostMinor);
            if (found === Number.POSITIVE_INFINITY) {
              beyond++;
              expect(whole).toBeGreaterThan(mostMinor - 1e-5);
            } else {
              within++;
              expect(found).toBeCloseTo(whole, 5);
            }
            state.undo();
            expect(state.total()).toBe(before);
          }
        },
      ),
      { numRuns: 150, endOnFailure: true },
    );
    expect(Math.min(within, beyond)).toBeGreaterThan(50);
  });

  it("is too long, with all that is cooked at once, where the judge says so", () => {
    let [within, beyond] = [0, 0];
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 9999 }), (week, seed) => {
        if (week.sittings.every(({ together }) => together === undefined)) return;
        const random = createRandomSource(seed);
        const state = new WeekState(week);
        for (let move = 0; move < 16; move++) {
          moveAtRandom(state, random);
          const { faults } = checkPlan(week, decodePlan(state));
          const isBeyond = faults.some(({ code }) => code === "elapsed");
          expect(state.isBroken("elapsed")).toBe(isBeyond);
          if (isBeyond) beyond++;
          else within++;
        }
      }),
      { numRuns: 120, endOnFailure: true },
    );
    expect(Math.min(within, beyond)).toBeGreaterThan(0);
  });

  it("counts for the budget what the tills come to where prices come out high, as the judge does", () => {
    let risen = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 9999 }), (week, seed) => {
        const random = createRandomSource(seed);
        const state = new WeekState(week);
        for (let move = 0; move < 12; move++) moveAtRandom(state, random);
        if (state.isBroken("missing")) return;
        const { tillMinor, highTillMinor, tripMinor } = checkPlan(week, decodePlan(state)).money;
        if (highTillMinor > tillMinor) risen++;
        const isWithin = (budgetMinor: number): boolean =>
          !freshTwin({ ...week, limits: { ...week.limits, budgetMinor } }, state).isBroken("budget");
        expect(isWithin(highTillMinor + tripMinor + 0.01)).toBe(true);
        expect(isWithin(highTillMinor + tripMinor - 0.01)).toBe(false);
      }),
      { numRuns: 150, endOnFailure: true },
    );
    expect(risen).toBeGreaterThan(5);
  });
});
