import { parseTables, type TableFiles, type Tables } from "halfloaf/kitchen";

/** The tables that come with the app, and the kitchens to try it with. */
export interface Starter {
  readonly tables: Tables;
  readonly kitchens: readonly { readonly name: string; readonly content: unknown }[];
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
  const { tables, kitchens } = (await response.json()) as { tables: TableFiles; kitchens: Starter["kitchens"] };
  const read = parseTables(tables);
  if (!read.ok) throw new Error(`starter.json: ${JSON.stringify(read.issues.slice(0, 3))}`);
  return { tables: read.value, kitchens };
}
