import type { FoodFacts } from "../food/food.ts";
import { namesOf } from "../food/foodName.ts";

/** True where one of the food's names, in any language, fits the pattern; an own food is named in the language of its cook. */
export function isNamed(food: Pick<FoodFacts, "names">, pattern: RegExp): boolean {
  return namesOf(food).some((name) => pattern.test(name));
}
