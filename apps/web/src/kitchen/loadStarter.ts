import { applyRetention, type DishTexts, layDishTexts, parseRetentionTable, type RetentionTable } from "halfloaf/dish";
import type { Food, FoodTable } from "halfloaf/food";
import type { Tables } from "halfloaf/kitchen";
import type { Pack, Shop } from "halfloaf/price";
import type { Language } from "../words/languages.ts";
import { fetchStarter } from "./fetchStarter.ts";
import { layPhrases, type Phrases } from "./layPhrases.ts";

/** The tables that come with the app, and the kitchens to try it with. */
export interface Starter extends BeginningsFile {
  readonly tables: Tables;
}

/** What a new kitchen begins with, all of it estimated; money in minor units. */
export interface StarterShops {
  readonly shops: readonly Shop[];
  readonly packs: readonly Pack[];
  /** What a cupboard often holds, with the grams there may be; `usual` is there in most. */
  readonly cupboard: readonly { readonly food: string; readonly massG: number; readonly usual?: true }[];
}

/** Names of foods in a language besides English, by the ids of the foods. */
export type FoodNames = Readonly<Record<string, readonly string[]>>;

/** The foods as they stand beside the app, with names in English, checked when it was built. */
export interface FoodsFile {
  readonly foods: readonly Food[];
}

/** The other starter tables, likewise: a phone reads two files sooner than one, since it may do something else in between. */
export interface DishesFile extends Pick<Tables, "dishes" | "references" | "safety"> {
  /** As `parseRetentionTable` reads it. */
  readonly retention: unknown;
}

/** What only a new kitchen needs. */
export interface BeginningsFile {
  readonly kitchens: readonly { readonly name: string; readonly content: unknown }[];
  readonly shops: StarterShops;
}

let loadingTables: Promise<Tables> | undefined;
const loadingTold = new Map<Language, Promise<Tables>>();
const loadingStarter = new Map<Language, Promise<Starter>>();

/** Loads the starter tables once, and surely. */
export function loadTables(): Promise<Tables> {
  loadingTables ??= Promise.all([fetchStarter("foods.json"), fetchStarter("dishes.json")]).then(([foods, dishes]) =>
    toTables(foods as FoodsFile, dishes as DishesFile),
  );
  return loadingTables;
}

/** Loads the starter tables with foods and dishes in a language, once for each; likewise. Only what is shown or read needs them. */
export function loadTablesIn(language: Language): Promise<Tables> {
  if (language === "en") return loadTables();
  const known = loadingTold.get(language);
  if (known !== undefined) return known;
  const texts = [fetchStarter(`foods.${language}.json`), fetchStarter(`dishes.${language}.json`)] as const;
  const fresh = Promise.all([loadTables(), ...texts]).then(([tables, names, said]) => ({
    ...tables,
    foods: withGerman(tables.foods, names as FoodNames),
    dishes: layDishTexts(tables.dishes, said as DishTexts),
  }));
  loadingTold.set(language, fresh);
  return fresh;
}

/** The foods with German names, but those that have some. */
export function withGerman(foods: FoodTable, names: FoodNames): FoodTable {
  return new Map(
    [...foods].map(([id, food]) => {
      const german = food.names.german ?? names[id];
      return [id, german === undefined ? food : { ...food, names: { ...food.names, german: [...german] } }];
    }),
  );
}

/** Loads all that a new kitchen begins with in a language, likewise. */
export function loadStarter(language: Language): Promise<Starter> {
  const known = loadingStarter.get(language);
  if (known !== undefined) return known;
  const fresh = Promise.all([loadTablesIn(language), loadBeginnings(language)]).then(([tables, beginnings]) => ({
    tables,
    ...beginnings,
  }));
  loadingStarter.set(language, fresh);
  return fresh;
}

async function loadBeginnings(language: Language): Promise<BeginningsFile> {
  if (language === "en") return (await fetchStarter("beginnings.json")) as BeginningsFile;
  const files = await Promise.all([fetchStarter("beginnings.json"), fetchStarter(`beginnings.${language}.json`)]);
  return layPhrases(files[0] as BeginningsFile, files[1] as Phrases);
}

/** The tables of their files. Asking it what cooking leaves throws where the retention factors are none, which the build has checked. */
export function toTables({ foods }: FoodsFile, { retention, ...others }: DishesFile): Tables {
  let factors: RetentionTable | undefined;
  // Read when they are first asked for, which few screens do.
  const retain: Tables["retain"] = (raw, code) => {
    factors ??= readFactors(retention);
    return applyRetention(raw, code, factors);
  };
  return { ...others, foods: new Map(foods.map((food) => [food.id, food])), retain };
}

function readFactors(retention: unknown): RetentionTable {
  const read = parseRetentionTable(retention);
  if (!read.ok) throw new Error(`retention factors: ${JSON.stringify(read.issues.slice(0, 3))}`);
  return read.value;
}
