import { expect, test } from "vitest";
import { checkPlan } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import { soupWeek } from "./soupWeek.testing.ts";
import { whyDish } from "./whyDish.ts";
import { whyNot } from "./whyNot.ts";
import { whyPack } from "./whyPack.ts";

const WISH = { seed: 1, moves: 2000 };

/** Leek soup twice from one large pack, then bread twice: the cheapest there is, 410. */
const plan: MenuPlan = {
  batches: [
    { dish: 0, sittings: [0] },
    { dish: 0, sittings: [1] },
    { dish: 3, sittings: [2] },
    { dish: 3, sittings: [3] },
  ],
  trips: [0],
  purchases: [
    { trip: 0, pack: 1, count: 1 },
    { trip: 0, pack: 3, count: 2 },
  ],
  uses: [
    { lot: { purchase: 0, copy: 0 }, batch: 0, massG: 200 },
    { lot: { purchase: 0, copy: 0 }, batch: 1, massG: 200 },
    { lot: { purchase: 1, copy: 0 }, batch: 2, massG: 100 },
    { lot: { purchase: 1, copy: 1 }, batch: 3, massG: 100 },
  ],
};

test("the plan that the reasons are asked of is sound", () => {
  const { faults, money } = checkPlan(soupWeek, plan);
  expect([faults, money.totalMinor]).toEqual([[], 410]);
});

test("a dish shares a pack that would go off, and another in its place costs so much more", () => {
  const why = whyDish(soupWeek, plan, 1, WISH);
  expect(why?.lots).toEqual([
    {
      lot: { purchase: 0, copy: 0 },
      food: 0,
      massG: 200,
      isLasting: false,
      withBatches: [0],
      finishes: false,
      savedFromWasteG: 200,
    },
  ]);
  // Leek pie instead is the same money; without the soup anywhere two pies are the same money again.
  expect(why?.withoutHere.extraMinor).toBe(0);
  expect(why?.withoutAnywhere.extraMinor).toBe(0);
  const bread = whyDish(soupWeek, plan, 3, WISH);
  expect(bread?.lots[0]).toMatchObject({ finishes: true, withBatches: [], savedFromWasteG: 0 });
  // Without bread there: three pots of leek on three days need a large and a small pack, 400 + 80 for bread.
  expect(bread?.withoutHere.extraMinor).toBe(0);
  // Without bread at all: soup and pie twice each, two days from each of two large packs.
  expect(bread?.withoutAnywhere.extraMinor).toBe(500 - 410);
  expect(whyDish(soupWeek, { ...plan, batches: [] }, 3, WISH)).toBe(undefined);
});

test("a plan met before answers where the search finds none better, and never where it has the dish", () => {
  // Pie twice costs no more than soup twice; one move finds little by itself.
  const pies = { ...plan, batches: plan.batches.map((batch) => (batch.dish === 0 ? { ...batch, dish: 1 } : batch)) };
  const { faults, money } = checkPlan(soupWeek, pies);
  expect(faults).toEqual([]);
  const known = [{ plan: pies, moneyMinor: money.totalMinor }];
  const why = whyDish(soupWeek, plan, 0, { seed: 1, moves: 1, known });
  expect(why?.withoutAnywhere.extraMinor).toBeLessThanOrEqual(money.totalMinor - 410);
  const same = whyDish(soupWeek, plan, 0, { seed: 1, moves: 2000, known: [{ plan, moneyMinor: 410 }] });
  for (const { found } of [same?.withoutHere, same?.withoutAnywhere].flatMap((one) => one ?? []))
    expect(found?.plan.batches.some(({ dish, sittings }) => dish === 0 && sittings.includes(0))).toBe(false);
});

test("a dish that is not there: what it would cost, what forbids it, or which limit it breaks", () => {
  expect(whyNot(soupWeek, plan, 0, 1, WISH)).toEqual({ kind: "served" });
  // The rice pack of 400 serves three evenings, so that only one of bread is left beside it.
  const rice = whyNot(soupWeek, plan, 2, 1, WISH);
  expect(rice).toMatchObject({ kind: "dearer" });
  if (rice.kind !== "dearer") throw new Error(rice.kind);
  expect(rice.extraMinor).toBe(560 - 410);
  const sittings = soupWeek.sittings.map((one, k) => (k === 1 ? { ...one, dishes: [0, 3] } : one));
  expect(whyNot({ ...soupWeek, sittings }, plan, 2, 1, WISH)).toMatchObject({
    kind: "unfit",
    faults: [{ code: "dish-unfit" }],
  });
  // Nothing is there to be left over before the first sitting, so that nothing has to be searched.
  const hasty = soupWeek.sittings.map((one, k) => (k === 0 ? { ...one, minutes: 1 } : one));
  const late = whyNot({ ...soupWeek, sittings: hasty }, plan, 2, 0, WISH);
  expect(late).toMatchObject({ kind: "breaks", why: { kind: "gaps", gaps: [{ sitting: 0 }] }, moves: 0 });
  const poor = { ...soupWeek, limits: { ...soupWeek.limits, budgetMinor: 420 } };
  const broke = whyNot(poor, plan, 2, 1, WISH);
  if (broke.kind !== "breaks" || broke.why.kind !== "collision") throw new Error(broke.kind);
  const budget = broke.why.alone.find(({ limit }) => limit === "budget");
  expect(budget?.excesses).toMatchObject([{ excess: 560 - 420 }]);
});

test("the same menu from other packs: money, what is left, what goes off", () => {
  const why = whyPack(soupWeek, plan, 0, WISH);
  expect(why?.chosen).toMatchObject({ packs: [{ pack: 1, count: 1 }], tillMinor: 250, wasteG: 100, extraMinor: 0 });
  expect(why?.others).toMatchObject([
    { packs: [{ pack: 0, count: 2 }], tillMinor: 300, leftG: 0, wasteG: 0, extraMinor: 50, extraShops: [] },
  ]);
  expect(why?.impossible).toEqual([]);
  const limited = { ...soupWeek, packs: soupWeek.packs.map((pack, at) => (at === 0 ? { ...pack, limit: 1 } : pack)) };
  expect(whyPack(limited, plan, 0, WISH)?.impossible).toEqual([{ pack: 0, hindrance: "limits" }]);
  expect(whyPack(soupWeek, plan, 1, WISH)).toBe(undefined);
});
