import type {
  MenuDish,
  MenuFood,
  MenuLot,
  MenuPack,
  MenuProblem,
  MenuProfile,
  MenuSitting,
  MenuTrip,
} from "halfloaf/menu";
import { createRandomSource } from "halfloaf/quantity";

/** Sizes of the seeded kitchens: dishes and foods. */
const SIZES = { S: [60, 60], M: [150, 150], L: [400, 250] } as const;
export type Size = keyof typeof SIZES;

/** Components bounded over the week, after energy; the first six in g or mg, the rest in percent of a day's reference. */
const COMPONENTS = [
  "protein",
  "fat",
  "saturates",
  "fibre",
  "sugars",
  "sodium",
  "calcium",
  "iron",
  "magnesium",
  "potassium",
  "zinc",
  "vitaminA",
  "vitaminC",
  "vitaminD",
  "vitaminE",
  "vitaminK",
  "thiamin",
  "riboflavin",
  "niacin",
  "vitaminB6",
  "folate",
];
const AT_MOST = new Set(["fat", "saturates", "sugars", "sodium"]);
const LASTS = 9999;

/** A kind of food: per 100 g kJ and components, cents a kg, pack sizes, days unopened and opened, share of all foods. */
interface Kind {
  readonly name: string;
  readonly share: number;
  readonly energyKj: number;
  readonly components: readonly number[];
  readonly centsPerKg: readonly [number, number];
  readonly packsG: readonly number[];
  readonly unopened: readonly [number, number];
  readonly opened: readonly [number, number];
}

function kind(
  name: string,
  share: number,
  energyKj: number,
  components: number[],
  centsPerKg: [number, number],
  packsG: number[],
  unopened: [number, number] = [LASTS, LASTS],
  opened: [number, number] = unopened,
): Kind {
  return { name, share, energyKj, components, centsPerKg, packsG, unopened, opened };
}

// Ranges are invented round figures for foods of these kinds, for benchmarks only.
const KINDS: readonly Kind[] = [
  kind(
    "grain",
    10,
    1480,
    [11, 2, 0.4, 7, 2, 6, 2, 14, 26, 6, 15, 0, 0, 0, 4, 3, 26, 7, 24, 12, 11],
    [110, 330],
    [500, 1000, 2000],
  ),
  kind(
    "bread",
    4,
    1070,
    [9, 3, 0.6, 6, 4, 450, 8, 16, 12, 5, 8, 0, 0, 0, 2, 2, 24, 12, 22, 6, 12],
    [240, 460],
    [400, 800],
    [5, 7],
    [4, 5],
  ),
  kind(
    "pulse",
    9,
    470,
    [8, 1, 0.2, 7, 1, 180, 4, 13, 9, 9, 8, 0, 1, 0, 3, 4, 9, 4, 4, 6, 20],
    [170, 310],
    [240, 480],
    [LASTS, LASTS],
    [2, 3],
  ),
  kind(
    "leaf",
    6,
    105,
    [2.4, 0.4, 0.1, 2.4, 1.2, 45, 7, 9, 9, 11, 3, 42, 44, 0, 9, 150, 6, 9, 4, 9, 26],
    [380, 920],
    [100, 200, 300],
    [4, 6],
    [2, 3],
  ),
  kind(
    "vegetable",
    17,
    165,
    [1.5, 0.3, 0.1, 2.6, 4, 20, 3, 3, 4, 8, 2, 26, 34, 0, 4, 12, 5, 4, 5, 9, 9],
    [110, 460],
    [150, 500, 1000],
    [6, 14],
    [3, 8],
  ),
  kind(
    "frozen",
    5,
    250,
    [3.4, 0.5, 0.1, 3.8, 3, 35, 4, 6, 6, 6, 4, 26, 24, 0, 4, 20, 9, 6, 6, 7, 15],
    [180, 330],
    [450, 900],
  ),
  kind(
    "fruit",
    9,
    240,
    [0.8, 0.3, 0.1, 2.4, 11, 2, 1, 2, 4, 6, 1, 2, 31, 0, 3, 4, 3, 3, 3, 8, 4],
    [170, 560],
    [150, 500, 1000],
    [5, 11],
    [3, 7],
  ),
  kind(
    "meat",
    6,
    750,
    [20, 11, 3.8, 0, 0, 70, 1, 8, 6, 9, 26, 1, 0, 2, 2, 0, 15, 14, 40, 28, 2],
    [500, 1250],
    [250, 450, 900],
    [2, 3],
    [1, 2],
  ),
  kind(
    "fish",
    4,
    620,
    [20, 7, 1.5, 0, 0, 85, 3, 4, 8, 10, 5, 3, 1, 40, 8, 0, 10, 8, 42, 30, 4],
    [700, 1400],
    [200, 360],
    [2, 2],
    [1, 1],
  ),
  kind(
    "milk",
    6,
    250,
    [4, 2.4, 1.5, 0, 5, 45, 12, 0, 3, 5, 4, 4, 0, 8, 0, 0, 3, 13, 1, 3, 1],
    [90, 290],
    [500, 1000, 2000],
    [7, 12],
    [3, 5],
  ),
  kind(
    "cheese",
    4,
    1450,
    [24, 28, 17, 0, 0.5, 650, 60, 2, 6, 2, 25, 20, 0, 3, 2, 2, 2, 20, 1, 4, 5],
    [700, 1250],
    [150, 250, 400],
    [20, 40],
    [5, 10],
  ),
  kind(
    "egg",
    1,
    610,
    [12.5, 10, 3.1, 0, 0.4, 140, 5, 9, 3, 4, 11, 18, 0, 10, 7, 0, 3, 28, 1, 9, 11],
    [310, 520],
    [360, 720],
    [21, 28],
    [21, 28],
  ),
  kind("oil", 3, 3690, [0, 99, 13, 0, 0, 1, 0, 1, 0, 0, 0, 1, 0, 0, 50, 20, 0, 0, 0, 0, 0], [380, 920], [500, 1000]),
  kind(
    "sauce",
    8,
    250,
    [1.8, 1.5, 0.3, 1.8, 6, 420, 2, 5, 5, 9, 2, 8, 12, 0, 8, 4, 4, 4, 8, 8, 4],
    [190, 610],
    [200, 400, 700],
    [LASTS, LASTS],
    [4, 12],
  ),
  kind(
    "spice",
    8,
    1180,
    [10, 8, 1.5, 22, 5, 800, 60, 90, 40, 30, 20, 30, 10, 0, 20, 60, 15, 15, 15, 20, 15],
    [2400, 6000],
    [30, 60],
  ),
  kind(
    "nut",
    4,
    2470,
    [20, 50, 6, 8, 5, 8, 8, 18, 45, 14, 25, 0, 1, 0, 60, 5, 20, 12, 25, 20, 15],
    [680, 1450],
    [150, 300, 500],
  ),
  kind(
    "sweet",
    4,
    1340,
    [0.5, 0.2, 0, 0.5, 70, 10, 1, 2, 1, 1, 1, 0, 2, 0, 0, 0, 0, 1, 0, 0, 0],
    [190, 620],
    [250, 500],
  ),
  kind(
    "tofu",
    3,
    520,
    [13, 7.5, 1.1, 1, 0.5, 10, 28, 15, 12, 4, 10, 0, 0, 0, 1, 2, 7, 4, 2, 4, 6],
    [440, 710],
    [280, 400],
    [14, 20],
    [2, 3],
  ),
];

interface Draw {
  (): number;
  between(low: number, high: number): number;
  whole(low: number, high: number): number;
  pick<T>(list: readonly T[]): T;
  around(spread: number): number;
}

function createDraw(seed: number): Draw {
  const next = createRandomSource(seed);
  return Object.assign(() => next(), {
    between: (low: number, high: number) => low + (high - low) * next(),
    whole: (low: number, high: number) => Math.floor(low + (high - low + 1) * next()),
    pick: <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T,
    around: (spread: number) => Math.exp(spread * 1.7 * (next() + next() + next() + next() - 2)),
  });
}

interface BenchFood {
  readonly kind: Kind;
  readonly menu: MenuFood;
  readonly energyKjPerG: number;
  readonly componentsPerG: readonly number[];
  readonly packs: readonly { massG: number; priceMinor: number }[];
}

function drawFood(draw: Draw, of: Kind, index: number): BenchFood {
  const perG = draw.between(of.centsPerKg[0], of.centsPerKg[1]) / 1000;
  const sizes = of.packsG.filter(() => draw() < 0.75);
  const chosen = sizes.length > 0 ? sizes : [of.packsG[of.packsG.length - 1] as number];
  const middle = of.packsG[Math.min(1, of.packsG.length - 1)] as number;
  const packs = chosen.map((massG) => ({
    massG,
    priceMinor: Math.max(15, Math.round(perG * massG * (massG / middle) ** -0.2)),
  }));
  const largest = packs[packs.length - 1] as { massG: number; priceMinor: number };
  const unit = largest.priceMinor / largest.massG;
  const unopenedDays = draw.whole(of.unopened[0], of.unopened[1]);
  const menu: MenuFood = {
    id: `${of.name}-${index}`,
    unopenedDays,
    openedDays: Math.min(unopenedDays, draw.whole(of.opened[0], of.opened[1])),
    creditMinorPerG: 0.9 * unit,
    creditOpenedMinorPerG: 0,
    wasteMinorPerG: 0.3 * unit,
  };
  const componentsPerG = of.components.map((x, j) => (x * draw.around(j < 6 ? 0.12 : 0.45)) / 100);
  return { kind: of, menu, energyKjPerG: (of.energyKj * draw.around(0.08)) / 100, componentsPerG, packs };
}

function drawFoods(draw: Draw, count: number): BenchFood[] {
  const total = KINDS.reduce((sum, of) => sum + of.share, 0);
  const list: Kind[] = KINDS.flatMap((of) => Array<Kind>(Math.max(1, Math.round((of.share / total) * count))).fill(of));
  while (list.length < count) list.push(draw.pick(KINDS));
  while (list.length > count) list.splice(draw.whole(0, list.length - 1), 1);
  return list.map((of, index) => drawFood(draw, of, index));
}

/** Makings of a shape of dish: kinds with their grams, each with a chance of being there. */
type Shape = readonly (readonly [kinds: string, low: number, high: number, chance: number])[];
const MORNING: readonly Shape[] = [
  [
    ["grain bread", 50, 80, 1],
    ["milk", 120, 220, 1],
    ["fruit", 80, 140, 1],
    ["nut", 8, 22, 1],
    ["sweet", 8, 18, 1],
    ["spice", 0.5, 1.5, 0.4],
  ],
  [
    ["egg", 100, 120, 1],
    ["bread", 70, 100, 1],
    ["vegetable", 60, 100, 1],
    ["oil", 5, 8, 1],
    ["cheese", 15, 30, 0.6],
    ["leaf", 20, 40, 0.5],
  ],
];
const BETWEEN: readonly Shape[] = [
  [
    ["fruit", 120, 180, 1],
    ["nut", 12, 25, 1],
    ["milk", 80, 140, 0.7],
    ["sweet", 5, 10, 0.4],
  ],
  [
    ["bread", 50, 70, 1],
    ["cheese", 15, 30, 1],
    ["vegetable", 60, 100, 1],
    ["sauce", 10, 20, 0.4],
  ],
  [
    ["pulse", 70, 110, 1],
    ["vegetable", 70, 100, 1],
    ["bread", 25, 50, 1],
    ["oil", 4, 7, 1],
    ["spice", 0.5, 1, 1],
  ],
];
const MAINS = ["meat", "meat", "meat", "fish", "pulse", "pulse", "pulse", "egg", "tofu", "cheese"];

function plateShape(draw: Draw): Shape {
  const main = draw.pick(MAINS);
  const grams: readonly [number, number] = main === "cheese" ? [50, 70] : main === "pulse" ? [120, 180] : [90, 140];
  return [
    [main, grams[0], grams[1], 1],
    [draw() < 0.8 ? "grain" : "bread", 70, 100, 1],
    ["vegetable", 70, 140, 1],
    ["vegetable", 70, 140, 0.65],
    ["vegetable", 60, 120, 0.3],
    ["leaf", 40, 70, 0.5],
    ["frozen", 60, 100, 0.35],
    ["oil", 8, 14, 1],
    ["sauce", 40, 80, 0.8],
    ["spice", 0.7, 2, 1],
    ["spice", 0.7, 2, 0.5],
    ["cheese", 15, 25, 0.12],
  ];
}

interface DishPlan {
  readonly kinds: readonly number[];
  readonly energyKj: number;
  readonly minutes: number;
  readonly keepsDays: number;
  readonly maxUses: number;
}

/** Builds one dish of a shape, scaled to its energy; popular foods of a kind are drawn more often. */
function drawDish(
  draw: Draw,
  foods: readonly BenchFood[],
  shape: Shape,
  plan: DishPlan,
  index: number,
): MenuDish & { kinds: readonly number[] } {
  const taken = new Map<number, number>();
  let main = -1;
  for (const [kinds, low, high, chance] of shape) {
    if (draw() >= chance) continue;
    const wanted = draw.pick(kinds.split(" "));
    const pool = foods.flatMap((food, f) => (food.kind.name === wanted && !taken.has(f) ? [f] : []));
    if (pool.length === 0) continue;
    const food = pool[Math.floor(pool.length * draw() ** 1.6)] as number;
    taken.set(food, draw.between(low, high));
    if (main < 0) main = food;
  }
  const energy = [...taken].reduce((sum, [food, g]) => sum + (foods[food]?.energyKjPerG as number) * g, 0);
  const scale = plan.energyKj / energy;
  const makings = [...taken].map(([food, g]) => ({
    food,
    massG: foods[food]?.kind.name === "spice" ? g : Math.max(1, Math.round(g * scale)),
  }));
  const sum = (of: (food: BenchFood) => number): number =>
    makings.reduce((t, m) => t + of(foods[m.food] as BenchFood) * m.massG, 0);
  return {
    id: `dish-${index}`,
    kinds: plan.kinds,
    makings,
    main,
    maxUses: plan.maxUses,
    keepsDays: plan.keepsDays,
    handsOn: { fixed: 0.9 * plan.minutes, perPortion: 0.1 * plan.minutes },
    elapsed: { fixed: plan.minutes, perPortion: 0 },
    needsHeat: false,
    servedCold: true,
    travels: true,
    dislikeMinor: 8 * (10 - Math.round(10 * draw.between(2, 10)) / 10),
    energyKj: sum((food) => food.energyKjPerG),
    components: COMPONENTS.map((_, j) => sum((food) => food.componentsPerG[j] as number)),
  };
}

const CAPS = [15, 30, 10, 40];

function drawDishes(
  draw: Draw,
  foods: readonly BenchFood[],
  count: number,
): (MenuDish & { kinds: readonly number[] })[] {
  const mornings = Math.max(8, Math.round(0.2 * count));
  const middays = Math.round(0.2 * count);
  const betweens = Math.max(8, Math.round(0.18 * count));
  return Array.from({ length: count }, (_, index) => {
    if (index < mornings) {
      const plan = {
        kinds: draw() < 0.2 ? [0, 2] : [0],
        energyKj: 1800 * draw.between(0.87, 1.15),
        minutes: draw.whole(4, 14),
        keepsDays: draw.pick([0, 0, 1, 2]),
        maxUses: 4,
      };
      return drawDish(draw, foods, draw.pick(MORNING), plan, index);
    }
    if (index < mornings + betweens) {
      const plan = {
        kinds: [2],
        energyKj: 960 * draw.between(0.8, 1.2),
        minutes: draw.whole(2, 9),
        keepsDays: draw.pick([0, 1, 2, 3]),
        maxUses: 4,
      };
      return drawDish(draw, foods, draw.pick(BETWEEN), plan, index);
    }
    const midday = index < mornings + betweens + middays;
    const kinds = midday ? (draw() < 0.35 ? [1, 3] : [1]) : draw() < 0.55 ? [1, 3] : [3];
    const plan = {
      kinds,
      energyKj: (midday ? 2680 : 3100) * draw.between(0.87, 1.13),
      minutes: midday ? draw.whole(8, 26) : draw.whole(12, 38),
      keepsDays: draw.pick([0, 1, 1, 2, 2, 3]),
      maxUses: draw() < 0.6 ? 3 : 2,
    };
    return drawDish(draw, foods, plateShape(draw), plan, index);
  });
}

function boundsFor(dishes: readonly MenuDish[], needKj: number): MenuProfile["bounds"] {
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
      amount: density * needKj * 7,
      hard: false,
    };
  });
}

/**
 * A seeded week for benchmarks: 7 days of 4 sittings, one shop on two days, `eaters` who all eat everything.
 * The same seed gives the same problem on every machine.
 */
export function generateProblem(
  size: Size | readonly [number, number],
  seed: number,
  eaters = [1, 2, 1, 3, 4, 2, 1][(seed - 1) % 7] as number,
): MenuProblem {
  const [dishCount, foodCount] = typeof size === "string" ? SIZES[size] : size;
  const draw = createDraw(seed * 7919 + dishCount * 31 + foodCount);
  const foods = drawFoods(draw, foodCount);
  const dishes = drawDishes(draw, foods, dishCount);
  const needKj = 8400 + 420 * draw.whole(0, 3);
  const sittings: MenuSitting[] = Array.from({ length: 28 }, (_, k) => ({
    day: k >> 2,
    period: k >> 2,
    portions: eaters,
    minutes: CAPS[k & 3] as number,
    heat: true,
    packed: false,
    dishes: dishes.flatMap((dish, r) => (dish.kinds.includes(k & 3) ? [r] : [])),
    variety: (k & 3) === 3,
  }));
  const packs: MenuPack[] = foods.flatMap((food, f) =>
    food.packs.map((pack) => ({ food: f, shop: 0, ...pack, limit: LASTS, fromDay: 0, toDay: 6 })),
  );
  const lots: MenuLot[] = foods.flatMap((food, f) => {
    const lasting = food.menu.openedDays >= 7;
    if (draw() >= (lasting ? 0.4 : 0.1)) return [];
    const massG = Math.round((food.packs[0]?.massG as number) * draw.between(0.2, 0.95));
    return [{ food: f, massG, opened: true, lastDay: lasting ? LASTS : draw.whole(0, 3), mustUse: false }];
  });
  const trips: MenuTrip[] = [0, draw() < 0.5 ? 3 : 4].map((day) => ({
    shop: 0,
    day,
    period: day,
    costMinor: 0,
    minutes: 0,
  }));
  return {
    days: 7,
    periodDay: [0, 1, 2, 3, 4, 5, 6],
    foods: foods.map((food) => food.menu),
    dishes: dishes.map(({ kinds: _, ...dish }) => dish),
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
        energyKj: Array(7).fill(needKj),
        bounds: boundsFor(dishes, needKj),
      },
    ],
    limits: {
      budgetMinor: Math.round(100 * (46 * eaters ** 0.85 + 30)),
      handsOnMinutes: [60, 60, 60, 60, 60, 90, 90],
      energyTolerance: 0.1,
      distinct: 5,
      mainMax: 3,
      batchPortions: 4 * eaters,
      maxTrips: 2,
    },
    worth: {
      minuteMinor: 5,
      leftoverMinutes: 2,
      shortfallFirstMinor: 400,
      shortfallRestMinor: 1200,
      shortfallKnee: 0.1,
    },
  };
}
