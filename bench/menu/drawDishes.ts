import type { MenuDish } from "halfloaf/menu";
import type { Draw } from "./Draw.ts";
import { BETWEEN, MORNING, plateShape, type Shape } from "./dishShapes.ts";
import type { BenchFood } from "./drawFoods.ts";
import { COMPONENTS } from "./foodKinds.ts";

/** A dish, and the sittings of a day that it is for. */
export type BenchDish = MenuDish & { readonly kinds: readonly number[] };

interface DishPlan {
  readonly kinds: readonly number[];
  readonly energyKj: number;
  readonly minutes: number;
  readonly keepsDays: number;
  readonly maxUses: number;
}

/** Builds one dish of a shape, scaled to its energy; popular foods of a kind are drawn more often. */
function drawDish(draw: Draw, foods: readonly BenchFood[], shape: Shape, plan: DishPlan, index: number): BenchDish {
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

/** So many dishes for mornings, between meals, middays and evenings, from the foods given. */
export function drawDishes(draw: Draw, foods: readonly BenchFood[], count: number): BenchDish[] {
  const mornings = Math.max(8, Math.round(0.2 * count));
  const middays = Math.round(0.2 * count);
  const betweens = Math.max(8, Math.round(0.18 * count));
  return Array.from({ length: count }, (_, index) => {
    if (index < mornings) {
      const plan = planMorning(draw);
      return drawDish(draw, foods, draw.pick(MORNING), plan, index);
    }
    if (index < mornings + betweens) {
      const plan = planBetween(draw);
      return drawDish(draw, foods, draw.pick(BETWEEN), plan, index);
    }
    const plan = planPlate(draw, index < mornings + betweens + middays);
    return drawDish(draw, foods, plateShape(draw), plan, index);
  });
}

function planMorning(draw: Draw): DishPlan {
  return {
    kinds: draw() < 0.2 ? [0, 2] : [0],
    energyKj: 1800 * draw.between(0.87, 1.15),
    minutes: draw.whole(4, 14),
    keepsDays: draw.pick([0, 0, 1, 2]),
    maxUses: 4,
  };
}

function planBetween(draw: Draw): DishPlan {
  return {
    kinds: [2],
    energyKj: 960 * draw.between(0.8, 1.2),
    minutes: draw.whole(2, 9),
    keepsDays: draw.pick([0, 1, 2, 3]),
    maxUses: 4,
  };
}

function planPlate(draw: Draw, midday: boolean): DishPlan {
  return {
    kinds: midday ? (draw() < 0.35 ? [1, 3] : [1]) : draw() < 0.55 ? [1, 3] : [3],
    energyKj: (midday ? 2680 : 3100) * draw.between(0.87, 1.13),
    minutes: midday ? draw.whole(8, 26) : draw.whole(12, 38),
    keepsDays: draw.pick([0, 1, 1, 2, 2, 3]),
    maxUses: draw() < 0.6 ? 3 : 2,
  };
}
