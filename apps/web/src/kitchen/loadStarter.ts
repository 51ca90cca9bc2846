import { parseTables, type TableFiles, type Tables } from "halfloaf/kitchen";
import type { Pack, Shop } from "halfloaf/price";

/** The tables that come with the app, and the kitchens to try it with. */
export interface Starter {
  readonly tables: Tables;
  readonly kitchens: readonly { readonly name: string; readonly content: unknown }[];
  readonly shops: StarterShops;
}

/** What a new kitchen begins with, all of it estimated; money in minor units. */
export interface StarterShops {
  readonly shops: readonly Shop[];
  readonly packs: readonly Pack[];
  /** What a cupboard often holds, with the grams there may be; `usual` is there in most. */
  readonly cupboard: readonly { readonly food: string; readonly massG: number; readonly usual?: true }[];
}

let loading: Promise<Starter> | undefined;

/** Loads the starter data once; a failure is not remembered, so that it can be tried again. */
export function loadStarter(): Promise<Starter> {
  loading ??= fetchStarter().catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function fetchStarter(): Promise<Starter> {
  const response = await fetch("/starter.json");
  if (!response.ok) throw new Error(`starter.json: ${response.status}`);
  const { tables, ...others } = (await response.json()) as Omit<Starter, "tables"> & { tables: TableFiles };
  const read = parseTables(tables);
  if (!read.ok) throw new Error(`starter.json: ${JSON.stringify(read.issues.slice(0, 3))}`);
  return { tables: read.value, ...others };
}
