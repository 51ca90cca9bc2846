import type { Dish } from "halfloaf/dish";
import { type Found, refuse } from "../words/Fault.ts";
import { findNearest } from "../words/nearest.ts";
import { quote } from "../words/valueWords.ts";

/** The dish of an id or a title, small and capital letters alike; else a fault that names the three nearest. */
export function findDish(word: string, dishes: readonly Dish[]): Found<Dish> {
  const wanted = word.trim().toLowerCase();
  const found = dishes.find(({ id, title }) => id === wanted || title.toLowerCase() === wanted);
  if (found !== undefined) return { ok: true, value: found };
  const byText = new Map(dishes.map((dish) => [`${dish.id} ${dish.title}`, dish.id]));
  const near = findNearest(wanted, byText.keys(), 3, 0).flatMap((text) => byText.get(text) ?? []);
  return refuse({
    code: "dish-unknown",
    path: [],
    value: quote(word),
    sentence: `There is no dish ${quote(word)}.`,
    remedy: `Nearest to it: ${near.join(", ")}.`,
  });
}
