import type { Findings } from "@halfloaf/reading";
import { tellCount } from "@halfloaf/words/en";

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
