import type { Dish } from "../dish/index.ts";
import type { CivilDate } from "../quantity/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import { fitDish, type Unfit } from "./fitDish.ts";
import type { Kitchen } from "./kitchen.ts";
import { dayBegun } from "./leaveOutLate.ts";
import type { Tables } from "./tables.ts";
import type { KitchenProblem } from "./toMenuProblem.ts";

/** Why a dish can't be had at a sitting, whatever else is planned. */
export type Hindrance =
  | Unfit
  /** It is meant for other sittings. */
  | { readonly reason: "not-meant" }
  /** The kitchen never plans it. */
  | { readonly reason: "refused" }
  /** It can't be taken along and eaten cold, as that plate is. */
  | { readonly reason: "not-cold" }
  /** It must be heated, which can't be done there. */
  | { readonly reason: "needs-heat" }
  | { readonly reason: "too-long"; readonly atHandMinutes: number }
  /** Something of it would have to be begun on that day, before anything can be. */
  | { readonly reason: "begun-before"; readonly date: CivilDate };

/**
 * What keeps a dish from the sitting at position `k` of a kitchen's days; undefined where nothing does and only the rest of the
 * plan decides, or where there is no such sitting. Of a dish with alternatives it is told what hinders the first way of them.
 */
export function hindranceAt(
  kitchen: Kitchen,
  tables: Tables,
  stated: KitchenProblem,
  k: number,
  dish: Dish,
): Hindrance | undefined {
  const sitting = stated.sittings[k];
  if (sitting === undefined) return undefined;
  if (!dish.fits.includes(sitting.kind)) return { reason: "not-meant" };
  if (kitchen.refusedDishes.includes(dish.id)) return { reason: "refused" };
  const eaters = kitchen.eaters.filter(({ id }) => sitting.eaters.includes(id));
  const had = new Set([...kitchen.packs, ...kitchen.stores].map(({ food }) => food));
  const fitted = fitDish(dish, tables.foods, kitchen.kit, eaters, (food) => had.has(food));
  if ("reason" in fitted) return fitted;
  const ways = (stated.problem.sittings[k]?.dishes ?? []).filter((at) => stated.problem.dishes[at]?.id === dish.id);
  const late = ways.length === 0 ? dayTooEarly(kitchen, stated, sitting, dish) : undefined;
  if (late !== undefined) return { reason: "begun-before", date: late };
  const hindered = ways.map((way) => hindranceOfWay(stated, k, way));
  return hindered.every((hindrance) => hindrance !== undefined) ? hindered[0] : undefined;
}

/** The day before the first on which anything can be begun that a dish would have to be begun on; undefined where none is. */
function dayTooEarly(
  kitchen: Kitchen,
  stated: KitchenProblem,
  sitting: DatedSitting,
  dish: Dish,
): CivilDate | undefined {
  const way = stated.dishes.findIndex((one) => one.dish.id === dish.id && one.putBy === undefined);
  const begun = dayBegun(stated, kitchen, sitting, way);
  return begun !== undefined && begun < stated.beginsOn ? begun : undefined;
}

/** Why a way of a dish that could be cooked for these eaters can't be served at the sitting. */
function hindranceOfWay({ problem }: KitchenProblem, k: number, way: number): Hindrance | undefined {
  const sitting = problem.sittings[k];
  const dish = problem.dishes[way];
  if (sitting === undefined || dish === undefined) return undefined;
  if (sitting.packed && !(dish.travels && dish.servedCold)) return { reason: "not-cold" };
  if (!sitting.heat && dish.needsHeat) return { reason: "needs-heat" };
  const minutes = dish.elapsed.fixed + dish.elapsed.perPortion * sitting.portions;
  return minutes > sitting.minutes ? { reason: "too-long", atHandMinutes: sitting.minutes } : undefined;
}
