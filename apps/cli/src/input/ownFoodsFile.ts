import { existsSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { type FoodTable, NO_OWN_FOODS, type OwnFoods, parseOwnFoods, withOwnFoods } from "halfloaf/food";
import { toFileWord } from "../week/saveWeek.ts";
import type { Found } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { readJsonFile } from "./readJsonFile.ts";

/** The file beside a kitchen's file that holds its own foods and the figures it takes from elsewhere. */
export function placeOwnFoods(kitchenFile: string): string {
  return besideKitchen("foods", kitchenFile);
}

/** The path of a file of some kind beside a kitchen's file, called after it. */
export function besideKitchen(kind: string, kitchenFile: string): string {
  const word = toFileWord(basename(kitchenFile).replace(/\.json$/i, ""));
  return join(dirname(kitchenFile), `halfloaf-${kind}-${word}.json`);
}

/** The own foods in a file; none where there is no file. */
export function openOwnFoods(file: string): Found<OwnFoods> {
  if (!existsSync(file)) return { ok: true, value: NO_OWN_FOODS };
  const read = readJsonFile(file, dirname(file));
  if (!read.ok) return read;
  const parsed = parseOwnFoods(read.value.content);
  if (parsed.ok) return { ok: true, value: parsed.value };
  return { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, read.value.content)) };
}

/** A food table with own foods laid over it, or what of them does not fit. */
export function layOwnFoods(foods: FoodTable, own: OwnFoods): Found<FoodTable> {
  const laid = withOwnFoods(foods, own);
  if (laid.ok) return { ok: true, value: laid.table };
  return { ok: false, faults: laid.issues.map((issue) => tellIssue(issue, own)) };
}
