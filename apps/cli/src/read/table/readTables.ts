import {
  changesOf,
  compareFood,
  findNumberedFoods,
  findOfficialFoods,
  NO_FINDINGS,
  type OfficialTable,
  type ReadingWatch,
  readFoodDataCsv,
  readFoodDataJson,
  readMappedTable,
  replaceFigures,
  type TableMapping,
  type TableReading,
} from "@halfloaf/reading";
import { type English, type Food, type FoodOverride, type FoodTable, foodName } from "halfloaf/food";
import { type Fault, type Found, refuse } from "../../words/Fault.ts";
import { tellMisfit } from "../../words/readWords.ts";
import { quote } from "../../words/valueWords.ts";
import { findFoodNamed } from "../dish/settleDish.ts";
import type { FileReading } from "../FileReading.ts";
import { findDownload, folderOf, type Input } from "../openInput.ts";
import type { FoodBeside, PartOf } from "../ReadReport.ts";
import type { ReadWish } from "../ReadWish.ts";

/** What a table is read with. */
export interface TableContext {
  readonly foods: FoodTable;
  readonly english: English;
  readonly mapping?: TableMapping;
  readonly watch: ReadingWatch;
}

/** An official composition table: the foods of ours it may be compared with, and what taking its figures would change. */
export async function readTables(input: Input, wish: ReadWish, context: TableContext): Promise<Found<FileReading>> {
  const reading = await readWhole(input, context);
  if (reading === undefined) return refuse(tellNoDownload(input.name));
  if (reading.outcome === "stopped") return refuse(tellStopped(input.name));
  if (reading.outcome !== "read") return { ok: false, faults: reading.issues.map(tellTableFault) };
  const { table, counts, issues, issueCount } = reading;
  const taken = takeFigures(table, wish, context);
  if (!taken.ok) return taken;
  const offered = wish.near === undefined ? offerByNumber(table, context) : offerNear(table, wish.near, context);
  if (!Array.isArray(offered)) return offered;
  const part: PartOf<"table"> = {
    kind: "table",
    file: input.name,
    title: table.title,
    counts: { ...counts },
    ...(wish.near !== undefined && { near: wish.near }),
    issueCount,
    issues: issues.map(({ code, path, expected, received }) => ({ code, path: [...path], expected, received })),
    offered,
    taken: taken.value.map(({ beside }) => beside),
  };
  const overrides = taken.value.map(({ override }) => override);
  return { ok: true, value: { part, findings: { ...NO_FINDINGS, overrides }, open: [] } };
}

async function readWhole(input: Input, { mapping, watch }: TableContext): Promise<TableReading | undefined> {
  if (input.kind === "file" && mapping !== undefined) return readMappedTable(input.source(), mapping, watch);
  if (input.kind === "file" && /^\s*\{/.test(input.head)) return readFoodDataJson(input.source(), watch);
  const folder = input.kind === "folder" ? input.path : input.path === undefined ? undefined : folderOf(input.path);
  const files = folder === undefined ? undefined : findDownload(folder);
  return files === undefined ? undefined : readFoodDataCsv(files, watch);
}

interface Taken {
  readonly beside: FoodBeside;
  readonly override: FoodOverride;
}

/** What `--food "NUMBER=ID"` takes: the figures of a food of the table for one of ours. */
function takeFigures(table: OfficialTable, wish: ReadWish, { foods, english }: TableContext): Found<readonly Taken[]> {
  const faults: Fault[] = [];
  const taken: Taken[] = [];
  for (const { of, value } of wish.foods) {
    const official = table.foods.get(of);
    const known = findFoodNamed(value, { foods });
    if (!known.ok) faults.push(...known.faults);
    if (official === undefined) faults.push(tellNoOfficial(of, table.title));
    if (official === undefined || !known.ok) continue;
    const comparison = compareFood(foods.get(known.value.food) as Food, official);
    const { override, contradictions } = replaceFigures(comparison, wish.on === undefined ? {} : { chosenOn: wish.on });
    const beside: FoodBeside = {
      food: nameOf(comparison.food, english),
      from: override.from,
      changes: changesOf(comparison, override),
      contradictions: contradictions.map(({ code }) => code),
    };
    taken.push({ override, beside });
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: taken };
}

type Offered = PartOf<"table">["offered"];

/** Foods of ours whose source names the number of a food of the table. */
function offerByNumber(table: OfficialTable, { foods, english }: TableContext): Offered {
  return findNumberedFoods(foods, table).map(({ food, official }) => {
    const { id, name } = official;
    return { food: nameOf(food, english), official: { id, name }, by: "number" as const, nearness: 1 };
  });
}

function offerNear(
  table: OfficialTable,
  id: string,
  { foods, english }: TableContext,
): Offered | ReturnType<typeof refuse> {
  const known = findFoodNamed(id, { foods });
  if (!known.ok) return known;
  const food = foods.get(id) as Food;
  return findOfficialFoods(food, table).map(({ official, by, nearness }) => ({
    food: nameOf(food, english),
    official: { id: official.id, name: official.name },
    by,
    nearness: Math.round(nearness * 100) / 100,
  }));
}

function nameOf(food: Food, english: English): { id: string; name: string } {
  return { id: food.id, name: foodName(food, english) ?? food.id };
}

function tellTableFault(issue: Parameters<typeof tellMisfit>[0] & { readonly code: string }): Fault {
  const line = typeof issue.path[1] === "number" ? issue.path[1] : undefined;
  return {
    code: issue.code,
    path: [],
    ...(line !== undefined && { line }),
    sentence: tellMisfit(issue),
    remedy: "Check that it is the file you mean, and its mapping where it has one.",
  };
}

/** What is told where Ctrl-C ended a reading. */
export function tellStopped(name: string): Fault {
  return {
    code: "stopped",
    path: [],
    sentence: `The reading of ${quote(name)} was stopped.`,
    remedy: "Read it again to its end.",
  };
}

function tellNoDownload(name: string): Fault {
  return {
    code: "download-missing",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} holds no food.csv, nutrient.csv and food_nutrient.csv side by side.`,
    remedy:
      "Name the folder of an unpacked FoodData Central download in CSV, its JSON file, or any CSV with --mapping.",
  };
}

function tellNoOfficial(id: string, title: string): Fault {
  return {
    code: "official-unknown",
    path: [],
    value: quote(id),
    sentence: `${quote(title)} has no food with the number ${quote(id)}.`,
    remedy: 'Find its number with --near and the id of one of our foods; write it as --food "NUMBER=ID".',
  };
}
