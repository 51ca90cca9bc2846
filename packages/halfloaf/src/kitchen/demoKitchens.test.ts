import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Food } from "../food/index.ts";
import { checkPlan } from "../menu/check/index.ts";
import { type MenuPlan, MenuSearch } from "../menu/index.ts";
import { addDays, moveDates, parseWith } from "../quantity/index.ts";
import { checkKitchen, parseKitchen } from "./checkKitchen.ts";
import { type DayJob, jobsOfDay } from "./cooking/jobsOfDay.ts";
import type { Kitchen } from "./kitchen.ts";
import { parseTables, type Tables } from "./tables.ts";
import { type KitchenProblem, toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";
import { WeekPlan } from "./weekPlan.ts";

function readTables(): Tables {
  const read = parseTables(loadStarterTables());
  if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 5)));
  return read.value;
}

function readKitchen(content: unknown): Kitchen {
  const read = parseKitchen(content);
  if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 5)));
  return read.value;
}

const tables = readTables();
const kitchens = loadDemoKitchens().map(({ name, content }) => ({ name, kitchen: readKitchen(content) }));

/** Plans with counted moves; a plan that keeps all limits, or else the one that breaks them least. */
function search(stated: KitchenProblem, seed: number, moves: number): { plan: MenuPlan; isSound: boolean } | undefined {
  const searched = new MenuSearch(stated.problem, seed, { expectedMoves: moves });
  if (searched.gaps.length > 0) return undefined;
  let report = searched.advance();
  while (report.moves < moves) report = searched.advance();
  const best = searched.best();
  const plan = best ?? searched.leastBroken();
  return plan && { plan, isSound: best !== undefined };
}

/** What a week has to do before its first day, where nothing that it buys is there yet. */
function jobsBefore(week: WeekPlan, kitchen: Kitchen): DayJob[] {
  return [-3, -2, -1].flatMap((day) => jobsOfDay(week, kitchen, tables, addDays(week.from, day), kitchen.pace));
}

/** The sums of product and planner that must hold to the smallest coin, whatever the plan is worth. */
function expectSums(week: WeekPlan): void {
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const { accounts, lots, batches, sittings, trips } = week;
  expect(accounts.openingMinor + accounts.tillMinor).toBe(
    accounts.platesMinor + accounts.wasteMinor + accounts.carryOverMinor,
  );
  for (const lot of lots) {
    expect(lot.usedMinor + lot.wastedMinor + lot.leftMinor).toBe(lot.costMinor);
    expect(lot.usedG + lot.wastedG + lot.leftG).toBeCloseTo(lot.massG, 3);
    expect(Math.min(lot.usedG, lot.wastedG, lot.leftG)).toBeGreaterThanOrEqual(0);
  }
  batches.forEach((batch, at) => {
    expect(sum(batch.uses.map((use) => use.costMinor))).toBe(batch.costMinor);
    const plates = sittings.filter((sitting) => sitting.batch === at).flatMap((sitting) => sitting.plateMinor);
    expect(sum(plates)).toBe(batch.costMinor);
  });
  for (const trip of trips) expect(sum(trip.lines.map((line) => line.priceMinor))).toBe(trip.tillMinor);
  expect(sum(trips.map((trip) => trip.tillMinor))).toBe(accounts.tillMinor);
  const bought = lots.filter((lot) => lot.from === "bought");
  expect(sum(bought.map((lot) => lot.costMinor))).toBe(accounts.tillMinor);
}

describe.each(kitchens)("the demo kitchen $name", ({ name, kitchen }) => {
  const stated = toMenuProblem(kitchen, tables, kitchen.startsOn, 7);
  const found = search(stated, 1, 60_000);
  const plan = found?.plan as MenuPlan;
  const week = toWeekPlan(kitchen, tables, stated, plan, { seed: 1, moves: 60_000, moneyMinor: 0 });

  it("has no fault and a dish for every sitting", () => {
    expect(checkKitchen(kitchen, tables)).toEqual([]);
    expect(stated.problem.sittings.filter(({ dishes }) => dishes.length === 0)).toEqual([]);
  });

  it("is planned within all its limits, and the judge agrees", () => {
    expect(found?.isSound).toBe(true);
    expect(checkPlan(stated.problem, plan).faults).toEqual([]);
  });

  it.each([1, 2, 3, 4, 5, 6])(
    "can be begun %i days of the week later as well, and has nothing to begin before",
    (days) => {
      const moved = readKitchen(moveDates(kitchen, days));
      const stated = toMenuProblem(moved, tables, moved.startsOn, 7);
      const searched = new MenuSearch(stated.problem, 1);
      while (searched.best() === undefined && searched.advance().moves < 600_000);
      expect(searched.best()).toBeDefined();
      const made = toWeekPlan(moved, tables, stated, searched.best() as MenuPlan, { seed: 1, moves: 0, moneyMinor: 0 });
      expect(jobsBefore(made, moved)).toEqual([]);
    },
  );

  it("has nothing to begin before its first day", () => {
    expect(jobsBefore(week, kitchen)).toEqual([]);
  });

  it("adds up, and reads back from its file as it was written", () => {
    expectSums(week);
    const read = parseWith(WeekPlan, JSON.parse(JSON.stringify(week)));
    expect(read).toEqual({ ok: true, value: week });
  });

  it("never puts on a plate what its eater does not take", () => {
    for (const sitting of week.sittings) {
      const foods = week.batches[sitting.batch]?.uses.map(({ food }) => tables.foods.get(food) as Food) ?? [];
      expect(foods.length).toBeGreaterThan(0);
      for (const id of sitting.eaters) {
        const eater = kitchen.eaters.find((one) => one.id === id);
        const avoided: readonly string[] = [...(eater?.avoids.allergens ?? []), ...(eater?.avoids.foods ?? [])];
        for (const food of foods) {
          const held = [food.id, ...food.allergens.eu, ...food.allergens.us];
          expect(held.filter((one) => avoided.includes(one))).toEqual([]);
          if (eater?.diet === "vegetarian") expect(["vegan", "vegetarian"]).toContain(food.diet);
        }
      }
    }
  });

  it("plans nobody below the energy floor on any day", () => {
    for (const { energyKj, leastEnergyKj } of stated.problem.profiles) {
      expect(leastEnergyKj?.length).toBe(energyKj.length);
    }
    for (const { energyNeedKj, energyKj } of week.intake) {
      if (energyNeedKj !== undefined) expect(energyKj).toBeGreaterThan(0.85 * energyNeedKj);
    }
  });

  it("sells enough of what the dishes need", () => {
    expect(stated.dishes.length).toBeGreaterThan(name === "one-ring" ? 60 : 100);
  });
});

describe("any kitchen", () => {
  it("adds up to the smallest coin and begins nothing too early, whatever its prices, stores, eaters and limits", () => {
    let plans = 0;
    const random = fc.record({
      which: fc.nat({ max: kitchens.length - 1 }),
      priceShare: fc.double({ min: 0.2, max: 3, noNaN: true }),
      keepEvery: fc.integer({ min: 1, max: 4 }),
      days: fc.integer({ min: 1, max: 4 }),
      massKg: fc.integer({ min: 45, max: 110 }),
      seed: fc.nat({ max: 99 }),
    });
    fc.assert(
      fc.property(random, ({ which, priceShare, keepEvery, days, massKg, seed }) => {
        const { kitchen } = kitchens[which] as (typeof kitchens)[number];
        const changed: Kitchen = {
          ...kitchen,
          packs: kitchen.packs.map(({ offer, ...pack }) => ({
            ...pack,
            priceMinor: Math.round(pack.priceMinor * priceShare),
          })),
          stores: kitchen.stores.filter((_, at) => at % keepEvery === 0),
          eaters: kitchen.eaters.map((eater) => ({ ...eater, massKg })),
          useUp: [],
        };
        const stated = toMenuProblem(changed, tables, kitchen.startsOn, days);
        const found = search(stated, seed, 4000);
        if (found === undefined) return;
        plans++;
        const week = toWeekPlan(changed, tables, stated, found.plan, { seed, moves: 4000, moneyMinor: 0 });
        expectSums(week);
        expect(jobsBefore(week, changed)).toEqual([]);
      }),
      { numRuns: 25, endOnFailure: true },
    );
    expect(plans).toBeGreaterThan(5);
  });
});
