import type { Food } from "halfloaf/food";
import type { FoodSynonym, Standing } from "./foodSynonyms.ts";
import { ENGLISH, GERMAN, type Tongue } from "./Tongue.ts";

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

/** The names of a food table, to be searched by `findFood`: the English ones, and apart from them the German. Made once for a table. */
export class FoodIndex {
  readonly names: readonly FoodName[];
  /** How names and what is asked are taken apart. */
  readonly tongue: Tongue;
  readonly #foods: readonly NamedFood[];
  #german: FoodIndex | undefined;
  readonly #byWord = new Map<string, FoodName[]>();
  readonly #lengths = new Map<string, string[]>();

  constructor(foods: Iterable<NamedFood>, tongue = ENGLISH) {
    const byId = new Map<string, NamedFood>();
    for (const food of foods) byId.set(food.id, food);
    this.tongue = tongue;
    this.#foods = [...byId.values()];
    const named = this.#foods.flatMap(tongue === GERMAN ? namesDeOf : namesOf);
    this.names = [...named, ...synonymsOf(byId, tongue)];
    for (const name of this.names) {
      for (const word of new Set([...name.words, ...name.qualifiers])) this.#add(word, name);
    }
    for (const word of this.#byWord.keys()) {
      const key = word.slice(0, 1);
      this.#lengths.set(key, [...(this.#lengths.get(key) ?? []), word]);
    }
  }

  /** The German names of the same foods; those a cook wrote down once stand among the English ones alone. Made when first asked for. */
  get german(): FoodIndex {
    this.#german ??= new FoodIndex(this.#foods, GERMAN);
    return this.#german;
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
  const kept = keptOf(food.names.british[0], ENGLISH);
  const british = food.names.british.map((name, rank) => toFoodName(food, name, rank, kept, "british", ENGLISH));
  const american = food.names.american.map((name, rank) => toFoodName(food, name, rank, kept, "american", ENGLISH));
  return [...british, ...american].filter(({ words }) => words.length > 0);
}

function namesDeOf(food: NamedFood): FoodName[] {
  const { german = [] } = food.names;
  const kept = keptOf(german[0], GERMAN);
  return german
    .map((name, rank) => toFoodName(food, name, rank, kept, "both", GERMAN))
    .filter(({ words }) => words.length > 0);
}

function keptOf(first = "", { fold, kept }: Tongue): string[] {
  return fold(first).filter((word) => kept.has(word));
}

function synonymsOf(byId: ReadonlyMap<string, NamedFood>, tongue: Tongue): FoodName[] {
  return tongue.synonyms.flatMap((synonym: FoodSynonym) => {
    const food = byId.get(synonym.food);
    if (!food) return [];
    const first = tongue === GERMAN ? food.names.german : food.names.british;
    const kept = keptOf(first?.[0], tongue);
    const name = toFoodName(food, synonym.name, 0, kept, synonym.english ?? "both", tongue);
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
  tongue: Tongue,
): FoodName {
  const { fold, kept: keeping, idle } = tongue;
  const core = name.replace(/\([^)]*\)/g, " ");
  const bracketed = fold(name.slice(core.trimEnd().length === name.length ? name.length : name.indexOf("(")));
  const [main = "", ...after] = core.split(",");
  const words = fold(`${after.join(" ")} ${main}`);
  const kept = [...fold(core), ...bracketed].filter((word) => keeping.has(word));
  return {
    food,
    name,
    words: words.filter((word) => !keeping.has(word)),
    head: headOf(main, tongue),
    qualifiers: bracketed.filter((word) => !keeping.has(word) && !idle.has(word)),
    kept: kept.length > 0 ? kept : keptByFood,
    english,
    rank,
    near: false,
  };
}

/** The word that says what a name is of: the last before "in", "with" and their like that is no number. */
export function headOf(name: string, { fold, binding, kept, idle }: Tongue): string {
  const [before = ""] = name.split(binding);
  const words = fold(before).filter((word) => !kept.has(word));
  const own = words.filter((word) => !idle.has(word));
  return own.findLast((word) => !NUMBER.test(word)) ?? own.at(-1) ?? words.at(-1) ?? "";
}

const NUMBER = /^[\d%]+$/;
