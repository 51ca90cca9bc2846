import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../menu/check/index.ts";
import { type MenuPlan, MenuSearch } from "../menu/index.ts";
import { accountLots } from "./accountLots.ts";
import { stateTogether } from "./cooking/stateTogether.ts";
import { readDemoKitchens, readStarterTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { type KitchenProblem, toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";

const tables = readStarterTables();
const kitchens = readDemoKitchens();

/** A demo kitchen with other prices, stores, company, kit and limits. */
const kitchen = fc
  .record({
    at: fc.nat({ max: kitchens.length - 1 }),
    shares: fc.array(fc.double({ min: 0.3, max: 2, noNaN: true }), { minLength: 5, maxLength: 5 }),
    dropLots: fc.integer({ min: 1, max: 5 }),
    massShare: fc.double({ min: 0.05, max: 4, noNaN: true }),
    dropSittings: fc.nat({ max: 3 }),
    alone: fc.boolean(),
    freezer: fc.boolean(),
    budget: fc.boolean(),
    dropPacks: fc.integer({ min: 4, max: 40 }),
  })
  .map(({ at, shares, dropLots, massShare, dropSittings, alone, freezer, budget, dropPacks }): Kitchen => {
    const { kitchen: demo } = kitchens[at] as (typeof kitchens)[number];
    const { budgetMinor, ...limits } = demo.limits;
    const price = (minor: number, i: number) => Math.ceil(minor * (shares[i % shares.length] as number));
    return {
      ...demo,
      packs: demo.packs
        .filter((_, i) => i % dropPacks !== 1)
        .map((pack, i) => ({
          ...pack,
          priceMinor: price(pack.priceMinor, i),
          ...(pack.offer && { offer: { ...pack.offer, priceMinor: price(pack.offer.priceMinor, i) } }),
        })),
      stores: demo.stores
        .filter((_, i) => i % dropLots === 0)
        .map((lot, i) => ({ ...lot, massG: lot.massG * massShare, costMinor: price(lot.costMinor, i) })),
      sittings: demo.sittings
        .filter((_, i) => demo.sittings.length < 5 || i % 4 !== dropSittings)
        .map((sitting) => (alone ? { ...sitting, eaters: sitting.eaters.slice(0, 1) } : sitting)),
      kit: { ...demo.kit, freezerLitres: freezer ? demo.kit.freezerLitres : 0 },
      limits: { ...limits, ...(budget && budgetMinor !== undefined && { budgetMinor }) },
      useUp: [],
    };
  });

function findPlan(stated: KitchenProblem, seed: number, moves: number): MenuPlan | undefined {
  const search = new MenuSearch(stated.problem, seed, { expectedMoves: moves });
  if (search.gaps.length > 0) return undefined;
  while (search.advance().moves < moves);
  return search.best() ?? search.leastBroken();
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

describe("a week with names and sums", () => {
  it("agrees with what the judge of plans reckons by itself: tills, fares, minutes, what goes off and what is left", () => {
    let plans = 0;
    fc.assert(
      fc.property(kitchen, fc.integer({ min: 1, max: 5 }), fc.nat(99), (changed, days, seed) => {
        const searched = toMenuProblem(changed, tables, changed.startsOn, days);
        const plan = findPlan(searched, seed, 3000);
        if (plan === undefined) return;
        plans++;
        const stated = stateTogether(searched, plan, changed, tables);
        const week = toWeekPlan(changed, tables, stated, plan, { seed, moves: 3000, moneyMinor: 0 });
        const { money } = checkPlan(stated.problem, plan);
        expect(week.accounts.tillMinor).toBe(money.tillMinor);
        expect(week.accounts.faresMinor).toBe(money.tripMinor);
        const minutes = [...week.sittings.map((one) => one.handsOnMinutes), ...week.trips.map((trip) => trip.minutes)];
        expect(sum(minutes)).toBeCloseTo(money.minutes, 6);
        // The planner pays for the vessels of each dish by itself.
        const shared = week.batches.some(({ together }) => together !== undefined);
        const washUp = week.accounts.washUp?.minutes as number;
        if (shared) expect(washUp).toBeLessThanOrEqual(money.washUpMinutes);
        else expect(washUp).toBeCloseTo(money.washUpMinutes, 9);
        expect(week.accounts.washUp?.vessels).toBe(sum(week.batches.map(({ vessels }) => vessels ?? 0)));
        stated.foods.forEach(({ id }, food) => {
          const lots = week.lots.filter((lot) => lot.food === id);
          expect(sum(lots.map((lot) => lot.wastedG))).toBeCloseTo(money.wasteG[food] as number, 2);
          const had = sum(lots.map((lot) => lot.massG));
          const used = sum(
            week.batches.flatMap(({ uses }) => uses.filter((use) => use.food === id).map(({ massG }) => massG)),
          );
          expect(sum(lots.map((lot) => lot.leftG + lot.wastedG))).toBeCloseTo(had - used, 2);
        });
        const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = week.accounts;
        expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
        expect(platesMinor).toBe(sum(week.sittings.flatMap(({ plateMinor }) => plateMinor)));
      }),
      { numRuns: 20 },
    );
    expect(plans).toBeGreaterThan(5);
  });

  it("uses up to the last gram what must be used up", () => {
    for (const { kitchen: demo } of kitchens) {
      expect(demo.useUp.length).toBeGreaterThan(0);
      const stated = toMenuProblem(demo, tables, demo.startsOn, 7);
      const plan = findPlan(stated, 1, 60_000) as MenuPlan;
      const { lots } = toWeekPlan(demo, tables, stated, plan, { seed: 1, moves: 60_000, moneyMinor: 0 });
      for (const id of demo.useUp) {
        const lot = lots.find((one) => one.id === id);
        expect(lot?.usedG).toBeCloseTo(lot?.massG as number, 3);
        expect([lot?.wastedG, lot?.leftG, lot?.wastedMinor, lot?.leftMinor]).toEqual([0, 0, 0, 0]);
      }
    }
  });
});

describe("the accounts of lots", () => {
  it("leave what a use has cost as it is, whatever is cooked later", () => {
    for (const { kitchen: demo } of kitchens) {
      const stated = toMenuProblem(demo, tables, demo.startsOn, 7);
      const plan = findPlan(stated, 1, 8000) as MenuPlan;
      const costs = (of: MenuPlan) =>
        new Map(
          accountLots(stated, of).flatMap((lot) => lot.uses.map((use) => [`${lot.id} ${use.batch}`, use.costMinor])),
        );
      const whole = costs(plan);
      const half = Math.floor(plan.batches.length / 2);
      const cut = costs({ ...plan, uses: plan.uses.filter(({ batch }) => batch < half) });
      expect(cut.size).toBeGreaterThan(10);
      expect(cut.size).toBeLessThan(whole.size);
      for (const [key, cost] of cut) expect(whole.get(key)).toBe(cost);
    }
  });
});
