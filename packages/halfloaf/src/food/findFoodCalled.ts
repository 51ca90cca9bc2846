import type { Food } from "./food.ts";
import { type English, namesOf } from "./foodName.ts";
import type { FoodTable } from "./foodTable.ts";
import { isSameText } from "./searchText.ts";

/**
 * The food that an id or a whole name means: in the kind of English first, since "tomato puree" is one food there and another in the
 * other, then in any language. Case, marks on letters and the spelling of umlauts don't count. Undefined where none is called so.
 */
export function findFoodCalled(foods: FoodTable, called: string, english: English): Food | undefined {
  const asked = called.trim();
  const isOneOf = (names: readonly string[]): boolean => names.some((name) => isSameText(name, asked));
  const all = [...foods.values()];
  return (
    foods.get(asked.toLowerCase()) ??
    all.find(({ names }) => isOneOf(names[english])) ??
    all.find((food) => isOneOf(namesOf(food)))
  );
}
