import type { Food } from "halfloaf/food";
import { foldWords } from "./foldWords.ts";
import { FOOD_SYNONYMS, type FoodSynonym, type Standing } from "./foodSynonyms.ts";
import { IDLE_WORDS, KEPT_WORDS } from "./foodWords.ts";

/** What of a food an index needs. */
export type NamedFood = Pick<Food, "id" | "group" | "names">;

/** One name of a food, taken apart for comparing. */
export interface FoodName {
  readonly food: NamedFood;
  readonly name: string;
  /** The words of the name before any bracket, without those that tell how it is kept. */
  readonly words: readonly string[];
  /** The word that says what it is: the last before "in", "with" or "of". */
  readonly head: string;
  /** Words in brackets. */
  readonly qualifiers: readonly string[];
  /** How it is kept: "tinned", "dried"; of the food where the name does not say. */
  readonly kept: readonly string[];
  readonly english: "british" | "american" | "both";
  /** Position among the food's names, from 0. */
  readonly rank: number;
  readonly when?: Standing;
  readonly near: boolean;
}

/** The names of a food table, to be searched by `findFood`. Made once for a table. */
export class FoodIndex {
  readonly names: readonly FoodName[];
  readonly #byWord = new Map<string, FoodName[]>();
  readonly #lengths = new Map<string, string[]>();

  constructor(foods: Iterable<NamedFood>) {
    const byId = new Map<string, NamedFood>();
    for (const food of foods) byId.set(food.id, food);
    this.names = [...[...byId.values()].flatMap(namesOf), ...synonymsOf(byId)];
    for (const name of this.names) {
      for (const word of new Set([...name.words, ...name.qualifiers])) this.#add(word, name);
    }
    for (const word of this.#byWord.keys()) {
      const key = word.slice(0, 1);
      this.#lengths.set(key, [...(this.#lengths.get(key) ?? []), word]);
    }
  }

  #add(word: string, name: FoodName): void {
    const list = this.#byWord.get(word);
    if (list) list.push(name);
    else this.#byWord.set(word, [name]);
  }

  /** The names in which a folded word stands. */
  namesWith(word: string): readonly FoodName[] {
    return this.#byWord.get(word) ?? [];
  }

  /** How much a word tells: the rarer in the table, the more; a word that stands in no name tells most. */
  weightOf(word: string): number {
    const count = this.namesWith(word).length;
    return Math.log(1 + this.names.length / Math.max(1, count));
  }

  /** The words of the table that begin with the same letter. */
  wordsLike(word: string): readonly string[] {
    return this.#lengths.get(word.slice(0, 1)) ?? [];
  }
}

function namesOf(food: NamedFood): FoodName[] {
  const [first = ""] = food.names.british;
  const keptByFood = readableWords(first).filter((word) => KEPT_WORDS.has(word));
  const british = food.names.british.map((name, rank) => toFoodName(food, name, rank, keptByFood, "british"));
  const american = food.names.american.map((name, rank) => toFoodName(food, name, rank, keptByFood, "american"));
  return [...british, ...american].filter(({ words }) => words.length > 0);
}

function synonymsOf(byId: ReadonlyMap<string, NamedFood>): FoodName[] {
  return FOOD_SYNONYMS.flatMap(({ synonyms }) => synonyms).flatMap((synonym: FoodSynonym) => {
    const food = byId.get(synonym.food);
    if (!food) return [];
    const [first = ""] = food.names.british;
    const kept = readableWords(first).filter((word) => KEPT_WORDS.has(word));
    const name = toFoodName(food, synonym.name, 0, kept, synonym.english ?? "both");
    const when = synonym.when ? { when: synonym.when } : {};
    return [{ ...name, ...when, near: synonym.near ?? false }];
  });
}

function toFoodName(
  food: NamedFood,
  name: string,
  rank: number,
  keptByFood: readonly string[],
  english: FoodName["english"],
): FoodName {
  const core = name.replace(/\([^)]*\)/g, " ");
  const bracketed = foldWords(name.slice(core.trimEnd().length === name.length ? name.length : name.indexOf("(")));
  const [main = "", ...after] = core.split(",");
  const words = readableWords(`${after.join(" ")} ${main}`);
  const kept = [...readableWords(core), ...bracketed].filter((word) => KEPT_WORDS.has(word));
  return {
    food,
    name,
    words: words.filter((word) => !KEPT_WORDS.has(word)),
    head: headOf(main),
    qualifiers: bracketed.filter((word) => !KEPT_WORDS.has(word) && !IDLE_WORDS.has(word)),
    kept: kept.length > 0 ? kept : keptByFood,
    english,
    rank,
    near: false,
  };
}

const MEATS = new Set(["beef", "pork", "lamb", "turkey", "chicken", "veal", "meat"]);

/** The folded words of a name; ground meat is written as mince, which is what British tables call it. */
export function readableWords(name: string): string[] {
  const words = foldWords(name);
  const meat = words.some((word) => MEATS.has(word));
  return meat ? words.map((word) => (word === "ground" ? "mince" : word)) : words;
}

const BINDING = /\b(?:in|with|of|from|on|without)\b/i;

/** The word that says what a name is of: the last before "in", "with" and their like. */
export function headOf(name: string): string {
  const [before = ""] = name.split(BINDING);
  const words = readableWords(before).filter((word) => !KEPT_WORDS.has(word));
  const own = words.filter((word) => !IDLE_WORDS.has(word));
  return own.at(-1) ?? words.at(-1) ?? "";
}
