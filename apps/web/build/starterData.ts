import { createHash } from "node:crypto";
import {
  loadBeginningPhrasesDe,
  loadDemoKitchens,
  loadDishTextsDe,
  loadStarterShops,
  loadStarterTables,
} from "@halfloaf/data";
import { DishTexts } from "halfloaf/dish";
import { parseTables } from "halfloaf/kitchen";
import { parseWith } from "halfloaf/quantity";
import type { Plugin } from "vite";
import type { StarterName } from "../src/kitchen/fetchStarter.ts";
import type { BeginningsFile, DishesFile, FoodNames, FoodsFile } from "../src/kitchen/loadStarter.ts";

const FILES: Readonly<Record<StarterName, () => string>> = {
  "foods.json": () => JSON.stringify(toTableFiles().foods),
  "foods.de.json": () => JSON.stringify(toTableFiles().namesDe),
  "dishes.json": () => JSON.stringify(toTableFiles().dishes),
  "dishes.de.json": () => JSON.stringify(toTextsDe()),
  "beginnings.json": writeBeginnings,
  "beginnings.de.json": () => JSON.stringify(loadBeginningPhrasesDe()),
};

/**
 * Puts the starter tables beside the app as two files, what their dishes say and their foods are called in German as two more that are read
 * where German is spoken (names of foods also where foods are searched for), the demo kitchens and the shops of a new kitchen as one
 * that only a new kitchen needs, with its words in German. They are checked here, once and for all; a fault ends the build.
 */
export function starterData(): Plugin {
  return {
    name: "halfloaf-starter-data",
    // The tables have no name of their content as scripts have, so that the app is told what they are.
    config: () => ({ define: { "import.meta.env.STARTER_TABLES": JSON.stringify(digestTables()) } }),
    configureServer(server) {
      for (const [name, write] of Object.entries(FILES))
        server.middlewares.use(`/${name}`, (_, response) => {
          response.setHeader("Content-Type", "application/json").end(write());
        });
    },
    generateBundle() {
      for (const [fileName, write] of Object.entries(FILES))
        this.emitFile({ type: "asset", fileName, source: write() });
    },
  };
}

/** The tables as the app reads them: checked already, which takes longer on a phone than all else of a start. */
export function toTableFiles(): {
  readonly foods: FoodsFile;
  readonly namesDe: FoodNames;
  readonly dishes: DishesFile;
} {
  const { retention, ...files } = loadStarterTables();
  const read = parseTables({ retention, ...files });
  if (!read.ok) throw new Error(`the starter tables are faulty: ${JSON.stringify(read.issues.slice(0, 5))}`);
  const { foods, dishes, references, safety } = read.value;
  const all = [...foods.values()];
  return {
    foods: { foods: all.map(({ names: { german: _, ...names }, ...food }) => ({ ...food, names })) },
    namesDe: Object.fromEntries(all.map(({ id, names: { german = [] } }) => [id, german])),
    dishes: { dishes, retention, references, safety },
  };
}

function toTextsDe(): DishTexts {
  const read = parseWith(DishTexts, loadDishTextsDe());
  if (!read.ok) throw new Error(`the texts of the dishes are faulty: ${JSON.stringify(read.issues.slice(0, 5))}`);
  return read.value;
}

function digestTables(): string {
  return createHash("sha256")
    .update(JSON.stringify([toTableFiles(), toTextsDe()]))
    .digest("hex")
    .slice(0, 16);
}

function writeBeginnings(): string {
  return JSON.stringify({ kitchens: loadDemoKitchens(), shops: loadStarterShops() } satisfies {
    [Key in keyof BeginningsFile]: unknown;
  });
}
