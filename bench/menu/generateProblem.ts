import type { MenuDish, MenuLot, MenuPack, MenuProblem, MenuProfile, MenuSitting, MenuTrip } from "halfloaf/menu";
import { createDraw, type Draw } from "./Draw.ts";
import { type BenchDish, drawDishes } from "./drawDishes.ts";
import { type BenchFood, drawFoods } from "./drawFoods.ts";
import { AT_MOST, COMPONENTS, LASTS } from "./foodKinds.ts";

/** Sizes of the seeded kitchens: dishes and foods. */
const SIZES = { S: [60, 60], M: [150, 150], L: [400, 250] } as const;
export type Size = keyof typeof SIZES;

/** What a seeded problem may differ in from the week of its size. */
export interface ProblemOptions {
  /** Eaters who all eat everything; absent = 1 to 4 by seed. */
  readonly eaters?: number;
  /** Days to plan; absent = 7. Budget, repeats and variety grow with the weeks begun. */
  readonly days?: number;
}

const WEEK = 7;
/** Most minutes at the stove for each sitting of a day, and most hands-on minutes for each day of a week. */
const CAPS = [15, 30, 10, 40];
const DAY_MINUTES = [60, 60, 60, 60, 60, 90, 90];

/**
 * Seeded days for benchmarks, seven unless told: 4 sittings a day, one shop on two days of each week. The same seed gives
 * the same problem on every machine.
 */
export function generateProblem(
  size: Size | readonly [number, number],
  seed: number,
  { eaters = [1, 2, 1, 3, 4, 2, 1][(seed - 1) % 7] as number, days = WEEK }: ProblemOptions = {},
): MenuProblem {
  const [dishCount, foodCount] = typeof size === "string" ? SIZES[size] : size;
  const draw = createDraw(seed * 7919 + dishCount * 31 + foodCount);
  const weeks = Math.ceil(days / WEEK);
  const foods = drawFoods(draw, foodCount);
  const dishes = drawDishes(draw, foods, dishCount);
  const needKj = 8400 + 420 * draw.whole(0, 3);
  const sittings = layOutSittings(dishes, days, eaters);
  const packs: MenuPack[] = foods.flatMap((food, f) =>
    food.packs.map((pack) => ({ food: f, shop: 0, ...pack, limit: LASTS, fromDay: 0, toDay: days - 1 })),
  );
  const lots = drawLots(draw, foods);
  const trips = drawTrips(draw, days);
  return {
    days,
    periodDay: Array.from({ length: days }, (_, day) => day),
    foods: foods.map((food) => food.menu),
    dishes: dishes.map(({ kinds: _, ...dish }) => ({ ...dish, maxUses: dish.maxUses * weeks })),
    sittings,
    lots,
    packs,
    shopCount: 1,
    trips,
    components: COMPONENTS,
    profiles: [
      {
        eaters: 1,
        sittings: sittings.map((_, k) => k),
        energyKj: Array(days).fill(needKj),
        bounds: boundsFor(dishes, needKj, days),
      },
    ],
    limits: {
      budgetMinor: Math.round(100 * (46 * eaters ** 0.85 + 30)) * weeks,
      handsOnMinutes: Array.from({ length: days }, (_, day) => DAY_MINUTES[day % WEEK] as number),
      energyTolerance: 0.1,
      distinct: Math.min(5 * weeks, days),
      mainMax: 3 * weeks,
      batchPortions: 4 * eaters,
      maxTrips: Math.min(2 * weeks, trips.length),
    },
    worth: {
      minuteMinor: 5,
      leftoverMinutes: 2,
      shortfallFirstMinor: 400 * weeks,
      shortfallRestMinor: 1200 * weeks,
      shortfallKnee: 0.1,
    },
  };
}

function layOutSittings(dishes: readonly BenchDish[], days: number, portions: number): MenuSitting[] {
  return Array.from({ length: 4 * days }, (_, k) => ({
    day: k >> 2,
    period: k >> 2,
    portions,
    minutes: CAPS[k & 3] as number,
    heat: true,
    packed: false,
    dishes: dishes.flatMap((dish, r) => (dish.kinds.includes(k & 3) ? [r] : [])),
    variety: (k & 3) === 3,
  }));
}

function drawLots(draw: Draw, foods: readonly BenchFood[]): MenuLot[] {
  return foods.flatMap((food, f) => {
    const lasting = food.menu.openedDays >= 7;
    if (draw() >= (lasting ? 0.4 : 0.1)) return [];
    const massG = Math.round((food.packs[0]?.massG as number) * draw.between(0.2, 0.95));
    return [{ food: f, massG, opened: true, lastDay: lasting ? LASTS : draw.whole(0, 3), mustUse: false }];
  });
}

/** On the first and on one middle day of each week, the same one each week. */
function drawTrips(draw: Draw, days: number): MenuTrip[] {
  const middle = draw() < 0.5 ? 3 : 4;
  return Array.from({ length: days }, (_, day) => day)
    .filter((day) => day % WEEK === 0 || day % WEEK === middle)
    .map((day) => ({ shop: 0, day, period: day, costMinor: 0, minutes: 0 }));
}

function boundsFor(dishes: readonly MenuDish[], needKj: number, days: number): MenuProfile["bounds"] {
  return COMPONENTS.map((name, component) => {
    const densities = dishes
      .map((dish) => (dish.components[component] as number) / dish.energyKj)
      .sort((a, b) => a - b);
    const mean = densities.reduce((sum, x) => sum + x, 0) / densities.length;
    const atMost = AT_MOST.has(name);
    const at = densities[Math.floor((atMost ? 0.58 : component < 6 ? 0.45 : 0.5) * (densities.length - 1))] as number;
    const density = atMost ? Math.max(at, 0.95 * mean) : Math.min(Math.max(at, 0.75 * mean), 0.98 * mean);
    return {
      component,
      kind: atMost ? ("at-most" as const) : ("at-least" as const),
      amount: density * needKj * days,
      hard: false,
    };
  });
}
