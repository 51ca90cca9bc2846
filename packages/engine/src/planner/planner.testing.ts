import type { MenuProblem } from "halfloaf/menu";
import { createRandomSource } from "halfloaf/quantity";
import { Planner, type PlannerOptions } from "./Planner.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";
import { startNodeWorker } from "./startNodePlanner.ts";

/** Three days of one sitting; two dishes of one food each. */
export const PROBLEM: MenuProblem = {
  days: 3,
  periodDay: [0, 1, 2],
  foods: ["beans", "rice"].map((id) => ({
    id,
    openedDays: 1,
    unopenedDays: 9,
    creditMinorPerG: 0.1,
    creditOpenedMinorPerG: 0.1,
    wasteMinorPerG: 0.1,
  })),
  dishes: [0, 1].map((food) => ({
    id: `dish-${food}`,
    makings: [{ food, massG: 150 }],
    handsOn: { fixed: 5, perPortion: 1 },
    elapsed: { fixed: 10, perPortion: 1 },
    keepsDays: 1,
    needsHeat: false,
    servedCold: true,
    travels: true,
    main: food,
    maxUses: 3,
    dislikeMinor: 0,
    energyKj: 2000,
    components: [],
  })),
  sittings: [0, 1, 2].map((day) => ({
    day,
    period: day,
    portions: 1,
    minutes: 30,
    heat: true,
    packed: false,
    dishes: [0, 1],
    variety: true,
  })),
  lots: [],
  packs: [0, 1].map((food) => ({
    food,
    shop: 0,
    massG: 400,
    priceMinor: 90 + food,
    limit: 9999,
    fromDay: 0,
    toDay: 2,
  })),
  shopCount: 1,
  trips: [{ shop: 0, day: 0, period: 0, costMinor: 0, minutes: 0 }],
  components: [],
  profiles: [{ eaters: 1, sittings: [0, 1, 2], energyKj: [2000, 2000, 2000], bounds: [] }],
  limits: {
    handsOnMinutes: [60, 60, 60],
    energyTolerance: 0.1,
    distinct: 1,
    mainMax: 3,
    batchPortions: 3,
    maxTrips: 1,
  },
  worth: { minuteMinor: 1, leftoverMinutes: 2, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
};

/** More moves than any test waits for. */
export const ENDLESS = 1e9;

/** Seven days of two sittings and thirty dishes of three foods each, whose packs spoil: searches of some hundred moves differ. */
export function drawWeek(seed: number): MenuProblem {
  const random = createRandomSource(seed);
  const pick = (count: number): number => Math.floor(random() * count);
  const [food] = PROBLEM.foods as [MenuProblem["foods"][number]];
  const [dish] = PROBLEM.dishes as [MenuProblem["dishes"][number]];
  const [pack] = PROBLEM.packs as [MenuProblem["packs"][number]];
  const days = [0, 1, 2, 3, 4, 5, 6];
  const foods = Array.from({ length: 20 }, (_, at) => ({ ...food, id: `food-${at}`, openedDays: 2 }));
  const dishes = Array.from({ length: 30 }, (_, at) => {
    const main = pick(foods.length);
    const makings = [...new Set([main, pick(foods.length), pick(foods.length)])].map((each) => ({
      food: each,
      massG: 40 + 10 * pick(20),
    }));
    return { ...dish, id: `dish-${at}`, makings, main, maxUses: 2 };
  });
  const sittings = days.flatMap((day) =>
    [0, 1].map((half) => ({
      ...(PROBLEM.sittings[0] as MenuProblem["sittings"][number]),
      day,
      period: 2 * day + half,
      dishes: dishes.map((_, at) => at),
    })),
  );
  return {
    ...PROBLEM,
    days: days.length,
    periodDay: days.flatMap((day) => [day, day]),
    foods,
    dishes,
    sittings,
    packs: foods.map((_, at) => ({
      ...pack,
      food: at,
      massG: 200 + 50 * pick(8),
      priceMinor: 60 + pick(200),
      toDay: 6,
    })),
    trips: [0, 3].map((day) => ({ shop: 0, day, period: 2 * day, costMinor: 50, minutes: 0 })),
    profiles: [{ eaters: 1, sittings: sittings.map((_, k) => k), energyKj: days.map(() => 4000), bounds: [] }],
    limits: { ...PROBLEM.limits, handsOnMinutes: days.map(() => 60), maxTrips: 2, mainMax: 4 },
  };
}

/** A planner that counts the workers it starts. */
export function countWorkers(options: PlannerOptions, start: () => PlannerWorker = startNodeWorker) {
  const counted = { started: 0 };
  const planner = new Planner(() => {
    counted.started++;
    return start();
  }, options);
  return { planner, counted };
}
