import { applyRetention, parseRetentionTable } from "halfloaf/dish";
import type { Food } from "halfloaf/food";
import type { Tables } from "halfloaf/kitchen";
import type { Pack, Shop } from "halfloaf/price";

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

/** The starter tables as they stand beside the app, checked when it was built. */
export interface TablesFile extends Pick<Tables, "dishes" | "references" | "safety"> {
  readonly foods: readonly Food[];
  /** As `parseRetentionTable` reads it. */
  readonly retention: unknown;
}

/** What only a new kitchen needs. */
export interface BeginningsFile {
  readonly kitchens: readonly { readonly name: string; readonly content: unknown }[];
  readonly shops: StarterShops;
}

let loadingTables: Promise<Tables> | undefined;
let loadingStarter: Promise<Starter> | undefined;

/** Loads the starter tables once; a failure is not remembered, so that it can be tried again. */
export function loadTables(): Promise<Tables> {
  loadingTables ??= fetchJson<TablesFile>("tables.json")
    .then(toTables)
    .catch((error: unknown) => {
      loadingTables = undefined;
      throw error;
    });
  return loadingTables;
}

/** Loads all that a new kitchen begins with, likewise. */
export function loadStarter(): Promise<Starter> {
  loadingStarter ??= Promise.all([loadTables(), fetchJson<BeginningsFile>("beginnings.json")])
    .then(([tables, beginnings]) => ({ tables, ...beginnings }))
    .catch((error: unknown) => {
      loadingStarter = undefined;
      throw error;
    });
  return loadingStarter;
}

/** The tables of their file. Throws where the retention factors are none, which ends the build. */
export function toTables({ foods, retention, ...others }: TablesFile): Tables {
  const read = parseRetentionTable(retention);
  if (!read.ok) throw new Error(`retention factors: ${JSON.stringify(read.issues.slice(0, 3))}`);
  const retain: Tables["retain"] = (raw, code) => applyRetention(raw, code, read.value);
  return { ...others, foods: new Map(foods.map((food) => [food.id, food])), retain };
}

async function fetchJson<File>(name: string): Promise<File> {
  const response = await fetch(`/${name}`);
  if (!response.ok) throw new Error(`${name}: ${response.status}`);
  return (await response.json()) as File;
}
