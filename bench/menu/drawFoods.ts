import type { MenuFood } from "halfloaf/menu";
import type { Draw } from "./Draw.ts";
import { FOOD_KINDS, type FoodKind } from "./foodKinds.ts";

/** A food of a bench problem with what the problem itself does not say of it. */
export interface BenchFood {
  readonly kind: FoodKind;
  readonly menu: MenuFood;
  readonly energyKjPerG: number;
  readonly componentsPerG: readonly number[];
  readonly packs: readonly { massG: number; priceMinor: number }[];
}

function drawFood(draw: Draw, of: FoodKind, index: number): BenchFood {
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

/** So many foods, of every kind by its share. */
export function drawFoods(draw: Draw, count: number): BenchFood[] {
  const total = FOOD_KINDS.reduce((sum, of) => sum + of.share, 0);
  const list: FoodKind[] = FOOD_KINDS.flatMap((of) =>
    Array<FoodKind>(Math.max(1, Math.round((of.share / total) * count))).fill(of),
  );
  while (list.length < count) list.push(draw.pick(FOOD_KINDS));
  while (list.length > count) list.splice(draw.whole(0, list.length - 1), 1);
  return list.map((of, index) => drawFood(draw, of, index));
}
