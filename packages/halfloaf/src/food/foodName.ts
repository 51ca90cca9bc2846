import type { FoodFacts } from "./food.ts";

type Named = Pick<FoodFacts, "names">;

/** The kinds of English that foods have names in. */
export type English = keyof Pick<FoodFacts["names"], "british" | "american">;

/**
 * The name a food is shown by: its first in the language (BCP 47; "de-AT" is German), else its first in the kind of English.
 * Undefined where there is no food.
 */
export function foodName(food: Named | undefined, english: English, language = "en"): string | undefined {
  const german = /^de\b/i.test(language) ? food?.names.german : undefined;
  return (german ?? food?.names[english])?.[0];
}

/** Every name of a food, in whatever language: what it is found by. */
export function namesOf({ names }: Named): readonly string[] {
  return [...new Set([...names.british, ...names.american, ...(names.german ?? [])])];
}
