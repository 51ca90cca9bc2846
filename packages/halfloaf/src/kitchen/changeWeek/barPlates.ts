import { type FoodTable, withOwnFoods } from "../../food/index.ts";
import { cookedBefore, type Loss, type MenuPlan, type MenuSitting, sittingsOf } from "../../menu/index.ts";
import { type CivilDate, daysBetween } from "../../quantity/index.ts";
import { type FittedDish, findLackingKit, takesFood } from "../fitDish.ts";
import type { Eater, Kitchen } from "../kitchen.ts";
import { statePutBy } from "../statePutBy.ts";
import type { Tables } from "../tables.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import { findSittings } from "./toMenuChanges.ts";
import type { KitchenNow, WeekChange } from "./WeekChange.ts";

/** A week in which nobody is to get what they do not take. */
export interface BarredWeek {
  readonly stated: KitchenProblem;
  /** The old plan, in which what was cooked before and is not for those who were to eat it is a cooking of its own still to come. */
  readonly plan: MenuPlan;
  /** What went into such plates, which is gone. */
  readonly losses: readonly Loss[];
  /** Sittings of which nothing need be told as done: they were cooked for before today, or what was cooked is not eaten there. */
  readonly settled: ReadonlySet<number>;
}

/**
 * Takes off every sitting to come, from today on, the dishes that somebody who sits there does not take, by diet, allergens and single foods, as the kitchen is `now`; absent = as it was.
 * A dish that its kit is missing for stands where it is cooked already.
 * What is cooked already for such a sitting, or was to be there for one and is not, is not eaten there: it is planned for again, and the share of it is lost. What is eaten
 * today stays as it was.
 */
export function barPlates(
  kitchen: Kitchen,
  tables: Tables,
  { stated, plan }: { readonly stated: KitchenProblem; readonly plan: MenuPlan },
  {
    now,
    changes,
    today,
  }: { readonly now: KitchenNow | undefined; readonly changes: readonly WeekChange[]; readonly today: CivilDate },
): BarredWeek {
  const { eaters, foods, kit } = now ?? kitchen;
  const known = { ...tables, foods: withOwnFoods(tables.foods, { foods, overrides: [] }) };
  const isTaken = judgePlates({ ...kitchen, eaters }, known, stated);
  const isDone = (k: number, done: "cooked" | "eaten"): boolean =>
    changes.some(
      (change) =>
        change.kind === "want" &&
        change.done === done &&
        change.at.date === stated.sittings[k]?.date &&
        change.at.kind === stated.sittings[k]?.kind,
    );
  const isOpen = (k: number): boolean => (stated.sittings[k]?.date ?? "") >= today && !isDone(k, "eaten");
  const cooked = sittingsOf(plan, cookedBefore(stated.problem, plan, daysBetween(stated.from, today)));
  const isCooked = (k: number): boolean => cooked.has(k) || isDone(k, "cooked");
  const lacks = stated.dishes.map(({ dish, putBy }) => putBy === undefined && findLackingKit(dish, kit) !== undefined);
  const isPossible = (dish: number, k: number): boolean => isTaken(dish, k) && (isCooked(k) || !lacks[dish]);
  const sittings = stated.problem.sittings.map(
    (sitting, k): MenuSitting =>
      isOpen(k) ? { ...sitting, dishes: sitting.dishes.filter((dish) => isPossible(dish, k)) } : sitting,
  );
  const isShort = (dish: number, k: number): boolean =>
    changes.some(
      (change) =>
        change.kind === "short" &&
        change.dish === stated.problem.dishes[dish]?.id &&
        findSittings(stated, change.at).includes(k),
    );
  const barred = plan.batches.map(({ dish, sittings: eaten }) =>
    eaten.filter((k) => isOpen(k) && ((isCooked(k) && !isTaken(dish, k)) || (cooked.has(k) && isShort(dish, k)))),
  );
  const lost = loseBarred(stated, plan, barred);
  // What is gone can't be used up any more.
  const isGone = (stock: number): boolean => lost.losses.some(({ lot }) => "stock" in lot && lot.stock === stock);
  const lots = stated.problem.lots.map((lot, at) => (isGone(at) ? { ...lot, mustUse: false } : lot));
  return {
    stated: { ...stated, problem: { ...stated.problem, sittings, lots } },
    settled: new Set([...cooked, ...barred.flat()]),
    ...lost,
  };
}

/** Whether all who sit down take a dish of the problem. */
function judgePlates(
  kitchen: Kitchen,
  tables: Tables,
  { dishes, sittings, from }: KitchenProblem,
): (dish: number, k: number) => boolean {
  const isKnown = (id: string): boolean => kitchen.eaters.some((eater) => eater.id === id);
  const seated = sittings.map((sitting) => ({ ...sitting, eaters: sitting.eaters.filter(isKnown) }));
  const putBy = statePutBy(kitchen, tables, seated, from);
  const firstPutBy = dishes.findIndex((dish) => dish.putBy !== undefined);
  const known = new Map<string, boolean>();
  return (at, k) => {
    const dish = dishes[at];
    // Nothing at all, in a box, is for anybody.
    if (dish === undefined) return true;
    if (dish.putBy !== undefined) return putBy[at - firstPutBy]?.sittings.includes(k) ?? false;
    const there = kitchen.eaters.filter(({ id }) => sittings[k]?.eaters.includes(id));
    const key = `${at} ${there.map(({ id }) => id).join(" ")}`;
    const isTaken = known.get(key) ?? there.every((eater) => takesDish(eater, dish, tables.foods));
    known.set(key, isTaken);
    return isTaken;
  };
}

/** True if the eater takes every food of a dish as it is cooked, what is to taste among them. */
function takesDish(eater: Eater, { dish, choose }: FittedDish, foods: FoodTable): boolean {
  const within = dish.makings.flatMap((making) => choose(making)?.food ?? []);
  return within.every((id) => {
    const food = foods.get(id);
    return food !== undefined && takesFood(eater, food);
  });
}

/** Of each cooking the plates for these sittings become one of their own, and what went into them is gone. */
function loseBarred(
  { problem }: KitchenProblem,
  plan: MenuPlan,
  barred: readonly (readonly number[])[],
): Pick<BarredWeek, "plan" | "losses"> {
  const portionsAt = (list: readonly number[]): number =>
    list.reduce((sum, k) => sum + (problem.sittings[k]?.portions ?? 0), 0);
  const split = plan.batches.map(({ dish, sittings }, at) => {
    const lost = barred[at] ?? [];
    const rest = sittings.filter((k) => !lost.includes(k));
    const lostShare = lost.length === 0 ? 0 : portionsAt(lost) / portionsAt(sittings);
    // A cooking of which nothing is left stays where it is, for the dish to be put in the place of.
    const apart = lost.length > 0 && rest.length > 0 ? [{ dish, sittings: lost }] : [];
    return { lostShare, apart, rest: { dish, sittings: rest.length > 0 ? rest : sittings } };
  });
  const shareOf = (batch: number): number => split[batch]?.lostShare ?? 0;
  return {
    losses: plan.uses.flatMap(({ lot, batch, massG }): Loss[] =>
      shareOf(batch) > 0 ? [{ lot, massG: massG * shareOf(batch) }] : [],
    ),
    plan: {
      ...plan,
      batches: [...split.map(({ rest }) => rest), ...split.flatMap(({ apart }) => apart)],
      uses: plan.uses.flatMap((use) =>
        shareOf(use.batch) < 1 ? [{ ...use, massG: use.massG * (1 - shareOf(use.batch)) }] : [],
      ),
    },
  };
}
