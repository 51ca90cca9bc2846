import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MenuPack } from "../problem.ts";
import { FoodCosting } from "./FoodCosting.ts";
import { arbitraryFood, countUp, payPacks, type TinyFood, toProblem, tryEverything } from "./tinyFood.testing.ts";

function evaluate(tiny: TinyFood): FoodCosting {
  const problem = toProblem(tiny);
  const costing = new FoodCosting(problem);
  costing.setTrips(Uint8Array.from(problem.trips, () => 1));
  costing.evaluate(0, Float64Array.from(tiny.needsG), 0);
  return costing;
}

const CORNER: TinyFood = {
  needsG: [100, 100, 0],
  food: { openedDays: 9, unopenedDays: 9, wasteMinorPerG: 0, creditMinorPerG: 0, creditOpenedMinorPerG: 0 },
  packs: [{ food: 0, shop: 0, massG: 100, priceMinor: 70, fromDay: 0, toDay: 9999, limit: 9999 }],
  lots: [{ food: 0, massG: 200, fromPeriod: 1, lastDay: 9, opened: false, mustUse: false }],
  trips: [[0, 0]],
};

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** A pack that is sold on every trip to its shop, as many as wanted, no longer or shorter lived than its food. */
function isRegular(pack: MenuPack, days: number): boolean {
  return pack.limit > 99 && pack.fromDay === 0 && pack.toDay >= days - 1 && pack.unopenedDays === undefined;
}

/**
 * The least cost of a lasting food that is bought in one go when its stock runs short: from all regular packs of the
 * shops visited by then and one kind of other pack.
 */
function buyInOneGo(tiny: TinyFood): number {
  const stockG = sum(tiny.lots.map((lot) => lot.massG));
  const first = tiny.needsG.findIndex((_, day) => sum(tiny.needsG.slice(0, day + 1)) > stockG);
  const neededG = sum(tiny.needsG) - stockG;
  const used = tiny.food.creditMinorPerG * sum(tiny.needsG);
  if (first < 0) return used;
  const had = tiny.packs.filter(({ shop, fromDay, toDay }) =>
    tiny.trips.some(([at, day]) => at === shop && day <= first && day >= fromDay && day <= toDay),
  );
  let best = Infinity;
  for (const counts of countUp(had.length, Math.ceil(neededG / 90) + 3)) {
    const kinds = had.filter((pack, at) => !isRegular(pack, tiny.needsG.length) && (counts[at] as number) > 0).length;
    const within = had.every((pack, at) => (counts[at] as number) <= pack.limit);
    const boughtG = sum(had.map((pack, at) => pack.massG * (counts[at] as number)));
    if (kinds > 1 || !within || boughtG < neededG) continue;
    const paid = sum(had.map((pack, at) => payPacks(pack, counts[at] as number)));
    best = Math.min(best, paid - tiny.food.creditMinorPerG * boughtG);
  }
  return used + best;
}

/** The same food with packs of which one suffices, so that none of an opening is opened later than the others. */
function withLargePacks(tiny: TinyFood): TinyFood {
  const packs = tiny.packs.map(({ offer: _offer, massG, priceMinor, ...pack }) => {
    const times = (massG + 1300) / massG;
    return { ...pack, massG: massG * times, priceMinor: priceMinor * times };
  });
  return { ...tiny, packs, lots: [] };
}

/** The least cost by opening one large pack after the other, each on the latest trip, when what is open is not enough. */
function openOneByOne(tiny: TinyFood): number {
  const { needsG, food, packs, trips } = tiny;
  const end = needsG.length - 1;
  const lasts = food.openedDays > end && food.unopenedDays > end;
  const leftCredit = lasts ? food.creditMinorPerG : food.creditOpenedMinorPerG;
  const worth = (left: number, lastDay: number): number => left * (lastDay >= end ? leftCredit : -food.wasteMinorPerG);
  const go = (day: number, left: number, lastDay: number, opened: readonly MenuPack[]): number => {
    const need = needsG[day];
    if (need === undefined) return -worth(left, lastDay);
    const good = lastDay >= day ? left : 0;
    if (good >= need) return go(day + 1, good - need + (left - good), lastDay, opened);
    const wasted = (left - good) * food.wasteMinorPerG;
    return wasted + Math.min(Infinity, ...packs.map((pack) => openPack(pack, day, need - good, opened)));
  };
  const openPack = (pack: MenuPack, day: number, rest: number, opened: readonly MenuPack[]): number => {
    const days = trips.flatMap(([shop, at]) =>
      shop === pack.shop && at <= day && at >= pack.fromDay && at <= pack.toDay ? [at] : [],
    );
    const keeps = Math.max(-1, ...days) + (pack.unopenedDays ?? food.unopenedDays);
    const count = opened.filter((one) => one === pack).length;
    if (days.length === 0 || keeps < day || count >= pack.limit) return Infinity;
    const lastDay = Math.min(keeps, day + food.openedDays);
    return pack.priceMinor + go(day + 1, pack.massG - rest, lastDay, [...opened, pack]);
  };
  return go(0, 0, -1, []);
}

describe("a food that lasts", () => {
  it("is bought as cheaply as can be where its stock runs short, offers, limits and days kept", () => {
    fc.assert(
      fc.property(arbitraryFood(true), (tiny) => {
        const costing = evaluate(tiny);
        const best = buyInOneGo(tiny);
        expect(costing.missing).toBe(best === Infinity ? 1 : 0);
        if (best < Infinity) expect(costing.cost).toBeCloseTo(best, 6);
      }),
      { numRuns: 300 },
    );
  });
});

describe("a food that goes off", () => {
  it("costs the least of all ways to open one pack after the other", () => {
    let missing = 0;
    fc.assert(
      fc.property(arbitraryFood(false), (random) => {
        const tiny = withLargePacks(random);
        const costing = evaluate(tiny);
        const best = openOneByOne(tiny);
        if (best === Infinity) missing++;
        expect(costing.missing > 0).toBe(best === Infinity);
        if (best < Infinity) expect(costing.cost).toBeCloseTo(best, 6);
      }),
      { numRuns: 500 },
    );
    expect(missing).toBeLessThan(400);
  });

  it("never costs less than the cheapest of all purchases and uses that there are", () => {
    let met = 0;
    let cheapest = 0;
    fc.assert(
      fc.property(arbitraryFood(false), (random) => {
        const packs = random.packs.slice(0, 2).map((pack) => ({ ...pack, massG: Math.max(250, pack.massG) }));
        const needsG = random.needsG.slice(0, 3);
        const openedDays = Math.min(random.food.openedDays, needsG.length - 1);
        const food = { ...random.food, openedDays };
        const tiny = { ...random, food, packs, needsG, trips: random.trips.slice(0, 2) };
        const costing = evaluate(tiny);
        if (costing.missing > 0) return;
        met++;
        const best = tryEverything(tiny, 6);
        expect(costing.cost).toBeGreaterThan(best - 1e-6);
        if (costing.cost < best + 1e-6) cheapest++;
      }),
      { numRuns: 300 },
    );
    expect(met).toBeGreaterThan(60);
    expect(cheapest / met).toBeGreaterThan(0.7);
  });

  it("pays an offer for packs of one trip that are opened on different days", () => {
    const tiny: TinyFood = {
      needsG: [80, 0, 80],
      food: { openedDays: 0, unopenedDays: 5, creditMinorPerG: 0, creditOpenedMinorPerG: 0, wasteMinorPerG: 0 },
      packs: [
        {
          food: 0,
          shop: 0,
          massG: 100,
          priceMinor: 95,
          limit: 9999,
          fromDay: 0,
          toDay: 9999,
          offer: { count: 2, priceMinor: 150 },
        },
      ],
      lots: [],
      trips: [[0, 0]],
    };
    expect(evaluate(tiny)).toMatchObject({ cost: 150, till: 150, missing: 0 });
    // On two trips there are two bills.
    expect(evaluate({ ...tiny, trips: [...tiny.trips, [0, 2]] })).toMatchObject({ cost: 190, till: 190 });
  });

  it("says what is missing, and how much of stock that must be used is left", () => {
    const tiny: TinyFood = {
      needsG: [80, 50],
      food: { openedDays: 0, unopenedDays: 5, creditMinorPerG: 0, creditOpenedMinorPerG: 0, wasteMinorPerG: 1 },
      packs: [],
      lots: [{ food: 0, massG: 100, opened: false, lastDay: 4, mustUse: true }],
      trips: [],
    };
    // 20 g go off, since the lot keeps open for its day only; then there is nothing for the second day.
    const costing = evaluate(tiny);
    expect(costing).toMatchObject({ missing: 1, till: 0, cost: 20 });
    expect(costing.unused).toBeCloseTo(0.3 + 0.2, 9);
  });

  it("takes nothing from a lot before the period in which it is there, also of a food that lasts", () => {
    expect(evaluate(CORNER).cost).toBe(70);
    const there = CORNER.lots.map(({ fromPeriod: _, ...lot }) => lot);
    expect(evaluate({ ...CORNER, lots: there }).cost).toBe(0);
    expect(evaluate({ ...CORNER, trips: [] }).missing).toBe(1);
  });
});
