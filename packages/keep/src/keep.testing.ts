import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { type Kitchen, parseKitchen, parseTables } from "halfloaf/kitchen";
import { type EditedKitchen, type EventBody, fromKitchen } from "halfloaf/kitchen/record";
import type { ChunkStore } from "./chunks/ChunkStore.ts";
import { KeptKitchen, type OpeningOptions } from "./KeptKitchen.ts";

const tables = parseTables(loadStarterTables());
if (!tables.ok) throw new Error(JSON.stringify(tables.issues.slice(0, 3)));
export const foods = tables.value.foods;

/** A demo kitchen by the name of its file. */
export function readDemoKitchen(name: string): Kitchen {
  const found = loadDemoKitchens().find((each) => each.name.startsWith(name));
  const read = parseKitchen(found?.content);
  if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 3)));
  return read.value;
}

/** The edited part of a demo kitchen. */
export function demoKitchen(name = "port-ansel"): EditedKitchen {
  return fromKitchen(readDemoKitchen(name)).kitchen;
}

/** Opens a store whose clock gains a millisecond a look. */
export async function openKept(store: ChunkStore, over: Partial<OpeningOptions> = {}): Promise<KeptKitchen> {
  let clock = 1_000;
  const opened = await KeptKitchen.open(store, { foods, device: "phone", now: () => clock++, ...over });
  if ("ok" in opened) throw new Error(`${opened.reason}: ${opened.detail}`);
  return opened;
}

/** A pack of oats that came home. */
export function boughtOats(lot: string, on = "2026-03-02"): EventBody {
  return { kind: "bought", on, lot, food: "oats-rolled", place: "dry-store", massG: 500, costMinor: 85 };
}
