import type { MenuDish, MenuProblem } from "halfloaf/menu";
import { ALLOWANCES, BY_UNIT_SOLD } from "./stigler1945.ts";

/** A food as it was sold. */
type SoldFood = (typeof BY_UNIT_SOLD)[number];

/** Days of the plan, and plates a day. */
export const DAYS = 28;
const PLATES_A_DAY = 4;
/** Money on a plate, in cents: a large one somewhat more than a quarter of the cheapest day, a small one for the rest. */
const PLATES_CENTS = [3, 1];
/** Grams stand for thousandths of the unit that a food was sold in. */
const UNIT_G = 1000;
const NO_LIMIT = 9999;
const NO_MINUTES = { fixed: 0, perPortion: 0 };

/**
 * Stigler's diet as a menu of 28 days for so many men: each plate holds one commodity or nothing, every commodity comes in
 * whole units as it was sold in, all keep, and what is left is worth nothing. All allowances are hard; money is the till
 * alone, in cents.
 */
export function stateWholePacks(men: number, foods: readonly SoldFood[] = BY_UNIT_SOLD): MenuProblem {
  const lasting = { openedDays: NO_LIMIT, unopenedDays: NO_LIMIT };
  const noCredit = { creditMinorPerG: 0, creditOpenedMinorPerG: 0, wasteMinorPerG: 0 };
  const dishes = foods.flatMap((sold, food) => PLATES_CENTS.map((cents) => plateOf(sold, food, cents)));
  const all = [EMPTY_PLATE, ...dishes];
  const sittings = Array.from({ length: DAYS * PLATES_A_DAY }, (_, k) => ({
    day: Math.floor(k / PLATES_A_DAY),
    period: Math.floor(k / PLATES_A_DAY),
    portions: men,
    minutes: NO_LIMIT,
    heat: true,
    packed: false,
    dishes: [...all.keys()],
    variety: false,
  }));
  return {
    days: DAYS,
    periodDay: Array.from({ length: DAYS }, (_, day) => day),
    foods: foods.map(({ name }) => ({ id: name, ...lasting, ...noCredit })),
    dishes: all,
    sittings,
    lots: [],
    packs: foods.map(({ pricePerUnit }, food) => ({
      food,
      shop: 0,
      massG: UNIT_G,
      priceMinor: 100 * pricePerUnit,
      limit: NO_LIMIT,
      fromDay: 0,
      toDay: DAYS - 1,
    })),
    shopCount: 1,
    trips: [{ shop: 0, day: 0, period: 0, costMinor: 0, minutes: 0 }],
    components: ALLOWANCES.map(({ nutrient }) => nutrient),
    profiles: [
      {
        eaters: 1,
        sittings: [...sittings.keys()],
        energyKj: Array(DAYS).fill(0),
        bounds: ALLOWANCES.map(({ least }, component) => ({
          component,
          kind: "at-least",
          amount: least * DAYS,
          hard: true,
        })),
      },
    ],
    limits: {
      handsOnMinutes: Array(DAYS).fill(NO_LIMIT),
      energyTolerance: 1,
      distinct: 0,
      mainMax: NO_LIMIT,
      batchPortions: men * PLATES_A_DAY,
      maxTrips: 1,
    },
    worth: { minuteMinor: 0, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
  };
}

const EMPTY_PLATE: MenuDish = {
  id: "nothing",
  makings: [],
  handsOn: NO_MINUTES,
  elapsed: NO_MINUTES,
  keepsDays: 0,
  needsHeat: false,
  servedCold: true,
  travels: true,
  main: -1,
  maxUses: NO_LIMIT,
  dislikeMinor: 0,
  energyKj: 0,
  components: ALLOWANCES.map(() => 0),
};

/** A plate of one commodity for so many cents. */
function plateOf({ name, pricePerUnit, amounts }: SoldFood, food: number, cents: number): MenuDish {
  const units = cents / (100 * pricePerUnit);
  return {
    ...EMPTY_PLATE,
    id: `${name} for ${cents}`,
    makings: [{ food, massG: units * UNIT_G }],
    main: food,
    components: ALLOWANCES.map(({ nutrient }) => (amounts[nutrient] as number) * units),
  };
}
