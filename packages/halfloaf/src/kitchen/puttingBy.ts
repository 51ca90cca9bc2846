import type { MenuDish, MenuFood, MenuPlan, MenuProblem, Use } from "../menu/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import type { FittedDish } from "./fitDish.ts";
import type { Kitchen } from "./kitchen.ts";
import type { PuttingBy } from "./putBy.ts";
import { LITRES_PER_G, type StatedPutBy } from "./statePutBy.ts";
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

/** Shares of a box closer than this are the same. */
const BOX_TOLERANCE = 1e-9;

/**
 * How many boxes are filled in each week, as the planner's wishes. Where so many are enough, those that are in the freezer
 * on the first day count, whatever of them is eaten later, and no more than are missing are asked for or filled.
 * **Source**: decision 0017.
 */
export function wishBoxes(
  { puttingBy }: Kitchen,
  fitted: readonly FittedDish[],
  atHand: readonly StatedPutBy[],
  sittings: readonly DatedSitting[],
  weeks: readonly (readonly [number, number])[],
): StatedWish[] {
  if (puttingBy === undefined) return [];
  const dishes = fitted.flatMap((one, at) => (isFreezable(one) ? [at] : []));
  const { enough } = puttingBy;
  const missing = enough === undefined ? undefined : Math.max(0, enough - countBoxes(puttingBy, atHand));
  let open = missing ?? Number.POSITIVE_INFINITY;
  const fill = ([from, to]: readonly [number, number], least: number, most: number): StatedWish[] => {
    const boxes = sittings.flatMap(({ putBy, day }, k) => (putBy && day >= from && day <= to ? [k] : []));
    if (boxes.length === 0 || (least === 0 && boxes.length <= most)) return [];
    return [{ menu: { dishes, sittings: boxes, least, most }, path: ["puttingBy"], what: {}, days: [from, to] }];
  };
  const each = weeks.flatMap((week) => {
    const least = Math.min(open, Math.floor((puttingBy.least * (week[1] - week[0] + 1)) / 7 + BOX_TOLERANCE));
    open -= least;
    return fill(week, least, Math.min(puttingBy.most, missing ?? puttingBy.most));
  });
  const last = weeks.at(-1);
  const isOver = missing !== undefined && weeks.length > 1 && missing < weeks.length * puttingBy.most;
  return isOver && last !== undefined ? [...each, ...fill([0, last[1]], 0, missing)] : each;
}

/** Whole boxes that are in the freezer and good on the first day. */
function countBoxes({ portions }: PuttingBy, atHand: readonly StatedPutBy[]): number {
  const there = atHand.flatMap(({ dish: { dish }, lots }) =>
    lots.map(({ lot, lastDay }) => (lot.place === "freezer" && lastDay >= 0 ? lot.massG / dish.portionMassG : 0)),
  );
  return Math.floor(there.reduce((sum, each) => sum + each, 0) / portions + BOX_TOLERANCE);
}
