import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeDish, makeFood, makeMaking, makeStep } from "../dish/dish.testing.ts";
import { nutrientsOfDish, vesselsOf } from "../dish/index.ts";
import { makePack } from "../price/pack.testing.ts";
import type { Lot } from "../stores/index.ts";
import type { FittedDish } from "./fitDish.ts";
import { makeEater, makeKitchen, readDemoKitchens, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { PLANNED_COMPONENTS } from "./toMenuDish.ts";
import { toMenuProblem } from "./toMenuProblem.ts";

const starter = readStarterTables();
const kitchens = readDemoKitchens();

const milk = makeFood("milk", {
  densityGPerMl: 1,
  keeping: { unopened: { fridge: 7 }, opened: { fridge: 3 }, authority: "a table" },
  composition: { energyKj: 200 },
});
const oats = makeFood("oats-rolled", { composition: { energyKj: 1500 } });
const bowl = makeDish({
  id: "oat-bowl",
  main: "oats-rolled",
  portions: 1,
  makings: [makeMaking("oats-rolled", 100), makeMaking("milk", 200)],
  method: [makeStep("stir", 5)],
  keeps: { fridgeDays: 2, authority: "a table" },
  served: ["cold"],
});
const tables = withTables(starter, [milk, oats], [bowl]);
const packs = [makePack(), makePack({ id: "milk-1l", food: "milk", content: { massG: 1000 }, priceMinor: 90 })];
const [corner] = makeKitchen().shops;
const shop = corner as Kitchen["shops"][number];

function state(over: Partial<Kitchen> = {}, days = 7) {
  const kitchen = makeKitchen({ packs, ...over });
  return toMenuProblem(kitchen, tables, kitchen.startsOn, days);
}

function lotOf(over: Partial<Lot>): Lot {
  return { id: "lot", food: "milk", place: "fridge", boughtOn: "2026-03-01", massG: 500, costMinor: 45, ...over };
}

describe("a kitchen as a planning problem", () => {
  it("values no gram kept above the least that one costs, offers taken, whatever the prices", () => {
    const change = fc.record({
      at: fc.nat({ max: kitchens.length - 1 }),
      // Every fifth dish, as what a food is worth does not depend on the dishes that use it.
      from: fc.nat({ max: 4 }),
      shares: fc.array(fc.double({ min: 0.1, max: 3, noNaN: true }), { minLength: 7, maxLength: 7 }),
    });
    fc.assert(
      fc.property(change, ({ at, from, shares }) => {
        const { kitchen } = kitchens[at] as (typeof kitchens)[number];
        const few = { ...starter, dishes: starter.dishes.filter((_, i) => i % 5 === from) };
        const priced = kitchen.packs.map((pack, i) => {
          const price = (minor: number) => Math.ceil(minor * (shares[i % shares.length] as number));
          const offer = pack.offer && { offer: { ...pack.offer, priceMinor: price(pack.offer.priceMinor) } };
          return { ...pack, priceMinor: price(pack.priceMinor), ...offer };
        });
        const { problem } = toMenuProblem({ ...kitchen, packs: priced }, few, kitchen.startsOn, 3);
        expect(problem.packs.length).toBeGreaterThan(10);
        problem.packs.forEach(({ food, massG, priceMinor, offer }) => {
          const least = Math.min(priceMinor, offer ? offer.priceMinor / offer.count : priceMinor) / massG;
          const facts = problem.foods[food];
          expect(facts?.creditMinorPerG).toBeLessThanOrEqual(least);
          expect(facts?.creditOpenedMinorPerG).toBeLessThanOrEqual(facts?.creditMinorPerG as number);
        });
      }),
      { numRuns: 15 },
    );
  });

  it("cooks at once for sittings of one kind and day, apart for what is taken along, and at the cook's own pace", () => {
    const [ada, bea] = [makeEater("ada"), makeEater("bea")];
    const evening = { kind: "evening" as const, on: [1, 2], minutes: 60, heat: true, packed: false };
    const sittings = [
      { ...evening, eaters: ["ada"] },
      { ...evening, eaters: ["bea"], minutes: 45 },
      { ...evening, eaters: ["ada"], packed: true },
      { ...evening, kind: "midday" as const, eaters: ["ada", "bea"] },
    ];
    const { problem } = state({ eaters: [ada, bea], sittings }, 2);
    const labels = problem.sittings.map(({ day, together }) =>
      together === undefined ? "alone" : `${day} ${together}`,
    );
    expect(labels).toEqual(["alone", "0 1", "0 1", "alone", "alone", "1 5", "1 5", "alone"]);
    const [alone] = state().problem.dishes;
    const [slow] = state({ pace: { mix: 2 } }).problem.dishes;
    expect([alone?.handsOn.fixed, alone?.elapsed.fixed, alone?.loads?.[0]?.fixed]).toEqual([5, 5, 5]);
    expect([slow?.handsOn.fixed, slow?.elapsed.fixed, slow?.loads?.[0]?.fixed]).toEqual([10, 10, 10]);
  });

  it("has the vessels of each dish washed up after its cooking, and of portions put by only what they are warmed in", () => {
    const kitchen = kitchens.find(({ name }) => name === "port-ansel")?.kitchen as Kitchen;
    const { problem, dishes } = toMenuProblem(kitchen, starter, kitchen.startsOn, 7);
    const worth = { ...kitchen.worth, vesselMinutes: 3 };
    expect(toMenuProblem({ ...kitchen, worth }, starter, kitchen.startsOn, 7).problem.worth.vesselMinutes).toBe(3);
    expect(problem.worth.vesselMinutes).toBe(kitchen.worth.vesselMinutes);
    dishes.forEach(({ dish, putBy }, at) => {
      const vessels = problem.dishes[at]?.vessels ?? 0;
      if (putBy !== undefined) expect(vessels).toBeLessThanOrEqual(1);
      else expect(vessels).toBe(vesselsOf(dish).reduce((sum, { count }) => sum + count, 0));
    });
    expect(problem.dishes.some(({ vessels = 0 }) => vessels > 2)).toBe(true);
  });

  it("gives each dish the energy and components of its foods as they are cooked", () => {
    for (const { kitchen } of kitchens) {
      const { problem, dishes } = toMenuProblem(kitchen, starter, kitchen.startsOn, 7);
      problem.dishes.forEach(({ energyKj, components }, at) => {
        const { dish, choose } = dishes[at] as FittedDish;
        const told = nutrientsOfDish(dish, starter.foods, starter.retain, choose);
        expect(energyKj).toBe(told.perPortion.energyKj.amount);
        PLANNED_COMPONENTS.forEach((name, i) => {
          const amount = name === "vegetablesFruitG" ? told.vegetablesFruitG : told.perPortion[name].amount;
          expect(components[i]).toBe(amount ?? 0);
        });
      });
    }
  });

  it("brings a trip home before the sitting its shop says, and after the one before that", () => {
    for (const { kitchen } of kitchens) {
      const { problem, sittings, trips } = toMenuProblem(kitchen, starter, kitchen.startsOn, 7);
      const order = ["morning", "midday", "between", "evening"];
      problem.trips.forEach(({ shop: at, day, period }, trip) => {
        const { beforeSitting, id, openDays } = kitchen.shops[at] as Kitchen["shops"][number];
        expect(trips[trip]?.shop).toBe(id);
        expect(openDays.length).toBeGreaterThan(0);
        problem.sittings.forEach((sitting, k) => {
          const kind = sittings[k]?.kind as string;
          const isLater =
            day < sitting.day || (day === sitting.day && order.indexOf(kind) >= order.indexOf(beforeSitting));
          expect(sitting.period >= period).toBe(isLater);
        });
      });
      expect(problem.periodDay).toEqual([...problem.periodDay].sort((a, b) => a - b));
      for (const { period, day } of problem.sittings) expect(problem.periodDay[period]).toBe(day);
    }
  });

  it("leaves out what has gone off, says which of the rest is open and must be used, and when it goes off", () => {
    const stores = [
      lotOf({ id: "old", boughtOn: "2026-02-20" }),
      lotOf({ id: "fresh" }),
      lotOf({ id: "open", openedOn: "2026-03-01" }),
      lotOf({ id: "loose", loose: true }),
    ];
    const { problem, lots, goneOff } = state({ stores, useUp: ["open"] });
    expect(goneOff.map(({ id }) => id)).toEqual(["old"]);
    expect(lots.map(({ id }) => id)).toEqual(["fresh", "open", "loose"]);
    expect(problem.lots.map(({ opened, mustUse, lastDay }) => [opened, mustUse, lastDay])).toEqual([
      [false, false, 6],
      [true, true, 2],
      [true, false, 6],
    ]);
  });

  it("takes what has gone off for nothing that can be had", () => {
    const [oatPack] = packs;
    const gone = state({ packs: [oatPack as (typeof packs)[number]], stores: [lotOf({ boughtOn: "2026-02-20" })] });
    expect(gone.dishes).toEqual([]);
    expect(gone.unfit).toEqual([{ dish: "oat-bowl", why: { reason: "not-to-be-had", food: "milk" } }]);
  });

  it("sells what is reduced to clear on the first trip only, for as long as its date allows", () => {
    const cheap = makePack({ id: "milk-cheap", food: "milk", reduced: { until: "2026-03-04", limit: 2 } });
    const late = { ...shop, openDays: [2, 5] };
    const { problem } = state({ packs: [...packs, cheap], shops: [late] });
    expect(problem.packs[2]).toMatchObject({ fromDay: 1, toDay: 1, unopenedDays: 1, limit: 2 });
    const tooLate = state({ packs: [...packs, cheap], shops: [{ ...late, openDays: [5] }] });
    expect(tooLate.packs.map(({ id }) => id)).toEqual(["oats-500", "milk-1l"]);
  });

  it("lets separate pieces keep as if they were never opened", () => {
    const { problem } = state({ packs: packs.map((pack) => ({ ...pack, loose: true as const })) });
    expect(problem.packs.map(({ openedDays }) => openedDays)).toEqual([9, 7]);
    expect(state().problem.packs.map(({ openedDays }) => openedDays)).toEqual([undefined, undefined]);
  });

  it("keeps nothing cold and nothing over where there is no fridge", () => {
    const { kit } = makeKitchen();
    const { problem } = state({ kit: { ...kit, fridgeLitres: 0 } });
    const at = problem.foods.findIndex(({ id }) => id === "milk");
    expect(problem.foods[at]).toMatchObject({ unopenedDays: 0, openedDays: 0 });
    expect(problem.foods[at]).not.toHaveProperty("cold");
    expect(problem.dishes.map(({ keepsDays }) => keepsDays)).toEqual([0]);
    expect(problem.limits).not.toHaveProperty("fridgeLitres");
    expect(state().problem.dishes.map(({ keepsDays }) => keepsDays)).toEqual([2]);
  });

  it("counts the limits of a week for as many days as are planned", () => {
    const limits = { ...makeKitchen().limits, budgetMinor: 3500, handsOnMinutes: [10, 20, 30, 40, 50, 60, 70] };
    expect(state({ limits }, 14).problem.limits).toMatchObject({ budgetMinor: 7000, maxTrips: 6, mainMax: 18 });
    expect(state({ limits }, 3).problem.limits).toMatchObject({ budgetMinor: 1500, handsOnMinutes: [10, 20, 30] });
    const dear = state({ limits, kit: { ...makeKitchen().kit, potPortions: 1 } });
    expect(dear.problem.limits.batchPortions).toBe(Math.max(1, dear.shares[0]?.portions as number));
  });

  it("counts eaters who are always together as one kind, by the strictest of their bounds", () => {
    const eaters = [makeEater("ada"), makeEater("bo", { sex: "male", massKg: 90, heightCm: 185 })];
    const sittings = makeKitchen().sittings.map((sitting) => ({ ...sitting, eaters: ["ada", "bo"] }));
    const both = state({ eaters, sittings }).problem.profiles;
    const alone = eaters.map(({ id }) =>
      state({ eaters, sittings: sittings.map((one) => ({ ...one, eaters: [id] })) }),
    );
    expect(both).toHaveLength(1);
    expect(both[0]?.eaters).toBe(2);
    for (const bound of both[0]?.bounds ?? []) {
      const amounts = alone.flatMap(({ problem }) =>
        (problem.profiles[0]?.bounds ?? []).flatMap((one) =>
          one.component === bound.component && one.kind === bound.kind ? [one.amount] : [],
        ),
      );
      const strictest = bound.kind === "at-least" ? Math.max(...amounts) : Math.min(...amounts);
      expect(bound.amount).toBeCloseTo(strictest, 9);
    }
  });
});
