import type { Food } from "halfloaf/food";
import { foldWords } from "./foldWords.ts";
import { foldWordsDe } from "./foldWordsDe.ts";
import { FOOD_SYNONYMS, type FoodSynonym } from "./foodSynonyms.ts";
import { CLASS_WORDS, IDLE_WORDS, KEPT_WORDS } from "./foodWords.ts";
import { IDLE_WORDS_DE, SYNONYMS_DE } from "./foodWordsDe.ts";

/** How names of foods are taken apart in a language. */
export interface Tongue {
  /** The words of a name in one writing. */
  readonly fold: (name: string) => string[];
  /** What a name is of stands before these words. */
  readonly binding: RegExp;
  /** Words that tell how a food is kept, as `fold` writes them: the same in every language. */
  readonly kept: ReadonlySet<string>;
  /** Words that no food is told apart by, as `fold` writes them. */
  readonly idle: ReadonlySet<string>;
  /** Nouns that may stand behind the name of a food of these groups. */
  readonly classes: ReadonlyMap<string, readonly Food["group"][]>;
  readonly synonyms: readonly FoodSynonym[];
}

const MEATS = new Set(["beef", "pork", "lamb", "turkey", "chicken", "veal", "meat"]);

/** Ground meat is written as mince, which is what British tables call it. */
function foldEnglish(name: string): string[] {
  const words = foldWords(name);
  const meat = words.some((word) => MEATS.has(word));
  return meat ? words.map((word) => (word === "ground" ? "mince" : word)) : words;
}

export const ENGLISH: Tongue = {
  fold: foldEnglish,
  binding: /\b(?:in|with|of|from|on|without)\b/i,
  kept: KEPT_WORDS,
  idle: IDLE_WORDS,
  classes: CLASS_WORDS,
  synonyms: FOOD_SYNONYMS.flatMap(({ synonyms }) => synonyms),
};

export const GERMAN: Tongue = {
  fold: foldWordsDe,
  binding: /(?:^|\s)(?:in|mit|ohne|aus|vom|von|zum|für|fuer|nach|im)\s/i,
  kept: KEPT_WORDS,
  idle: IDLE_WORDS_DE,
  // A German name joins such a noun to the name of the food, and then it is a name of its own.
  classes: new Map(),
  synonyms: SYNONYMS_DE,
};
