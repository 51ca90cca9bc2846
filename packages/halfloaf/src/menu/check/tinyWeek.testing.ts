import type { MenuPlan } from "../plan.ts";
import type {
  MenuBound,
  MenuDish,
  MenuFood,
  MenuLot,
  MenuPack,
  MenuProblem,
  MenuSitting,
  MenuTrip,
} from "../problem.ts";

const BARLEY = 0;
const MILK = 1;
const PEAS = 2;
const LASTS = 9999;

const foods: MenuFood[] = [
  {
    id: "barley",
    openedDays: LASTS,
    unopenedDays: LASTS,
    creditMinorPerG: 0.2,
    creditOpenedMinorPerG: 0,
    wasteMinorPerG: 0.4,
  },
  {
    id: "milk",
    openedDays: 1,
    unopenedDays: 4,
    creditMinorPerG: 0.08,
    creditOpenedMinorPerG: 0.02,
    wasteMinorPerG: 0.01,
    cold: { place: "fridge", litresPerG: 0.001 },
  },
  {
    id: "peas",
    openedDays: 1,
    unopenedDays: 30,
    creditMinorPerG: 0.3,
    creditOpenedMinorPerG: 0.1,
    wasteMinorPerG: 0.05,
    cold: { place: "freezer", litresPerG: 0.002 },
  },
];

const dishes: MenuDish[] = [
  {
    id: "barley-pot",
    makings: [
      { food: BARLEY, massG: 80 },
      { food: PEAS, massG: 60 },
    ],
    handsOn: { fixed: 10, perPortion: 2 },
    elapsed: { fixed: 30, perPortion: 2 },
    keepsDays: 2,
    needsHeat: true,
    servedCold: false,
    travels: false,
    main: 0,
    maxUses: 2,
    dislikeMinor: 5,
    energyKj: 3000,
    components: [8, 2],
  },
  {
    id: "milk-barley",
    makings: [
      { food: BARLEY, massG: 50 },
      { food: MILK, massG: 200 },
    ],
    handsOn: { fixed: 5, perPortion: 1 },
    elapsed: { fixed: 20, perPortion: 1 },
    keepsDays: 1,
    needsHeat: true,
    servedCold: true,
    travels: true,
    main: 1,
    maxUses: 2,
    dislikeMinor: 0,
    energyKj: 2000,
    components: [5, 1],
  },
  {
    id: "cold-peas",
    makings: [{ food: PEAS, massG: 100 }],
    handsOn: { fixed: 3, perPortion: 0.5 },
    elapsed: { fixed: 5, perPortion: 0 },
    keepsDays: 0,
    needsHeat: false,
    servedCold: true,
    travels: true,
    main: 2,
    maxUses: 2,
    dislikeMinor: 7,
    energyKj: 1500,
    components: [6, 0.5],
  },
];

function sitting(period: number, minutes: number, rest: Partial<MenuSitting> = {}): MenuSitting {
  const day = Math.floor(period / 2);
  const evening = period % 2 === 1;
  return { day, period, portions: 2, minutes, heat: true, packed: false, dishes: [0, 1, 2], variety: evening, ...rest };
}

const sittings: MenuSitting[] = [
  sitting(0, 24),
  sitting(1, 38),
  sitting(2, 0, { heat: false, packed: true }),
  sitting(3, 5),
  sitting(4, 5, { heat: false }),
  sitting(5, 0),
];

const lots: MenuLot[] = [
  { food: BARLEY, massG: 100, opened: true, lastDay: LASTS, mustUse: false },
  { food: MILK, massG: 300, opened: true, lastDay: 0, mustUse: true },
  { food: PEAS, massG: 250, opened: false, lastDay: 20, mustUse: false },
];

const packs: MenuPack[] = [
  {
    food: BARLEY,
    shop: 0,
    massG: 500,
    priceMinor: 120,
    limit: 1,
    fromDay: 0,
    toDay: 0,
    offer: { count: 2, priceMinor: 200 },
  },
  { food: MILK, shop: 0, massG: 1000, priceMinor: 90, limit: 1, fromDay: 0, toDay: 2 },
  { food: PEAS, shop: 1, massG: 300, priceMinor: 130, limit: 2, fromDay: 1, toDay: 1, unopenedDays: 1 },
];

const trips: MenuTrip[] = [
  { shop: 0, day: 0, period: 0, costMinor: 50, minutes: 20, carryG: 1500 },
  { shop: 1, day: 1, period: 3, costMinor: 30, minutes: 15, carryG: 600 },
  { shop: 0, day: 2, period: 4, costMinor: 50, minutes: 20 },
];

function bound(component: number, kind: MenuBound["kind"], amount: number, hard: boolean): MenuBound {
  return { component, kind, amount, hard };
}

/** Three days in which every limit is met to the last gram, minute and coin by `tinyPlan`. */
export const tinyProblem: MenuProblem = {
  days: 3,
  periodDay: [0, 0, 1, 1, 2, 2],
  foods,
  dishes,
  sittings,
  lots,
  packs,
  shopCount: 2,
  trips,
  components: ["fibre", "salt"],
  profiles: [
    {
      eaters: 1,
      sittings: [0, 1, 2, 3, 4, 5],
      energyKj: [5000 / 1.1, 3500 / 0.9, 4500],
      bounds: [bound(0, "at-least", 38, true), bound(1, "at-most", 7, true), bound(0, "at-least", 40, false)],
    },
    {
      eaters: 2,
      sittings: [1, 3, 5],
      energyKj: [3000, 1500, 0],
      bounds: [bound(1, "at-most", 3.6, false), bound(0, "at-least", 20, false)],
    },
  ],
  limits: {
    budgetMinor: 550,
    handsOnMinutes: [27, 6, 6],
    energyTolerance: 0.1,
    distinct: 2,
    mainMax: 2,
    batchPortions: 4,
    maxTrips: 2,
    fridgeLitres: 1.3,
    freezerLitres: 1.22,
  },
  worth: {
    minuteMinor: 3,
    leftoverMinutes: 2,
    shortfallFirstMinor: 400,
    shortfallRestMinor: 1200,
    shortfallKnee: 0.1,
  },
};

/** A plan for `tinyProblem` without a fault. */
export const tinyPlan: MenuPlan = {
  batches: [
    { dish: 1, sittings: [0, 2] },
    { dish: 0, sittings: [1, 5] },
    { dish: 2, sittings: [3] },
    { dish: 2, sittings: [4] },
  ],
  trips: [0, 1],
  purchases: [
    { trip: 0, pack: 0, count: 1 },
    { trip: 0, pack: 1, count: 1 },
    { trip: 1, pack: 2, count: 2 },
  ],
  uses: [
    { lot: { stock: 0 }, batch: 0, massG: 100 },
    { lot: { purchase: 0, copy: 0 }, batch: 0, massG: 100 },
    { lot: { stock: 1 }, batch: 0, massG: 300 },
    { lot: { purchase: 1, copy: 0 }, batch: 0, massG: 500 },
    { lot: { purchase: 0, copy: 0 }, batch: 1, massG: 320 },
    { lot: { stock: 2 }, batch: 1, massG: 240 },
    { lot: { purchase: 2, copy: 0 }, batch: 2, massG: 200 },
    { lot: { purchase: 2, copy: 0 }, batch: 3, massG: 100 },
    { lot: { purchase: 2, copy: 1 }, batch: 3, massG: 100 },
  ],
};

/** A copy of a list with some fields of one element changed. */
export function alter<Item>(list: readonly Item[], at: number, changes: Partial<Item>): Item[] {
  return list.map((item, position) => (position === at ? { ...item, ...changes } : item));
}
