import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";
import { WeekState } from "../search/WeekState.ts";
import { lotsAtHand } from "./lotsAtHand.ts";
import { toRemainder } from "./Remainder.ts";

const NO_MINUTES = { fixed: 0, perPortion: 0 };

function dish(id: string, makings: MenuDish["makings"]): MenuDish {
  const cold = {
    handsOn: NO_MINUTES,
    elapsed: NO_MINUTES,
    keepsDays: 0,
    needsHeat: false,
    servedCold: true,
    travels: true,
  };
  return { id, makings, ...cold, main: 0, maxUses: 3, dislikeMinor: 0, energyKj: 0, components: [] };
}

function sitting(day: number): MenuSitting {
  const rest = { portions: 1, minutes: 9, heat: true, packed: false, variety: false };
  return { day, period: day, dishes: [0, 1], ...rest };
}

/** Three days of which two eat of loose pieces that keep for days; a pack of the same food that is opened keeps for none. */
const problem: MenuProblem = {
  days: 3,
  periodDay: [0, 1, 2],
  foods: [
    { id: "pear", openedDays: 0, unopenedDays: 5, creditMinorPerG: 0, creditOpenedMinorPerG: 0, wasteMinorPerG: 0 },
  ],
  dishes: [dish("nothing", []), dish("pears", [{ food: 0, massG: 100 }])],
  sittings: [sitting(0), sitting(1), sitting(2)],
  lots: [],
  packs: [{ food: 0, shop: 0, massG: 200, priceMinor: 90, limit: 9, fromDay: 0, toDay: 2, openedDays: 5 }],
  shopCount: 1,
  trips: [{ shop: 0, day: 0, period: 0, costMinor: 0, minutes: 0 }],
  components: [],
  profiles: [],
  limits: { handsOnMinutes: [9, 9, 9], energyTolerance: 1, distinct: 0, mainMax: 9, batchPortions: 9, maxTrips: 1 },
  worth: { minuteMinor: 0, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
};

const plan: MenuPlan = {
  batches: [
    { dish: 0, sittings: [0] },
    { dish: 1, sittings: [1] },
    { dish: 1, sittings: [2] },
  ],
  trips: [0],
  purchases: [{ trip: 0, pack: 0, count: 1 }],
  uses: [
    { lot: { purchase: 0, copy: 0 }, batch: 1, massG: 100 },
    { lot: { purchase: 0, copy: 0 }, batch: 2, massG: 100 },
  ],
};

describe("lots at hand", () => {
  it("end on the day that a loss says, and of one lot each loss counts", () => {
    const lot = { purchase: 0, copy: 0 };
    const atHand = (losses: Parameters<typeof lotsAtHand>[3]) =>
      lotsAtHand(problem, plan, 1, losses).map(({ lot: { massG, lastDay } }) => [massG, lastDay]);
    expect(atHand([{ lot, lastDay: 2 }])).toEqual([[200, 2]]);
    expect(
      atHand([
        { lot, lastDay: 2 },
        { lot, massG: 50 },
        { lot, massG: 30 },
      ]),
    ).toEqual([[120, 2]]);
    expect(atHand([{ lot, lastDay: 9 }])).toEqual([[200, 5]]);
    expect(atHand([{ lot, lastDay: 0 }])).toEqual([]);
  });

  it("pieces that were bought and are not begun keep the opened life of their own", () => {
    expect(checkPlan(problem, plan).faults).toEqual([]);
    const [pieces] = lotsAtHand(problem, plan, 1, []);
    expect(pieces?.lot).toMatchObject({ opened: false, openedDays: 5, lastDay: 5 });
    const remainder = toRemainder({ problem, plan, today: 1, losses: [] });
    expect(checkPlan(remainder.problem, remainder.plan).faults).toEqual([]);
  });

  it("that are bought today come home on their trip, which carries them, and are not there for what is cooked before", () => {
    const at = (period: number): MenuSitting => ({ ...sitting(0), period });
    const day: MenuProblem = {
      ...problem,
      days: 1,
      periodDay: [0, 0],
      sittings: [at(0), at(1)],
      trips: [{ shop: 0, day: 0, period: 1, costMinor: 0, minutes: 0, carryG: 500 }],
      limits: { ...problem.limits, handsOnMinutes: [9] },
    };
    const batches = [
      { dish: 0, sittings: [0] },
      { dish: 1, sittings: [1] },
    ];
    const { uses } = plan;
    const bought: MenuPlan = { ...plan, batches, uses: uses.slice(0, 1) };
    expect(checkPlan(day, bought).faults).toEqual([]);
    const remainder = toRemainder({ problem: day, plan: bought, today: 0, losses: [], bought: [0] });
    expect(remainder.problem.lots).toMatchObject([{ massG: 200, fromPeriod: 1 }]);
    expect(remainder.problem.trips).toMatchObject([{ carryG: 300 }]);
    expect(checkPlan(remainder.problem, remainder.plan).faults).toEqual([]);
    const state = new WeekState(remainder.problem);
    expect([0, 1].map((k) => state.mayCook(1, k))).toEqual([false, true]);
    const early = {
      ...remainder.plan,
      batches: [batches[1], batches[0]].map((each, k) => ({ ...each, sittings: [k] })),
    };
    const faults = checkPlan(remainder.problem, {
      ...early,
      uses: remainder.plan.uses.map((use) => ({ ...use, batch: 0 })),
    } as MenuPlan).faults;
    expect(faults.map(({ code }) => code)).toContain("lot-early");
  });

  it("pieces that are begun keep by it too", () => {
    const [pieces] = lotsAtHand(problem, plan, 2, []);
    expect(pieces?.lot).toMatchObject({ opened: true, massG: 100, lastDay: 5 });
  });
});
