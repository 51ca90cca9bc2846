import { type Dish, minutesOf, nutrientsOfDish } from "halfloaf/dish";
import type { Tables } from "halfloaf/kitchen";
import { dishToJsonLd, toJsonLdText } from "halfloaf/sheet";

/** Hands and rings that the times of a dish are told for where it leaves its kitchen: as in most of the demo kitchens. */
const USUAL_HANDS = { rings: 2, cooks: 1 } as const;

/** A dish as the text of JSON-LD, with times and what a portion holds; `halfloaf read` reads it back the same. */
export function toDishText(
  dish: Dish,
  { foods, retain }: Pick<Tables, "foods" | "retain">,
  english: "british" | "american",
): string {
  const minutes = { total: minutesOf(dish, dish.portions, USUAL_HANDS).elapsed };
  return toJsonLdText(dishToJsonLd(dish, { foods, english, minutes, nutrients: nutrientsOfDish(dish, foods, retain) }));
}
