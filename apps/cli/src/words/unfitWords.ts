import { tellCount } from "@halfloaf/words/en";
import { type Eater, fitDish, type Kitchen, type KitchenProblem, type Tables, type Unfit } from "halfloaf/kitchen";
import type { Names } from "./Names.ts";

/** Why some dishes are out of the question at a sitting, and how many are. */
export interface Hindrance {
  readonly dishes: number;
  readonly text: string;
}

/** Why no dish can be had at the sitting at position `k` of the problem, the commonest reason first. */
export function listHindrances(
  kitchen: Kitchen,
  tables: Tables,
  stated: KitchenProblem,
  k: number,
  names: Names,
): Hindrance[] {
  const sitting = stated.sittings[k];
  if (sitting === undefined) return [];
  const counts = new Map<string, number>();
  const count = (reason: string) => counts.set(reason, (counts.get(reason) ?? 0) + 1);
  const eaters = kitchen.eaters.filter(({ id }) => sitting.eaters.includes(id)) as Eater[];
  const had = new Set([...kitchen.packs, ...kitchen.stores].map(({ food }) => food));
  for (const dish of tables.dishes) {
    if (!dish.fits.includes(sitting.kind)) continue;
    const fitted = fitDish(dish, tables.foods, kitchen.kit, eaters, (food) => had.has(food));
    if (kitchen.refusedDishes.includes(dish.id)) count("this kitchen refuses them");
    else if ("reason" in fitted) count(tellUnfit(fitted, names));
  }
  for (const reason of listServingHindrances(stated, k)) count(reason);
  return [...counts].map(([text, dishes]) => ({ dishes, text })).sort((a, b) => b.dishes - a.dishes);
}

/** Why dishes that could be cooked for these eaters can't be served at this sitting, one reason a dish. */
function listServingHindrances(stated: KitchenProblem, k: number): string[] {
  const sitting = stated.problem.sittings[k];
  return (sitting?.dishes ?? []).flatMap((at) => {
    const dish = stated.problem.dishes[at];
    if (sitting === undefined || dish === undefined) return [];
    if (sitting.packed && !(dish.travels && dish.servedCold)) return ["they can't be taken along and eaten cold"];
    if (!sitting.heat && dish.needsHeat) return ["they must be heated, which can't be done there"];
    const minutes = dish.elapsed.fixed + dish.elapsed.perPortion * sitting.portions;
    return minutes > sitting.minutes ? [`they take longer than the ${sitting.minutes} minutes at hand`] : [];
  });
}

/** "31 dishes: the kit has no oven". */
export function tellHindrance({ dishes, text }: Hindrance): string {
  return `${tellCount(dishes, "dish", "dishes")}: ${text}`;
}

/** Why a kitchen can't cook a dish for certain eaters. */
function tellUnfit(why: Unfit, names: Names): string {
  switch (why.reason) {
    case "kit-missing":
      return `the kit has no ${why.kit}, or not enough of them`;
    case "not-to-be-had":
      return `${names.food(why.food)} is in no shop and not in the stores`;
    case "not-for-these-eaters":
      return `somebody who sits down does not eat ${names.food(why.food)}`;
    case "amount-unknown":
      return `the amount of ${names.food(why.food)} is not known in g`;
  }
}
