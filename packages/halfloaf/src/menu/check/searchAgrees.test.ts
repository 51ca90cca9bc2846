import { describe, expect, it } from "vitest";
import type { MenuFood, MenuLot, MenuPack, MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { checkPlan } from "./checkPlan.ts";

interface Story {
  readonly needsG: readonly number[];
  readonly food?: Partial<MenuFood>;
  readonly packs: readonly Partial<MenuPack>[];
  readonly lots?: readonly Partial<MenuLot>[];
  readonly tripDays?: readonly number[];
}
function tellWeek({ needsG, food, packs, lots = [], tripDays = [0] }: Story): MenuProblem {
  const days = needsG.length;
  return {
    days,
    periodDay: needsG.map((_, d) => d),
    foods: [
      {
        id: "food",
        openedDays: 9999,
        unopenedDays: 9999,
        creditMinorPerG: 0,
        creditOpenedMinorPerG: 0,
        wasteMinorPerG: 0,
        ...food,
      },
    ],
    dishes: needsG.map((massG, d) => ({
      id: `dish-${d}`,
      makings: massG > 0 ? [{ food: 0, massG }] : [],
      handsOn: { fixed: 0, perPortion: 0 },
      elapsed: { fixed: 0, perPortion: 0 },
      keepsDays: 0,
      needsHeat: false,
      servedCold: true,
      travels: true,
      main: d,
      maxUses: 1,
      dislikeMinor: 0,
      energyKj: 1000,
      components: [],
    })),
    sittings: needsG.map((_, day) => ({
      day,
      period: day,
      portions: 1,
      minutes: 10,
      heat: true,
      packed: false,
      dishes: [day],
      variety: true,
    })),
    lots: lots.map((lot) => ({ food: 0, massG: 100, opened: false, lastDay: 9999, mustUse: false, ...lot })),
    packs: packs.map((pack) => ({
      food: 0,
      shop: 0,
      massG: 100,
      priceMinor: 100,
      limit: 9999,
      fromDay: 0,
      toDay: 9999,
      ...pack,
    })),
    shopCount: 1,
    trips: tripDays.map((day) => ({ shop: 0, day, period: day, costMinor: 0, minutes: 0 })),
    components: [],
    profiles: [],
    limits: {
      handsOnMinutes: needsG.map(() => 60),
      energyTolerance: 1,
      distinct: 0,
      mainMax: 99,
      batchPortions: 9,
      maxTrips: 9,
    },
    worth: { minuteMinor: 0, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
  };
}
function disagreement(week: MenuProblem): unknown {
  const search = new MenuSearch(week, 1);
  let cost: number | undefined;
  for (let i = 0; i < 3; i++) cost = search.advance().costMinor;
  const plan = search.best();
  if (!plan) return "no plan";
  const { faults, money } = checkPlan(week, plan);
  if (process.env.DUMP) console.log(JSON.stringify(plan));
  return [...faults.map((f) => `${f.code} ${f.expected} ${f.received}`), money.totalMinor - (cost as number)];
}
describe("x", () => {
  it.each([
    ["ok", tellWeek({ needsG: [50, 0, 50], packs: [{}] })],
    ["A", tellWeek({ needsG: [50, 0, 50], packs: [{ unopenedDays: 1 }] })],
    ["A2", tellWeek({ needsG: [50, 0, 0], food: { creditMinorPerG: 0.5 }, packs: [{ unopenedDays: 1 }] })],
    ["B", tellWeek({ needsG: [250, 0], packs: [{ limit: 3, offer: { count: 2, priceMinor: 150 } }] })],
    [
      "C",
      tellWeek({
        needsG: [280, 160],
        food: { openedDays: 0, unopenedDays: 4 },
        packs: [
          { massG: 200, priceMinor: 31 },
          { massG: 450, priceMinor: 49, limit: 1 },
        ],
      }),
    ],
    [
      "C2",
      tellWeek({
        needsG: [100, 20],
        food: { openedDays: 0, unopenedDays: 5 },
        packs: [
          { massG: 100, priceMinor: 37 },
          { massG: 50, priceMinor: 30 },
        ],
      }),
    ],
    [
      "D",
      tellWeek({
        needsG: [120, 300, 130, 170, 0],
        food: { openedDays: 2, unopenedDays: 5 },
        packs: [{ massG: 500, priceMinor: 360, offer: { count: 2, priceMinor: 440 } }],
      }),
    ],
    [
      "E",
      tellWeek({
        needsG: [50, 0, 0],
        food: { openedDays: 9, unopenedDays: 2, creditMinorPerG: 0.5, creditOpenedMinorPerG: 0.1 },
        packs: [{}],
      }),
    ],
    ["F", tellWeek({ needsG: [50, 0, 0], food: { creditMinorPerG: 1.5 }, packs: [{}] })],
    [
      "G",
      tellWeek({
        needsG: [50, 0, 0],
        food: { openedDays: 4, unopenedDays: 2, wasteMinorPerG: 1 },
        packs: [{ massG: 99.5 }],
      }),
    ],
    [
      "G2",
      tellWeek({
        needsG: [9000, 50, 0],
        food: { openedDays: 1, unopenedDays: 2, wasteMinorPerG: 1 },
        packs: [{ massG: 397 }, { massG: 500 }],
      }),
    ],
    [
      "H",
      {
        ...tellWeek({ needsG: [50], packs: [{}] }),
        limits: { ...tellWeek({ needsG: [50], packs: [{}] }).limits, batchPortions: 0.5 },
      },
    ],
    [
      "J",
      tellWeek({
        needsG: [50, 0, 150],
        food: { openedDays: 0, unopenedDays: 5 },
        packs: [{ offer: { count: 2, priceMinor: 250 } }],
      }),
    ],
  ] as [string, MenuProblem][])("%s", (name, week) => {
    console.log(name, disagreement(week));
  });
});
