import type { MenuDish, MenuFood, MenuPlan, MenuProblem, Use } from "../menu/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import type { FittedDish } from "./fitDish.ts";
import type { Kitchen } from "./kitchen.ts";
import { LITRES_PER_G } from "./statePutBy.ts";
import type { StatedWish } from "./toWishes.ts";

/** The id of the dish of a box that stays empty. */
export const NOTHING_ID = "nothing";

/** The sittings with a box at the end of each day on which anybody eats, where the kitchen puts portions by. */
export function withBoxes({ puttingBy, kit }: Kitchen, sittings: readonly DatedSitting[]): DatedSitting[] {
  if (puttingBy === undefined || kit.freezerLitres <= 0) return [...sittings];
  return sittings.flatMap((sitting, k): DatedSitting[] => {
    if (sitting.day === sittings[k + 1]?.day) return [sitting];
    return [sitting, { ...sitting, eaters: [], minutes: 0, heat: true, packed: false, putBy: true }];
  });
}

/** True if a dish can be put by: it keeps in the freezer and is cooked, not warmed. */
export function isFreezable({ dish, putBy }: FittedDish): boolean {
  return putBy === undefined && (dish.keeps.freezerDays ?? 0) > 0;
}

/** The dishes of a day that can be put by. */
export function listFreezable(
  fitted: readonly FittedDish[],
  servedAt: readonly (readonly number[])[],
  sittings: readonly DatedSitting[],
  day: number,
): number[] {
  const there = new Set(sittings.flatMap((sitting, k) => (sitting.day === day ? (servedAt[k] ?? []) : [])));
  return [...there].filter((at) => isFreezable(fitted[at] as FittedDish)).sort((a, b) => a - b);
}

/** Nothing in the box. */
export function makeNothing(main: number, components: number, boxes: number): MenuDish {
  return {
    id: NOTHING_ID,
    makings: [],
    handsOn: { fixed: 0, perPortion: 0 },
    elapsed: { fixed: 0, perPortion: 0 },
    keepsDays: 0,
    needsHeat: false,
    servedCold: true,
    travels: true,
    main,
    maxUses: boxes,
    dislikeMinor: 0,
    energyKj: 0,
    components: Array.from({ length: components }, () => 0),
  };
}

/** The plan without the boxes that stay empty, which are batches of nothing. */
export function withoutEmptyBoxes({ dishes }: MenuProblem, plan: MenuPlan): MenuPlan {
  const kept = plan.batches.flatMap(({ dish }, at) => (dishes[dish]?.id === NOTHING_ID ? [] : [at]));
  if (kept.length === plan.batches.length) return plan;
  const indexOf = new Map(kept.map((before, at) => [before, at]));
  const uses = plan.uses.flatMap((use): Use[] => {
    const batch = indexOf.get(use.batch);
    return batch === undefined ? [] : [{ ...use, batch }];
  });
  return { ...plan, batches: plan.batches.filter((_, at) => indexOf.has(at)), uses };
}

/** A dish with what a portion of it in the freezer is worth: its makings at what they are worth left over unopened. */
export function withWorth(
  dish: MenuDish,
  { dish: { portionMassG } }: FittedDish,
  foods: readonly MenuFood[],
): MenuDish {
  const creditMinor = dish.makings.reduce(
    (sum, { food, massG }) => sum + massG * (foods[food]?.creditMinorPerG ?? 0),
    0,
  );
  return { ...dish, putBy: { creditMinor, litres: portionMassG * LITRES_PER_G } };
}

/** How many boxes are filled in each week, as the planner's wishes. */
export function wishBoxes(
  { puttingBy }: Kitchen,
  fitted: readonly FittedDish[],
  sittings: readonly DatedSitting[],
  weeks: readonly (readonly [number, number])[],
): StatedWish[] {
  if (puttingBy === undefined) return [];
  const dishes = fitted.flatMap((one, at) => (isFreezable(one) ? [at] : []));
  return weeks.flatMap(([from, to]): StatedWish[] => {
    const boxes = sittings.flatMap(({ putBy, day }, k) => (putBy && day >= from && day <= to ? [k] : []));
    const least = Math.floor((puttingBy.least * (to - from + 1)) / 7 + 1e-9);
    if (boxes.length === 0 || (least === 0 && boxes.length <= puttingBy.most)) return [];
    const menu = { dishes, sittings: boxes, least, most: puttingBy.most };
    return [{ menu, path: ["puttingBy"], what: {}, days: [from, to] }];
  });
}
