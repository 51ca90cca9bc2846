import { tellCount, tellDayShort } from "@halfloaf/words/en";
import { type Hindrance, hindranceAt, type Kitchen, type KitchenProblem, type Tables } from "halfloaf/kitchen";
import type { Names } from "./Names.ts";

/** Why some dishes are out of the question at a sitting, and how many are. */
export interface CountedHindrance {
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
): CountedHindrance[] {
  const counts = new Map<string, number>();
  for (const dish of tables.dishes) {
    const hindrance = hindranceAt(kitchen, tables, stated, k, dish);
    if (hindrance === undefined || hindrance.reason === "not-meant") continue;
    const text = tellHindranceOf(hindrance, names);
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts].map(([text, dishes]) => ({ dishes, text })).sort((a, b) => b.dishes - a.dishes);
}

/** "31 dishes: the kit has no oven". */
export function tellHindrance({ dishes, text }: CountedHindrance): string {
  return `${tellCount(dishes, "dish", "dishes")}: ${text}`;
}

/** What keeps dishes from a sitting. */
function tellHindranceOf(why: Exclude<Hindrance, { reason: "not-meant" }>, names: Names): string {
  switch (why.reason) {
    case "kit-missing":
      return `the kit has no ${why.kit}, or not enough of them`;
    case "not-to-be-had":
      return `${names.food(why.food)} is in no shop and not in the stores`;
    case "not-for-these-eaters":
      return `somebody who sits down does not eat ${names.food(why.food)}`;
    case "amount-unknown":
      return `the amount of ${names.food(why.food)} is not known in g`;
    case "refused":
      return "this kitchen refuses them";
    case "not-cold":
      return "they can't be taken along and eaten cold";
    case "needs-heat":
      return "they must be heated, which can't be done there";
    case "too-long":
      return `they take longer than the ${why.atHandMinutes} minutes at hand`;
    case "begun-before":
      return `they must be begun on ${tellDayShort(why.date)}, before these days begin`;
  }
}
