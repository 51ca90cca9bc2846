import type { MenuDish, MenuFood, MenuPack, MenuProblem } from "../problem.ts";

const LASTS = 9999;

function food(id: string, openedDays: number): MenuFood {
  const lasts = openedDays >= 4;
  return {
    id,
    openedDays: lasts ? LASTS : openedDays,
    unopenedDays: lasts ? LASTS : 9,
    creditMinorPerG: 0,
    creditOpenedMinorPerG: 0,
    wasteMinorPerG: 0,
  };
}

function dish(id: string, makings: MenuDish["makings"], minutes: number, main: number): MenuDish {
  return {
    id,
    makings,
    handsOn: { fixed: minutes, perPortion: 0 },
    elapsed: { fixed: minutes, perPortion: 0 },
    keepsDays: 0,
    needsHeat: false,
    servedCold: true,
    travels: true,
    main,
    maxUses: 2,
    dislikeMinor: 0,
    energyKj: 2000,
    components: [],
  };
}

const packs: MenuPack[] = [
  // Leeks keep one day once opened: a small pack for one pot, a large one for two.
  { food: 0, shop: 0, massG: 200, priceMinor: 150, limit: LASTS, fromDay: 0, toDay: 3 },
  { food: 0, shop: 0, massG: 500, priceMinor: 250, limit: LASTS, fromDay: 0, toDay: 3 },
  { food: 1, shop: 0, massG: 1000, priceMinor: 400, limit: LASTS, fromDay: 0, toDay: 3 },
  { food: 2, shop: 0, massG: 100, priceMinor: 80, limit: LASTS, fromDay: 0, toDay: 3 },
];

/**
 * Four evenings for one, small enough to know the answers by heart: two dishes of leeks, which share a pack only on
 * two days in a row, one of rice at 400 a kilogram pack, and bread at 80 an evening.
 */
export const soupWeek: MenuProblem = {
  days: 4,
  periodDay: [0, 1, 2, 3],
  foods: [food("leek", 1), food("rice", 9), food("bread", 0)],
  dishes: [
    dish("leek-soup", [{ food: 0, massG: 200 }], 20, 0),
    dish("leek-pie", [{ food: 0, massG: 200 }], 40, 0),
    dish("rice-pot", [{ food: 1, massG: 100 }], 15, 1),
    dish("bread-plate", [{ food: 2, massG: 100 }], 5, 2),
  ],
  sittings: [0, 1, 2, 3].map((day) => ({
    day,
    period: day,
    portions: 1,
    minutes: 45,
    heat: true,
    packed: false,
    dishes: [0, 1, 2, 3],
    variety: true,
  })),
  lots: [],
  packs,
  shopCount: 1,
  trips: [{ shop: 0, day: 0, period: 0, costMinor: 0, minutes: 0 }],
  components: [],
  profiles: [],
  limits: {
    handsOnMinutes: [60, 60, 60, 60],
    energyTolerance: 0.1,
    distinct: 2,
    mainMax: 4,
    batchPortions: 1,
    maxTrips: 1,
  },
  worth: {
    minuteMinor: 0,
    leftoverMinutes: 0,
    shortfallFirstMinor: 0,
    shortfallRestMinor: 0,
    shortfallKnee: 0.1,
  },
};
