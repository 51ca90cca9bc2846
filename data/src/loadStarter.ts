import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** One file of starter foods: composition rows as text, facts as read from JSON, neither checked yet. */
export interface StarterFoods {
  readonly name: string;
  readonly csv: string;
  readonly facts: unknown;
}

/** One JSON file by its name without the ending; what it holds is not checked yet. */
export interface StarterFile {
  readonly name: string;
  readonly content: unknown;
}

/** The starter foods, one entry a file, in the order of their names. Throws where a file cannot be read. */
export function loadStarterFoods(): StarterFoods[] {
  return listNames("foods", ".csv").map((name) => ({
    name,
    csv: readText("foods", `${name}.csv`),
    facts: JSON.parse(readText("foods", `${name}.json`)),
  }));
}

/** The starter dishes, one entry a file, in the order of their names. Throws where a file cannot be read. */
export function loadStarterDishes(): StarterFile[] {
  return loadFolder("dishes");
}

/**
 * What the starter dishes say in German, of all files of them, with the phrases they share; not checked yet. Throws where a file
 * cannot be read.
 */
export function loadDishTextsDe(): { readonly dishes: Readonly<Record<string, unknown>>; readonly phrases: unknown } {
  const texts = loadStarterDishes().map(({ name }) => JSON.parse(readText("dishes/de", `${name}.json`)) as object);
  return { dishes: Object.assign({}, ...texts), phrases: JSON.parse(readText("dishes/de", "phrases.json")) };
}

/** The demo kitchens, one entry a file, in the order of their names. Throws where a file cannot be read. */
export function loadDemoKitchens(): StarterFile[] {
  return loadFolder("kitchens");
}

/** Shops, packs and a cupboard for a kitchen that has none yet; all our own estimates, not checked yet. */
export function loadStarterShops(): unknown {
  return JSON.parse(readText("starter", "shops.json"));
}

/** What names, notes and labels of the demo kitchens and the starter shops are in German, by what they are in English; not checked yet. */
export function loadBeginningPhrasesDe(): unknown {
  return JSON.parse(readText("starter", "de.json"));
}

function loadFolder(folder: string): StarterFile[] {
  return listNames(folder, ".json").map((name) => ({ name, content: JSON.parse(readText(folder, `${name}.json`)) }));
}

/** Names without their ending; sorted, since the order of a folder differs between systems. */
function listNames(folder: string, ending: string): string[] {
  return readdirSync(fileURLToPath(new URL(`../${folder}/`, import.meta.url)))
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length))
    .sort();
}

function readText(folder: string, file: string): string {
  return readFileSync(new URL(`../${folder}/${file}`, import.meta.url), "utf8");
}

/** Everything a kitchen is planned with besides itself, as read from the files and not checked yet. */
export function loadStarterTables(): {
  foods: StarterFoods[];
  dishes: StarterFile[];
  retention: unknown;
  references: { nasem: unknown; efsa: unknown; who: unknown };
  safety: { coreTemperatures: unknown; keepingRules: unknown };
} {
  const json = (folder: string, name: string): unknown => JSON.parse(readText(folder, `${name}.json`));
  return {
    foods: loadStarterFoods(),
    dishes: loadStarterDishes(),
    retention: json(".", "retention"),
    references: {
      nasem: json("references", "nasem"),
      efsa: json("references", "efsa"),
      who: json("references", "who"),
    },
    safety: { coreTemperatures: json("safety", "core-temperatures"), keepingRules: json("safety", "rules") },
  };
}
