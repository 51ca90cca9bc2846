import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "./MenuSearch.ts";
import { WeekState } from "./WeekState.ts";

const MOVES = 20_000;

function searchFor(problem: MenuProblem, seed: number, moves: number): MenuSearch {
  const search = new MenuSearch(problem, seed, { expectedMoves: moves });
  for (let report = search.advance(); report.moves < moves; report = search.advance());
  return search;
}

/** A random week cut down to its first sittings and a few dishes and trips, with room enough, so that all can be tried. */
function cutDown(week: MenuProblem): MenuProblem {
  const kept = week.sittings.slice(0, 4);
  const { budgetMinor: _budget, fridgeLitres: _fridge, freezerLitres: _freezer, ...limits } = week.limits;
  return {
    ...week,
    sittings: kept.map((sitting) => ({ ...sitting, dishes: sitting.dishes.slice(0, 4) })),
    trips: week.trips.slice(0, 3).map(({ carryG: _carry, ...trip }) => trip),
    lots: week.lots.map((lot) => ({ ...lot, mustUse: false })),
    profiles: week.profiles.map((profile) => ({
      ...profile,
      sittings: profile.sittings.filter((k) => k < kept.length),
      leastEnergyKj: [],
      bounds: profile.bounds.map((bound) => ({ ...bound, hard: false })),
    })),
    limits: { ...limits, distinct: 1, energyTolerance: 9, maxTrips: 3 },
    wishes: (week.wishes ?? []).map((wish) => ({ ...wish, sittings: wish.sittings.filter((k) => k < kept.length) })),
  };
}

/** The least cost of a menu within the limits that the state knows, over all menus and all sets of trips. */
function tryAll(problem: MenuProblem): number {
  const state = new WeekState(problem);
  let best = Infinity;
  const fill = (sitting: number): void => {
    if (sitting === problem.sittings.length) {
      const total = state.total();
      if (state.violation < 1e-9) best = Math.min(best, total);
      return;
    }
    for (const dish of problem.sittings[sitting]?.dishes ?? []) {
      if (!state.mayServe(dish, sitting)) continue;
      state.change([{ sitting, dish }]);
      fill(sitting + 1);
    }
    state.change([{ sitting, dish: -1 }]);
  };
  for (let set = 0; set < 2 ** problem.trips.length; set++) {
    const wanted = problem.trips.map((_, trip) => ((set >> trip) & 1) as 0 | 1);
    state.toggleTrips(...[...wanted.keys()].filter((trip) => state.tripMade[trip] !== wanted[trip]));
    fill(0);
  }
  return best;
}

describe("the search", () => {
  it("gives the same plan for the same seed, expected and made moves", () => {
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 999 }), (week, seed) => {
        if (new MenuSearch(week, seed).gaps.length > 0) return;
        const [one, two] = [searchFor(week, seed, 6000), searchFor(week, seed, 6000)];
        expect(one.best()).toEqual(two.best());
        expect(one.leastBroken()).toEqual(two.leastBroken());
      }),
      { numRuns: 15, endOnFailure: true },
    );
  });

  it("is never below the best of all menus and trips, and finds it in nearly all weeks small enough to try them all", () => {
    let found = 0;
    let reached = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 999 }), (random, seed) => {
        const week = cutDown(random);
        if (new MenuSearch(week, seed).gaps.length > 0) return;
        const best = tryAll(week);
        const search = searchFor(week, seed, MOVES);
        const report = search.advance();
        if (best === Infinity) {
          expect(report.costMinor).toBe(undefined);
          return;
        }
        found++;
        const reachedMinor = report.costMinor ?? Infinity;
        expect(reachedMinor).toBeGreaterThan(best - 1e-4);
        if (reachedMinor < best + 1e-4) reached++;
      }),
      { numRuns: 30, endOnFailure: true },
    );
    expect(found).toBeGreaterThan(3);
    expect(reached / found).toBeGreaterThan(0.8);
  });

  it("begins from an earlier menu, and bends only the limits it is told to", () => {
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 999 }), (week, seed) => {
        if (new MenuSearch(week, seed).gaps.length > 0) return;
        const first = searchFor(week, seed, 6000);
        const plan = first.best();
        if (plan === undefined) return;
        const again = new MenuSearch(week, seed + 1, { start: plan });
        const before = first.advance().costMinor as number;
        expect(again.advance().costMinor).toBeLessThanOrEqual(before + Math.abs(before) + 1);
        const bent = new MenuSearch(week, seed, { start: plan, elastic: { budget: 2, minute: 60 } });
        expect(bent.advance().costMinor).toBeDefined();
      }),
      { numRuns: 20, endOnFailure: true },
    );
  });
});
