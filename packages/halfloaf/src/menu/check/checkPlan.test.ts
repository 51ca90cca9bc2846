import { describe, expect, it } from "vitest";
import type { MenuPlan, Purchase, Use } from "../plan.ts";
import type {
  MenuCooking,
  MenuDish,
  MenuFood,
  MenuLimits,
  MenuLot,
  MenuPack,
  MenuProblem,
  MenuSitting,
  MenuTrip,
} from "../problem.ts";
import { checkPlan } from "./checkPlan.ts";
import type { PlanFault, PlanFaultCode } from "./PlanFault.ts";
import { alter, tinyPlan, tinyProblem } from "./tinyWeek.testing.ts";

/** A way to break one rule, and where the fault is then found. */
interface Breach {
  readonly problem?: Partial<MenuProblem>;
  readonly plan?: Partial<MenuPlan>;
  readonly paths: readonly PlanFault["path"][];
}

const { batches, purchases, uses } = tinyPlan;
const limits = (changes: Partial<MenuLimits>) => ({ limits: { ...tinyProblem.limits, ...changes } });
const food = (at: number, changes: Partial<MenuFood>) => ({ foods: alter(tinyProblem.foods, at, changes) });
const dish = (at: number, changes: Partial<MenuDish>) => ({ dishes: alter(tinyProblem.dishes, at, changes) });
const sitting = (at: number, changes: Partial<MenuSitting>) => ({
  sittings: alter(tinyProblem.sittings, at, changes),
});
const lot = (at: number, changes: Partial<MenuLot>) => ({ lots: alter(tinyProblem.lots, at, changes) });
const pack = (at: number, changes: Partial<MenuPack>) => ({ packs: alter(tinyProblem.packs, at, changes) });
const trip = (at: number, changes: Partial<MenuTrip>) => ({ trips: alter(tinyProblem.trips, at, changes) });
const batch = (at: number, sittings: number[]) => ({ batches: alter(batches, at, { sittings }) });
const use = (at: number, changes: Partial<Use>) => ({ uses: alter(uses, at, changes) });
const moreUse = (extra: Use) => ({ uses: [...uses, extra] });
const morePurchase = (extra: Purchase) => ({ purchases: [...purchases, extra] });
/** So little that it shows in no sum. */
const dust = 5e-5;
/** A sitting more at which no profile sits down. */
const extraSitting = {
  sittings: [...tinyProblem.sittings, { ...(tinyProblem.sittings[5] as MenuSitting), variety: false }],
};

/** The first two sittings have so many minutes and share their cooking: 4 portions each of dishes 1 and 0, 24 and 38 min. */
const atOnce = (minutes: number, changes: Partial<MenuProblem> = {}): Partial<MenuProblem> => ({
  sittings: tinyProblem.sittings.map((each, k) => (k < 2 ? { ...each, together: 7, minutes } : each)),
  ...changes,
});
const cooking = (elapsedMinutes: number, portions: number, washMinutes = 0): MenuCooking => ({
  dishes: [
    { dish: 0, portions: 4 },
    { dish: 1, portions },
  ],
  elapsedMinutes,
  washMinutes,
});
/** The two dishes take the one thing for 2 and 38 minutes. */
const loads = {
  dishes: tinyProblem.dishes.map((each, r) => ({
    ...each,
    loads: [{ fixed: 2 + 36 * Number(r === 0), perPortion: 0 }],
  })),
};

const breaches: Record<PlanFaultCode, readonly Breach[]> = {
  index: [
    {
      problem: extraSitting,
      plan: { batches: [...batches, { dish: 3, sittings: [6] }] },
      paths: [["batches", 4, "dish"]],
    },
    { plan: batch(0, [0, 2, 6]), paths: [["batches", 0, "sittings", 2]] },
    { plan: batch(0, [0, 1.5, 2]), paths: [["batches", 0, "sittings", 1]] },
    { plan: batch(0, [-1, 0, 2]), paths: [["batches", 0, "sittings", 0]] },
    { plan: { trips: [0, 1, 3] }, paths: [["trips", 2]] },
    { plan: morePurchase({ trip: Number.NaN, pack: 1, count: 1 }), paths: [["purchases", 3, "trip"]] },
    { plan: morePurchase({ trip: 0, pack: 3, count: 1 }), paths: [["purchases", 3, "pack"]] },
    { plan: moreUse({ lot: { stock: 3 }, batch: 0, massG: dust }), paths: [["uses", 9, "lot", "stock"]] },
    {
      plan: moreUse({ lot: { purchase: 3, copy: 0 }, batch: 0, massG: dust }),
      paths: [["uses", 9, "lot", "purchase"]],
    },
    { plan: moreUse({ lot: { purchase: 0, copy: 1 }, batch: 0, massG: dust }), paths: [["uses", 9, "lot", "copy"]] },
    { plan: moreUse({ lot: { purchase: 0, copy: 0 }, batch: 4, massG: dust }), paths: [["uses", 9, "batch"]] },
  ],
  count: [0, -1, 1.5, Number.NaN].map((count) => ({
    plan: morePurchase({ trip: 0, pack: 0, count }),
    paths: [["purchases", 3, "count"]],
  })),
  mass: [0, -1, Number.NaN, Number.POSITIVE_INFINITY].map((massG) => ({
    plan: moreUse({ lot: { stock: 0 }, batch: 0, massG }),
    paths: [["uses", 9, "massG"]],
  })),
  "trips-order": [
    { plan: { trips: [1, 0] }, paths: [["trips"]] },
    { plan: { trips: [0, 0, 1] }, paths: [["trips"]] },
  ],
  "batch-empty": [{ plan: { batches: [...batches, { dish: 0, sittings: [] }] }, paths: [["batches", 4, "sittings"]] }],
  "sittings-order": [{ plan: batch(0, [2, 0]), paths: [["batches", 0, "sittings"]] }],
  "sitting-twice": [
    { plan: batch(0, [0, 0, 2]), paths: [["batches", 0, "sittings", 1]] },
    { plan: { batches: [...batches, { dish: 1, sittings: [3] }] }, paths: [["batches", 4, "sittings", 0]] },
  ],
  "sitting-unserved": [{ problem: extraSitting, paths: [["sittings", 6]] }],
  "dish-unfit": [
    { problem: sitting(2, { dishes: [0, 2] }), paths: [["batches", 0, "sittings", 1]] },
    { problem: sitting(3, { dishes: [] }), paths: [["batches", 2, "sittings", 0]] },
  ],
  heat: [{ problem: sitting(1, { heat: false }), paths: [["batches", 1, "sittings", 0]] }],
  elapsed: [
    { problem: sitting(0, { minutes: 23.9 }), paths: [["batches", 0]] },
    { problem: atOnce(61, { cookings: [cooking(62, 3.9)] }), paths: [["batches", 0, 1]] },
    { problem: atOnce(61.9, { isApart: true, cookings: [cooking(50, 3.9)] }), paths: [["batches", 0, 1]] },
    { problem: atOnce(39.9, loads), paths: [["batches", 0, 1]] },
  ],
  packed: [
    { problem: dish(1, { travels: false }), paths: [["batches", 0, "sittings", 1]] },
    { problem: dish(1, { servedCold: false }), paths: [["batches", 0, "sittings", 1]] },
    {
      problem: { ...sitting(3, { packed: true }), ...dish(2, { servedCold: false }) },
      paths: [["batches", 2, "sittings", 0]],
    },
  ],
  "leftover-cold": [{ problem: sitting(5, { heat: false }), paths: [["batches", 1, "sittings", 1]] }],
  keeps: [
    { problem: dish(0, { keepsDays: 1 }), paths: [["batches", 1, "sittings", 1]] },
    { problem: dish(1, { keepsDays: 0 }), paths: [["batches", 0, "sittings", 1]] },
  ],
  "batch-size": [
    {
      problem: limits({ batchPortions: 3.9 }),
      paths: [
        ["batches", 0],
        ["batches", 1],
      ],
    },
  ],
  "cooked-twice": [
    {
      problem: { ...sitting(4, { day: 1 }), ...limits({ energyTolerance: 9, handsOnMinutes: [27, 10, 2] }) },
      paths: [["batches", 3]],
    },
  ],
  "purchase-trip": [{ plan: { trips: [0] }, paths: [["purchases", 2]] }],
  "purchase-shop": [{ problem: trip(1, { shop: 0 }), paths: [["purchases", 2]] }],
  "purchase-day": [
    { problem: pack(2, { fromDay: 2, toDay: 2 }), paths: [["purchases", 2]] },
    { problem: pack(2, { fromDay: 0, toDay: 0 }), paths: [["purchases", 2]] },
  ],
  "pack-limit": [
    { problem: pack(2, { limit: 1 }), paths: [["packs", 2]] },
    {
      problem: {
        ...pack(1, { limit: 1, priceMinor: 45 }),
        ...trip(0, { carryG: 2500 }),
        ...limits({ fridgeLitres: 2.3 }),
      },
      plan: morePurchase({ trip: 0, pack: 1, count: 1 }),
      paths: [["packs", 1]],
    },
  ],
  "making-short": [
    { plan: use(1, { massG: 99.999 }), paths: [["batches", 0]] },
    { plan: { uses: uses.filter((_, at) => at !== 1) }, paths: [["batches", 0]] },
  ],
  "making-over": [
    { plan: use(1, { massG: 100.001 }), paths: [["batches", 0]] },
    { plan: moreUse({ lot: { purchase: 1, copy: 0 }, batch: 2, massG: 10 }), paths: [["batches", 2]] },
  ],
  "lot-overdrawn": [
    { problem: lot(0, { massG: 99.9 }), paths: [["lots", 0]] },
    { problem: pack(0, { massG: 419 }), paths: [["purchases", 0, 0]] },
  ],
  "lot-early": [{ problem: trip(1, { period: 4 }), paths: [["uses", 6]] }],
  "lot-late": [
    { problem: lot(1, { lastDay: -1 }), paths: [["uses", 2]] },
    { problem: food(2, { openedDays: 0 }), paths: [["uses", 7]] },
    {
      problem: pack(2, { unopenedDays: 0 }),
      paths: [
        ["uses", 7],
        ["uses", 8],
      ],
    },
    {
      problem: { ...food(2, { unopenedDays: 0 }), ...pack(2, { unopenedDays: undefined }) },
      paths: [
        ["uses", 7],
        ["uses", 8],
      ],
    },
    {
      plan: { uses: [...alter(uses, 8, { massG: 90 }), { lot: { stock: 2 }, batch: 3, massG: 10 }] },
      paths: [["uses", 9]],
    },
  ],
  "must-use": [{ problem: lot(2, { mustUse: true }), paths: [["lots", 2]] }],
  budget: [
    { problem: limits({ budgetMinor: 549 }), paths: [["limits", "budgetMinor"]] },
    { problem: pack(1, { highMinor: 91 }), paths: [["limits", "budgetMinor"]] },
  ],
  "hands-on": [
    { problem: limits({ handsOnMinutes: [26.9, 6, 6] }), paths: [["limits", "handsOnMinutes", 0]] },
    { problem: limits({ handsOnMinutes: [27, 5.9, 6] }), paths: [["limits", "handsOnMinutes", 1]] },
    { problem: atOnce(50, { cookings: [cooking(50, 4, 0.1)] }), paths: [["limits", "handsOnMinutes", 0]] },
  ],
  energy: [
    {
      problem: limits({ energyTolerance: 0.099 }),
      paths: [
        ["profiles", 0, "energyKj", 0],
        ["profiles", 0, "energyKj", 1],
      ],
    },
    {
      problem: { profiles: alter(tinyProblem.profiles, 1, { energyKj: [3000, 1500, 2700] }) },
      paths: [["profiles", 1, "energyKj", 2]],
    },
    {
      problem: { profiles: alter(tinyProblem.profiles, 1, { leastEnergyKj: [3001, 0, 0] }) },
      paths: [["profiles", 1, "energyKj", 0]],
    },
  ],
  bound: (["at-least", "at-most"] as const).map((kind) => ({
    problem: {
      profiles: alter(tinyProblem.profiles, 1, {
        bounds: [{ component: 0, kind, amount: kind === "at-least" ? 22.1 : 21.9, hard: true }],
      }),
    },
    paths: [["profiles", 1, "bounds", 0]],
  })),
  distinct: [{ problem: limits({ distinct: 3 }), paths: [["limits", "distinct"]] }],
  main: [{ problem: limits({ mainMax: 1 }), paths: [["limits", "mainMax"]] }],
  uses: [{ problem: dish(2, { maxUses: 1 }), paths: [["dishes", 2, "maxUses"]] }],
  wish: [
    { problem: { wishes: [{ dishes: [0, 1], sittings: [1, 3, 5], least: 3 }] }, paths: [["wishes", 0]] },
    {
      problem: {
        wishes: [
          { dishes: [2], sittings: [3, 4], most: 2 },
          { dishes: [0, 1], sittings: [0, 1, 2, 3, 4, 5], most: 3 },
          { dishes: [], sittings: [0], least: 1 },
        ],
      },
      paths: [
        ["wishes", 1],
        ["wishes", 2],
      ],
    },
  ],
  "max-trips": [{ problem: limits({ maxTrips: 1 }), paths: [["limits", "maxTrips"]] }],
  carry: [
    { problem: trip(0, { carryG: 1499 }), paths: [["trips", 0]] },
    { problem: trip(1, { carryG: 599 }), paths: [["trips", 1]] },
  ],
  fridge: [{ problem: limits({ fridgeLitres: 1.29 }), paths: [["limits", "fridgeLitres"]] }],
  freezer: [{ problem: limits({ freezerLitres: 1.21 }), paths: [["limits", "freezerLitres"]] }],
};

describe("checkPlan", () => {
  it("finds no fault in a plan that meets every limit exactly", () => {
    expect(checkPlan(tinyProblem, tinyPlan).faults).toEqual([]);
  });

  for (const [code, ways] of Object.entries(breaches)) {
    it(`finds ${code} and nothing else where only that rule is broken`, () => {
      for (const { problem, plan, paths } of ways) {
        const { faults } = checkPlan({ ...tinyProblem, ...problem }, { ...tinyPlan, ...plan });
        expect(faults.map((fault) => ({ code: fault.code, path: fault.path }))).toEqual(
          paths.map((path) => ({ code, path })),
        );
        for (const { expected, received } of faults) expect(expected).not.toBe(received);
      }
    });
  }

  it("lets dishes cooked at once take what is known of them, and what is known of more says nothing", () => {
    for (const problem of [
      atOnce(62, { isApart: true }),
      atOnce(40, { isApart: true, cookings: [cooking(40, 4)] }),
      atOnce(38, { cookings: [cooking(62, 4.1, 9)] }),
      atOnce(40, loads),
    ])
      expect(checkPlan({ ...tinyProblem, ...problem }, tinyPlan).faults).toEqual([]);
  });

  it("reports every fault of a plan at once", () => {
    const problem = { ...tinyProblem, ...limits({ maxTrips: 1, budgetMinor: 0 }), ...sitting(1, { heat: false }) };
    const { faults } = checkPlan(problem, { ...tinyPlan, trips: [1, 0] });
    expect(faults.map(({ code }) => code).sort()).toEqual(["budget", "heat", "max-trips", "trips-order"]);
  });

  it("lets a lot that was open at the start keep to its own last day", () => {
    const problem = { ...tinyProblem, ...lot(2, { opened: true }) };
    const late = { uses: [...alter(uses, 8, { massG: 90 }), { lot: { stock: 2 }, batch: 3, massG: 10 }] };
    expect(checkPlan(problem, { ...tinyPlan, ...late }).faults).toEqual([]);
  });

  it("lets a pack of separate pieces keep longer than what is opened as a whole", () => {
    const pieces = (openedDays: number): MenuProblem => ({
      ...tinyProblem,
      foods: alter(tinyProblem.foods, 2, { openedDays: 0 }),
      packs: alter(tinyProblem.packs, 2, { openedDays }),
    });
    expect(checkPlan(pieces(1), tinyPlan).faults).toEqual([]);
    expect(checkPlan(pieces(0), tinyPlan).faults.map(({ path }) => path)).toEqual([["uses", 7]]);
  });

  it("lets what goes off leave the fridge at the end of its last day", () => {
    const filled = (lastDay: number): MenuProblem => ({
      ...tinyProblem,
      ...limits({ fridgeLitres: 2.3 }),
      lots: [...tinyProblem.lots, { food: 1, massG: 1000, opened: false, lastDay, mustUse: false }],
      trips: alter(tinyProblem.trips, 0, { carryG: 9000 }),
      packs: alter(tinyProblem.packs, 1, { massG: 2000 }),
    });
    const daysTooFull = (lastDay: number): number[] =>
      checkPlan(filled(lastDay), tinyPlan).faults.map(({ expected }) => Number(expected.split(" ").at(-1)));
    // The pack of 2 l brought home on day 0 loses 0.5 l that evening and is gone after day 1.
    expect(daysTooFull(-1)).toEqual([]);
    expect(daysTooFull(0)).toEqual([0]);
    expect(daysTooFull(1)).toEqual([0, 1]);
    expect(daysTooFull(2)).toEqual([0, 1]);
  });

  it("judges a count of packs too large to be told one by one", () => {
    const many = { purchases: alter(purchases, 0, { count: 1e12 }) };
    const { faults } = checkPlan(tinyProblem, { ...tinyPlan, ...many });
    expect(faults.map(({ code }) => code).sort()).toEqual(["budget", "carry", "pack-limit"]);
  });
});
