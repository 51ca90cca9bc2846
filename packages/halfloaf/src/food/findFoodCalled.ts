import type { Food } from "./food.ts";
import { type English, namesIn } from "./foodName.ts";
import type { FoodTable } from "./foodTable.ts";
import { isSameText } from "./searchText.ts";

/**
 * The food that an id or a whole name means: in the language (BCP 47) first, then in the kind of English, since "tomato puree" is
 * one food there and another in the other, then in the other. A name in a language that nobody speaks here means nothing: "Germ" is
 * yeast to one cook alone. Case, marks on letters and the spelling of umlauts don't count. Undefined where none is called so.
 */
export function findFoodCalled(foods: FoodTable, called: string, english: English, language = "en"): Food | undefined {
  const asked = called.trim();
  const isOneOf = (names: readonly string[]): boolean => names.some((name) => isSameText(name, asked));
  const all = [...foods.values()];
  return (
    foods.get(asked.toLowerCase()) ??
    all.find((food) => isOneOf(namesIn(food, english, language))) ??
    all.find(({ names }) => isOneOf(names[english])) ??
    all.find(({ names }) => isOneOf([...names.british, ...names.american]))
  );
}
