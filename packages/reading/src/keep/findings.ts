import type { Dish } from "halfloaf/dish";
import type { FoodOverride, OwnFood } from "halfloaf/food";
import type { Kitchen } from "halfloaf/kitchen";
import type { Observation, Pack } from "halfloaf/price";
import { rememberMatch, type SaidMatch } from "../price/PackIndex.ts";

/** What of a reading can be kept. */
export interface Findings {
  readonly dishes: readonly Dish[];
  readonly observations: readonly Observation[];
  readonly newPacks: readonly Pack[];
  readonly matches: readonly SaidMatch[];
  readonly foods: readonly OwnFood[];
  readonly overrides: readonly FoodOverride[];
}

/** Findings of what holds none. */
export const NO_FINDINGS: Findings = {
  dishes: [],
  observations: [],
  newPacks: [],
  matches: [],
  foods: [],
  overrides: [],
};

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

/** Each new element in the place of the one of the same name, or behind all. */
function merge<Element>(
  before: readonly Element[],
  found: readonly Element[],
  nameOf: (element: Element) => string,
): Element[] {
  const byName = new Map([...before, ...found].map((each) => [nameOf(each), each]));
  return [...byName.values()];
}
