import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { changeProblem } from "./changeProblem.ts";
import type { MenuChange } from "./MenuChange.ts";
import { isShopping, toRemainder, tripsBegun } from "./Remainder.ts";
import { replan } from "./replan.ts";

const MOVES = 3000;
const NO_MINUTES = { fixed: 0, perPortion: 0 };

function dish(id: string, makings: MenuDish["makings"], dislikeMinor = 0): MenuDish {
  const cold = { handsOn: NO_MINUTES, elapsed: NO_MINUTES, keepsDays: 0, needsHeat: false, servedCold: true };
  return { id, makings, ...cold, travels: true, main: 0, maxUses: 3, dislikeMinor, energyKj: 0, components: [] };
}

function sitting(day: number): MenuSitting {
  const rest = { portions: 1, minutes: 9, heat: true, packed: false, variety: false };
  return { day, period: day, dishes: [0, 1, 2], ...rest };
}

function trip(day: number) {
  return { shop: 0, day, period: day, costMinor: 10, minutes: 0 };
}

function pack(food: number) {
  return { food, shop: 0, massG: 100, priceMinor: 50, limit: 9, fromDay: 0, toDay: 2 };
}

const life = { openedDays: 0, unopenedDays: 0, creditMinorPerG: 0, creditOpenedMinorPerG: 0, wasteMinorPerG: 0 };

/** Three days of berries that don't keep until the next day; nobody likes to go without, and two trips are allowed. */
const problem: MenuProblem = {
  days: 3,
  periodDay: [0, 1, 2],
  foods: [
    { id: "berry", ...life },
    { id: "leaf", ...life },
  ],
  dishes: [dish("nothing", [], 900), dish("berries", [{ food: 0, massG: 100 }]), dish("bread", [])],
  sittings: [sitting(0), sitting(1), sitting(2)],
  lots: [],
  packs: [pack(0), pack(1)],
  shopCount: 1,
  trips: [trip(0), trip(1), trip(2)],
  components: [],
  profiles: [],
  limits: { handsOnMinutes: [9, 9, 9], energyTolerance: 1, distinct: 0, mainMax: 9, batchPortions: 9, maxTrips: 2 },
  worth: { minuteMinor: 0, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
};

/** Bread in between, so that nobody has to go out then; a leaf is bought too, which nothing needs. */
const plan: MenuPlan = {
  batches: [1, 2, 1].map((each, k) => ({ dish: each, sittings: [k] })),
  trips: [0, 2],
  purchases: [
    { trip: 0, pack: 0, count: 1 },
    { trip: 0, pack: 1, count: 1 },
    { trip: 2, pack: 0, count: 1 },
  ],
  uses: [
    { lot: { purchase: 0, copy: 0 }, batch: 0, massG: 100 },
    { lot: { purchase: 2, copy: 0 }, batch: 2, massG: 100 },
  ],
};

function replanWith(bought: readonly number[], limits: Partial<MenuProblem["limits"]> = {}) {
  const changes: MenuChange[] = [
    { kind: "refuse", dish: 2 },
    ...bought.map((purchase) => ({ kind: "bought" as const, purchase })),
  ];
  const week = { ...problem, limits: { ...problem.limits, ...limits } };
  const changed = changeProblem(week, plan, changes);
  if (!changed.ok) throw new Error("the week could not be changed");
  const outcome = replan(changed.value, { judge: checkPlan, moves: MOVES, wideMoves: 0, farMoves: MOVES });
  if (outcome.kind === "none") throw new Error("no menu was found");
  expect(checkPlan(changed.value.problem, outcome.plan).faults).toEqual([]);
  return outcome.plan;
}

describe("a trip on which something was bought already", () => {
  it("counts among the most trips, so that what is left of the week has one less and is planned all the same", () => {
    expect(checkPlan(problem, plan).faults).toEqual([]);
    for (const bought of [[0], [1], [0, 1]]) {
      const { trips } = replanWith(bought);
      expect(trips).toContain(0);
      expect(trips).toHaveLength(2);
    }
    expect(replanWith([0, 1], { maxTrips: 3 }).trips).toEqual([0, 1, 2]);
  });

  it("counts where it was to be made on a later day, too", () => {
    const { trips, purchases } = replanWith([2]);
    expect(trips).toContain(2);
    expect(trips.length).toBeLessThanOrEqual(2);
    expect(purchases).toContainEqual({ trip: 2, pack: 0, count: 1 });
  });

  it("is paid for: what it cost is off the budget, and it costs nothing more", () => {
    const rest = toRemainder({
      problem: { ...problem, limits: { ...problem.limits, budgetMinor: 500 } },
      plan,
      today: 0,
      losses: [],
      bought: [0, 1],
    });
    expect(rest.problem.limits).toMatchObject({ budgetMinor: 390, maxTrips: 1 });
    expect(rest.problem.trips.map(({ costMinor }) => costMinor)).toEqual([0, 10, 10]);
    expect(rest.plan.trips).toEqual([2]);
  });

  it("goes on where the old plan has more to buy on it, and takes none of the trips that are left", () => {
    const given = { problem, plan, today: 0, losses: [], bought: [1] };
    expect([isShopping(given), tripsBegun(given)]).toEqual([true, [0]]);
    expect(toRemainder(given).problem.limits.maxTrips).toBe(2);
    expect(toRemainder(given, false).problem.limits.maxTrips).toBe(1);
    expect(isShopping({ ...given, bought: [0, 1] })).toBe(false);
  });

  it("leaves the old plan as it was, whatever of it was bought today", () => {
    let bought = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 99 }), fc.nat({ max: 3 }), fc.boolean(), (week, seed, day, isAll) => {
        const search = new MenuSearch(week, seed, { expectedMoves: 1000 });
        if (search.gaps.length > 0) return;
        search.advance();
        const found = search.best();
        const today = Math.min(day, week.days - 1);
        const first = found?.purchases.find((each) => week.trips[each.trip]?.day === today);
        if (found === undefined || first === undefined) return;
        const made = found.purchases.flatMap((each, at) =>
          (isAll ? each.trip === first.trip : each === first) ? [at] : [],
        );
        bought++;
        const rest = toRemainder({ problem: week, plan: found, today, losses: [], bought: made });
        expect(checkPlan(rest.problem, rest.plan).faults).toEqual([]);
        const joined = checkPlan(week, rest.join(rest.plan));
        expect(joined.faults).toEqual([]);
        expect(joined.money.totalMinor).toBeCloseTo(checkPlan(week, found).money.totalMinor, 6);
      }),
      { numRuns: 300, endOnFailure: true },
    );
    expect(bought).toBeGreaterThan(0);
  });

  it("is looked for in one way alone where the other can have no plan that this one has not", () => {
    const ways = (bought: readonly number[], limits: Partial<MenuProblem["limits"]>): number => {
      const changes = bought.map((purchase): MenuChange => ({ kind: "bought", purchase }));
      const changed = changeProblem({ ...problem, limits: { ...problem.limits, ...limits } }, plan, changes);
      if (!changed.ok) throw new Error("the week could not be changed");
      let begun = 0;
      const judge: typeof checkPlan = (of, one) => {
        // Each way begins by judging the old plan.
        if (of === changed.value.problem && one === changed.value.plan) begun++;
        return checkPlan(of, one);
      };
      const outcome = replan(changed.value, { judge, moves: 300, wideMoves: 0, farMoves: 300 });
      expect(outcome.kind).toBe("none");
      return begun;
    };
    const none = { handsOnMinutes: [-1, -1, -1] };
    expect(ways([1], none)).toBe(1);
    expect(ways([0, 1], { ...none, maxTrips: 9 })).toBe(1);
    expect(ways([0, 1], none)).toBe(2);
  });
});
