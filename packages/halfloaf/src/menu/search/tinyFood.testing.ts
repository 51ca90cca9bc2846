import fc from "fast-check";
import type { MenuFood, MenuLot, MenuPack, MenuProblem } from "../problem.ts";

/** What is needed of one food on each day, and all there is to be had of it. */
export interface TinyFood {
  readonly needsG: readonly number[];
  readonly food: Omit<MenuFood, "id">;
  readonly packs: readonly MenuPack[];
  readonly lots: readonly MenuLot[];
  /** Trips, all of them made, as [shop, day]. */
  readonly trips: readonly (readonly [number, number])[];
}

const LASTS = 9999;
const NO_MINUTES = { fixed: 0, perPortion: 0 };

/** A week of that one food, one period a day. */
export function toProblem({ needsG, food, packs, lots, trips }: TinyFood): MenuProblem {
  const days = needsG.length;
  return {
    days,
    periodDay: needsG.map((_, day) => day),
    foods: [{ id: "food", ...food }],
    dishes: needsG.map((massG, main) => ({
      id: `dish-${main}`,
      makings: [{ food: 0, massG }],
      handsOn: NO_MINUTES,
      elapsed: NO_MINUTES,
      keepsDays: 0,
      needsHeat: false,
      servedCold: true,
      travels: true,
      main,
      maxUses: 1,
      dislikeMinor: 0,
      energyKj: 0,
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
      variety: false,
    })),
    lots,
    packs,
    shopCount: 2,
    trips: trips.map(([shop, day]) => ({ shop, day, period: day, costMinor: 0, minutes: 0 })),
    components: [],
    profiles: [],
    limits: {
      handsOnMinutes: needsG.map(() => 9),
      energyTolerance: 1,
      distinct: 0,
      mainMax: 9,
      batchPortions: 9,
      maxTrips: 99,
    },
    worth: { minuteMinor: 0, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
  };
}

const share = (most: number) => fc.integer({ min: 0, max: most }).map((percent) => percent / 100);
const massG = fc.constantFrom(90, 150, 250, 400.5, 1000);

const pack = fc.record(
  {
    shop: fc.nat({ max: 1 }),
    massG,
    priceMinor: fc.integer({ min: 20, max: 300 }),
    limit: fc.constantFrom(LASTS, LASTS, 1, 2),
    fromDay: fc.constantFrom(0, 0, 1),
    toDay: fc.constantFrom(LASTS, LASTS, 1),
    unopenedDays: fc.nat({ max: 4 }),
    offer: fc.record({ count: fc.integer({ min: 2, max: 3 }), share: fc.integer({ min: 60, max: 100 }) }),
  },
  { requiredKeys: ["shop", "massG", "priceMinor", "limit", "fromDay", "toDay"] },
);

/** Foods that last or go off, with stock, specials and offers; a gram kept is never worth more than one costs. */
export function arbitraryFood(isLasting: boolean): fc.Arbitrary<TinyFood> {
  return fc
    .record({
      needsG: fc.array(fc.constantFrom(0, 60, 130, 310), { minLength: 2, maxLength: 4 }),
      lives: fc.tuple(fc.nat({ max: 3 }), fc.nat({ max: 2 })),
      shares: fc.tuple(share(90), share(100), share(50)),
      packs: fc.array(pack, { minLength: 1, maxLength: 3 }),
      lots: fc.array(
        fc.record({ massG, opened: fc.boolean(), lastDay: fc.nat({ max: 4 }), mustUse: fc.constant(false) }),
        { maxLength: 2 },
      ),
      trips: fc.uniqueArray(fc.tuple(fc.nat({ max: 1 }), fc.nat({ max: 2 })), { maxLength: 4, selector: String }),
    })
    .map(({ needsG, lives, shares, packs, lots, trips }): TinyFood => {
      // A little more for each pack, so that no two ways to buy cost the same.
      const sold = packs.map(({ offer, unopenedDays, ...facts }, at): MenuPack => {
        const priceMinor = facts.priceMinor + 0.0137 * (at + 1) ** 2;
        const bundle = offer && {
          offer: { count: offer.count, priceMinor: (priceMinor * offer.count * offer.share) / 100 },
        };
        const life = isLasting || unopenedDays === undefined ? {} : { unopenedDays };
        return { food: 0, ...facts, priceMinor, ...life, ...bundle };
      });
      const least = Math.min(
        ...sold.map((one) => (one.offer ? one.offer.priceMinor / one.offer.count : one.priceMinor) / one.massG),
      );
      const creditMinorPerG = least * shares[0];
      const openedDays = Math.min(lives[0], needsG.length - 1);
      return {
        needsG,
        food: {
          openedDays: isLasting ? LASTS : openedDays,
          unopenedDays: isLasting ? LASTS : openedDays + lives[1],
          creditMinorPerG,
          creditOpenedMinorPerG: creditMinorPerG * shares[1],
          wasteMinorPerG: least * shares[2],
        },
        packs: sold,
        lots: lots.map((lot) => ({ food: 0, ...lot, lastDay: isLasting ? LASTS : lot.lastDay })),
        trips,
      };
    });
}

/** Price of so many packs on one bill. */
export function payPacks({ priceMinor, offer }: MenuPack, count: number): number {
  if (!offer) return count * priceMinor;
  return Math.floor(count / offer.count) * offer.priceMinor + (count % offer.count) * priceMinor;
}

/** All lists of counts up to `most` for each of the things. */
export function* countUp(things: number, most: number): Generator<number[]> {
  if (things === 0) {
    yield [];
    return;
  }
  for (const rest of countUp(things - 1, most)) for (let count = 0; count <= most; count++) yield [...rest, count];
}

interface Box {
  left: number;
  readonly fromDay: number;
  lastDay: number;
  opened: boolean;
  readonly openedDays: number;
}

/**
 * The least that the needs can cost: up to `most` packs in all, from whatever trips, the boxes emptied in every order.
 * Infinity where the needs cannot be met so.
 */
export function tryEverything(tiny: TinyFood, most: number): number {
  const bills = tiny.trips.flatMap(([shop, day]) =>
    tiny.packs
      .filter((one) => one.shop === shop && day >= one.fromDay && day <= one.toDay)
      .map((one) => ({ one, day })),
  );
  let best = Infinity;
  for (const counts of countUp(bills.length, most)) {
    const within = tiny.packs.every(
      (one) => counts.reduce((sum, count, at) => (bills[at]?.one === one ? sum + count : sum), 0) <= one.limit,
    );
    if (!within || counts.reduce((sum, count) => sum + count, 0) > most) continue;
    const paid = counts.reduce((sum, count, at) => sum + payPacks(bills[at]?.one as MenuPack, count), 0);
    const boxes = [
      ...tiny.lots.map((lot): Box => ({ ...toBox(tiny, lot.massG, 0, lot.lastDay), opened: lot.opened })),
      ...counts.flatMap((count, at) => {
        const { one, day } = bills[at] as (typeof bills)[number];
        const keeps = day + (one.unopenedDays ?? tiny.food.unopenedDays);
        return Array.from({ length: count }, () => toBox(tiny, one.massG, day, keeps));
      }),
    ];
    best = Math.min(best, paid + openingWorth(tiny) - bestEnd(tiny, boxes, 0, tiny.needsG[0] as number));
  }
  return best;
}

function toBox({ food }: TinyFood, left: number, fromDay: number, lastDay: number): Box {
  return { left, fromDay, lastDay, opened: false, openedDays: food.openedDays };
}

function creditOf({ food, needsG }: TinyFood, opened: boolean): number {
  const lasts = food.openedDays >= needsG.length && food.unopenedDays >= needsG.length;
  return opened && !lasts ? food.creditOpenedMinorPerG : food.creditMinorPerG;
}

function openingWorth(tiny: TinyFood): number {
  return tiny.lots.reduce((sum, lot) => sum + lot.massG * creditOf(tiny, lot.opened), 0);
}

function isAlike(a: Box, b: Box): boolean {
  return (["left", "fromDay", "lastDay", "opened", "openedDays"] as const).every((key) => a[key] === b[key]);
}

/** The most that is left is worth, less the price of waste, over all ways to feed the needs from a day on. */
function bestEnd(tiny: TinyFood, boxes: readonly Box[], day: number, need: number): number {
  if (need <= 1e-9) {
    const next = tiny.needsG[day + 1];
    return next === undefined ? worthOf(tiny, boxes) : bestEnd(tiny, boxes, day + 1, next);
  }
  let best = -Infinity;
  boxes.forEach((box, at) => {
    if (box.left <= 1e-9 || box.fromDay > day || box.lastDay < day) return;
    // Of boxes that are alike one stands for all.
    if (boxes.slice(0, at).some((other) => isAlike(other, box))) return;
    const taken = Math.min(box.left, need);
    const lastDay = box.opened ? box.lastDay : Math.min(box.lastDay, day + box.openedDays);
    const others = boxes.map((other, i) =>
      i === at ? { ...box, left: box.left - taken, lastDay, opened: true } : other,
    );
    best = Math.max(best, bestEnd(tiny, others, day, need - taken));
  });
  return best;
}

function worthOf(tiny: TinyFood, boxes: readonly Box[]): number {
  const end = tiny.needsG.length - 1;
  return boxes.reduce(
    (sum, { left, lastDay, opened }) =>
      sum + left * (lastDay >= end ? creditOf(tiny, opened) : -tiny.food.wasteMinorPerG),
    0,
  );
}
