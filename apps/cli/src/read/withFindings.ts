import { rememberMatch } from "@halfloaf/reading";
import { tellCount } from "@halfloaf/words/en";
import type { Kitchen } from "halfloaf/kitchen";
import type { Findings } from "./FileReading.ts";

/** The lists of a kitchen that a reading adds to. */
export type ReadInto = Pick<Kitchen, "packs" | "foods" | "overrides" | "dishes">;

/**
 * The lists of a kitchen with all that was found but prices of known packs: dishes, own foods and figures in place of those
 * of the same id or food, new packs behind the others, and each text put down to the pack it was said to mean.
 */
export function withFindings(lists: ReadInto, findings: Omit<Findings, "observations">): ReadInto {
  const packs = [...lists.packs, ...findings.newPacks];
  return {
    packs: findings.matches.reduce<ReadInto["packs"]>(rememberMatch, packs),
    foods: merge(lists.foods, findings.foods, ({ id }) => id),
    overrides: merge(lists.overrides, findings.overrides, ({ food }) => food),
    dishes: merge(lists.dishes, findings.dishes, ({ id }) => id),
  };
}

/** What was found, as a list for people; `prices` is how many of them are kept. */
export function tellFindings({ dishes, newPacks, matches, foods, overrides }: Findings, prices: number): string {
  return [
    ...dishes.map(({ id }) => `the dish ${id}`),
    ...foods.map(({ id }) => `the food ${id}`),
    ...overrides.map(({ food }) => `figures of ${food}`),
    ...(prices === 0 ? [] : [tellCount(prices, "price")]),
    ...newPacks.map(({ id }) => `the new pack ${id}`),
    ...(matches.length === 0 ? [] : [tellCount(matches.length, "match to remember", "matches to remember")]),
  ].join(", ");
}

/** Each new element in the place of the one of the same name, or behind all. */
function merge<Element>(
  before: readonly Element[],
  found: readonly Element[],
  nameOf: (element: Element) => string,
): Element[] {
  const byName = new Map([...before, ...found].map((each) => [nameOf(each), each]));
  return [...byName.values()];
}
