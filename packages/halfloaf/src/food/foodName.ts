import type { FoodFacts } from "./food.ts";

type Named = Pick<FoodFacts, "names">;

/** The kinds of English that foods have names in. */
export type English = keyof Pick<FoodFacts["names"], "british" | "american">;

/** The names of a food in the language (BCP 47; "de-AT" is German), else in the kind of English. */
export function namesIn({ names }: Named, english: English, language = "en"): readonly string[] {
  const german = /^de\b/i.test(language) ? names.german : undefined;
  return german ?? names[english];
}

/** The name a food is shown by: the first of `namesIn`. Undefined where there is no food. */
export function foodName(food: Named | undefined, english: English, language = "en"): string | undefined {
  return food && namesIn(food, english, language)[0];
}

/** Every name of a food, in whatever language: what it is found by. */
export function namesOf({ names }: Named): readonly string[] {
  return [...new Set([...names.british, ...names.american, ...(names.german ?? [])])];
}
