import {
  type FileSource,
  findNumberedFoods,
  findOfficialFoods,
  foodDataFiles,
  type OfficialFood,
  type OfficialTable,
  type ReadingProgress,
  readFoodDataCsv,
  readFoodDataJson,
  readMappedTable,
  type TableCounts,
  type TableMapping,
  type TableReading,
} from "@halfloaf/reading";
import type { Food, FoodTable } from "halfloaf/food";
import type { Issue } from "halfloaf/quantity";

/** What a table is read from: a text by its mapping, or the files of a download. */
export type TableSource =
  | { readonly kind: "mapped"; readonly name: string; readonly text: string; readonly mapping: TableMapping }
  | { readonly kind: "json"; readonly file: Blob; readonly name: string }
  | { readonly kind: "csv"; readonly files: readonly File[] };

/** A food of the table, to be chosen. */
export interface OfficialOffer {
  readonly id: string;
  readonly name: string;
}

/** What the reading of a table came to; the table itself stays at the desk. */
export type TableRead = { readonly issues: readonly Issue[]; readonly issueCount: number } & (
  | {
      readonly outcome: "read";
      readonly title: string;
      readonly counts: TableCounts;
      /** Foods of ours that name a food of the table by its number: ours to theirs. */
      readonly numbered: readonly (readonly [ours: string, theirs: string])[];
    }
  | { readonly outcome: "stopped" | "failed" }
);

/** So many foods of a table are offered to a search. */
const MOST_FOUND = 20;

/** Holds a composition table, away from the page: it may have thousands of foods. */
export class TableDesk {
  #table: OfficialTable | undefined;

  async read(
    source: TableSource,
    foods: FoodTable,
    onProgress: (progress: ReadingProgress) => void,
  ): Promise<TableRead> {
    const reading = await readWhole(source, onProgress);
    const { issues, issueCount } = reading;
    this.#table = reading.outcome === "read" ? reading.table : undefined;
    if (reading.outcome !== "read") return { outcome: reading.outcome, issues, issueCount };
    const { table, counts } = reading;
    const numbered = findNumberedFoods(foods, table).map(({ food, official }) => [food.id, official.id] as const);
    return { outcome: "read", title: table.title, counts, numbered, issues, issueCount };
  }

  /** The likeliest foods of the table for one of ours. */
  near(food: Food): OfficialOffer[] {
    if (this.#table === undefined) return [];
    return findOfficialFoods(food, this.#table).map(({ official }) => toOffer(official));
  }

  /** Foods of the table in whose names all the words stand, the shortest names first. */
  search(text: string): OfficialOffer[] {
    const words = text.toLowerCase().split(/\s+/);
    return [...(this.#table?.foods.values() ?? [])]
      .filter(({ name }) => words.every((word) => name.toLowerCase().includes(word)))
      .sort((a, b) => a.name.length - b.name.length)
      .slice(0, MOST_FOUND)
      .map(toOffer);
  }

  food(id: string): OfficialFood | undefined {
    return this.#table?.foods.get(id);
  }
}

function toOffer({ id, name }: OfficialFood): OfficialOffer {
  return { id, name };
}

async function readWhole(source: TableSource, onProgress: (progress: ReadingProgress) => void): Promise<TableReading> {
  const watch = { onProgress };
  if (source.kind === "mapped") return readMappedTable(toPieces(source.name, source.text), source.mapping, watch);
  if (source.kind === "json") return readFoodDataJson(toSource(source.name, source.file), watch);
  const files = foodDataFiles((name) => {
    const file = source.files.find((each) => each.name === name);
    return file && toSource(name, file);
  });
  return files === undefined ? { outcome: "failed", issues: [], issueCount: 0 } : readFoodDataCsv(files, watch);
}

/** UTF-16 units read at once, so that progress is told in between. */
const PIECE = 1 << 16;

function toPieces(name: string, text: string): FileSource {
  return {
    name,
    pieces: (async function* () {
      for (let at = 0; at < text.length; at += PIECE) yield text.slice(at, at + PIECE);
    })(),
  };
}

/** A file piece by piece: it may be larger than what can be held. */
function toSource(name: string, file: Blob): FileSource {
  return {
    name,
    pieces: (async function* () {
      const reader = file.stream().getReader();
      for (;;) {
        const { done, value } = await reader.read();
        if (done) return;
        yield value;
      }
    })(),
  };
}
