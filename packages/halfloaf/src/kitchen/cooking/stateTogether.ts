import type { MenuCooking, MenuMinutes, MenuPlan, PlannedBatch } from "../../menu/index.ts";
import type { FittedDish } from "../fitDish.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import { portionsOf } from "../toPlates.ts";
import { sittingKitchen } from "./sittingKitchen.ts";
import { sittingMinutes, sumWashes } from "./sittingMinutes.ts";
import { solveCooking, stopAfter, type TimedCooking } from "./solveCooking.ts";
import { toWorkProblem } from "./toWorkProblem.ts";

/** Questions of the search for the order of work of several dishes after which it is stopped. */
const MOST_QUESTIONS = 200;
/** Minutes that no sitting has. */
export const NEVER_MINUTES = 9999;

/**
 * The problem with what a plan cooks at once and is not known yet, each cooking with the minutes of its order of work; the
 * same object where there is none. Deterministic: the search for an order of work is stopped by counted work.
 */
export function stateTogether(
  stated: KitchenProblem,
  plan: MenuPlan,
  kitchen: Kitchen,
  tables: Tables,
): KitchenProblem {
  const { cookings = [] } = stated.problem;
  const unknown = listTogether(stated, plan).filter(({ cooking }) => cooking === undefined);
  if (unknown.length === 0) return stated;
  const timed = unknown.map(({ dishes }) => timeTogether(stated, dishes, kitchen, tables));
  return { ...stated, problem: { ...stated.problem, cookings: [...cookings, ...timed] } };
}

type Amounts = MenuCooking["dishes"];

/** Batches of a plan that are cooked at once, at least two, and what is known of that; absent = nothing yet. */
export interface CookedTogether {
  readonly batches: readonly number[];
  readonly dishes: Amounts;
  readonly cooking?: MenuCooking;
}

/** All that a plan cooks at once, in the order of its batches. */
export function listTogether(stated: KitchenProblem, { batches }: MenuPlan): CookedTogether[] {
  const { sittings, cookings = [] } = stated.problem;
  const labels = batches.map((batch) => sittings[batch.sittings[0] as number]?.together);
  return [...new Set(labels)].flatMap((label): CookedTogether[] => {
    const own = [...batches.keys()].filter((at) => label !== undefined && labels[at] === label);
    if (own.length < 2) return [];
    const dishes = own.map((at) => {
      const { dish, sittings: served } = batches[at] as PlannedBatch;
      return { dish, portions: portionsOf(stated, served) };
    });
    const cooking = cookings.find((known) => isSame(known.dishes, dishes));
    return [{ batches: own, dishes, ...(cooking && { cooking }) }];
  });
}

function isSame(known: Amounts, dishes: Amounts): boolean {
  return (
    known.length === dishes.length &&
    dishes.every((one) => known.some((other) => other.dish === one.dish && other.portions === one.portions))
  );
}

/**
 * Dishes of a problem cooked at once, in the minutes of their order of work. A dish that the kitchen's problem does not have
 * was cooked before, and takes none.
 */
export function timeTogether(stated: KitchenProblem, dishes: Amounts, kitchen: Kitchen, tables: Tables): MenuCooking {
  const minutesOf = ({ fixed, perPortion }: MenuMinutes, portions: number): number => fixed + perPortion * portions;
  const alone = dishes.map(({ dish, portions }) =>
    minutesOf(stated.problem.dishes[dish]?.elapsed ?? { fixed: 0, perPortion: 0 }, portions),
  );
  const cooked = dishes.flatMap(({ dish, portions }) => {
    const fitted = stated.dishes[dish];
    return fitted === undefined || fitted.putBy ? [] : [{ ...fitted, portions }];
  });
  if (cooked.length < 2) return { dishes, elapsedMinutes: Math.max(...alone), washMinutes: 0 };
  const order = orderTogether(cooked, kitchen, tables);
  if (order === "impossible") return { dishes, elapsedMinutes: NEVER_MINUTES, washMinutes: 0 };
  // What has no order of work is done in turn.
  const inTurn = alone.reduce((sum, minutes) => sum + minutes, 0);
  if (order === undefined) return { dishes, elapsedMinutes: inTurn, washMinutes: 0 };
  const washesAlone = cooked.map(
    ({ dish, choose }) => sittingMinutes(dish, sittingKitchen(kitchen, tables), choose).washMinutes,
  );
  return {
    dishes,
    elapsedMinutes: order.plan.serveMinutes,
    washMinutes: Math.max(
      0,
      washesAlone.reduce((rest, minutes) => rest - minutes, sumWashes(order)),
    ),
  };
}

/** The order of work of several dishes; undefined where none was found in the counted work. */
function orderTogether(
  dishes: readonly (Pick<FittedDish, "dish" | "choose"> & { readonly portions: number })[],
  kitchen: Kitchen,
  tables: Tables,
): TimedCooking | "impossible" | undefined {
  const wish = dishes.map(({ dish, choose, portions }) => ({ dish, choose, portions }));
  const stated = toWorkProblem({ ...sittingKitchen(kitchen, tables), dishes: wish });
  if (!stated.ok) return undefined;
  const outcome = solveCooking(stated.cooking, { shouldStop: stopAfter(MOST_QUESTIONS), until: "keeping" });
  if (outcome.kind === "impossible") return "impossible";
  return outcome.kind === "timed" ? outcome.timed : undefined;
}
