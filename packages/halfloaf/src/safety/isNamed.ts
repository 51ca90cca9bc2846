import type { FoodFacts } from "../food/food.ts";

/** True where one of the food's names, British or American, fits the pattern. */
export function isNamed({ names }: Pick<FoodFacts, "names">, pattern: RegExp): boolean {
  return [...names.british, ...names.american].some((name) => pattern.test(name));
}
