import type { MenuDish, MenuProblem, MenuSitting, MenuWish } from "../problem.ts";

const LASTS = 99;
const NO_MINUTES = { fixed: 0, perPortion: 0 };

/** Four days of one sitting and four dishes of a food each, the later the dearer; what is wished decides. */
export function wishedWeek(wishes: readonly MenuWish[], prices: readonly number[] = [100, 130, 170, 220]): MenuProblem {
  const dishes = prices.map((_, main): MenuDish => {
    return {
      id: `dish-${main}`,
      makings: [{ food: main, massG: 100 }],
      handsOn: NO_MINUTES,
      elapsed: NO_MINUTES,
      keepsDays: 0,
      needsHeat: false,
      servedCold: true,
      travels: true,
      main,
      maxUses: 4,
      dislikeMinor: 0,
      energyKj: 0,
      components: [],
    };
  });
  return {
    days: 4,
    periodDay: [0, 1, 2, 3],
    foods: dishes.map(({ id }) => ({
      id,
      openedDays: LASTS,
      unopenedDays: LASTS,
      creditMinorPerG: 0,
      creditOpenedMinorPerG: 0,
      wasteMinorPerG: 0,
    })),
    dishes,
    sittings: [0, 1, 2, 3].map((day): MenuSitting => {
      return {
        day,
        period: day,
        portions: 1,
        minutes: 9,
        heat: true,
        packed: false,
        dishes: [0, 1, 2, 3],
        variety: true,
      };
    }),
    lots: [],
    packs: prices.map((priceMinor, food) => {
      return { food, shop: 0, massG: 100, priceMinor, limit: 4, fromDay: 0, toDay: 3 };
    }),
    shopCount: 1,
    trips: [{ shop: 0, day: 0, period: 0, costMinor: 0, minutes: 0 }],
    components: [],
    profiles: [],
    limits: {
      handsOnMinutes: [9, 9, 9, 9],
      energyTolerance: 1,
      distinct: 0,
      mainMax: 4,
      batchPortions: 1,
      maxTrips: 1,
    },
    worth: { minuteMinor: 0, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
    wishes,
  };
}
