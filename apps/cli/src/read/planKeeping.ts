import { existsSync, readFileSync, realpathSync, rmSync } from "node:fs";
import { basename, resolve } from "node:path";
import { rememberMatch } from "@halfloaf/reading";
import type { FoodTable, OwnFoods } from "halfloaf/food";
import type { Tables } from "halfloaf/kitchen";
import { latestPrices, type Pack } from "halfloaf/price";
import { findKitchenFaults } from "../input/findKitchenFaults.ts";
import type { OpenKitchen } from "../input/openKitchen.ts";
import { besideKitchen, layOwnFoods, openOwnFoods, placeOwnFoods } from "../input/ownFoodsFile.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import { toJsonText } from "../output/harmless.ts";
import { writeWhole } from "../output/writeWhole.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { quote } from "../words/valueWords.ts";
import { findDishPlace } from "./dish/findDishPlace.ts";
import { toDishText } from "./dish/toDishText.ts";
import type { Findings } from "./FileReading.ts";
import { openMatches } from "./MatchesFile.ts";

/** A file that is to be written, and what is then in it, for people. */
export interface ToWrite {
  readonly path: string;
  readonly text: string;
  readonly what: string;
}

/**
 * The files that keep what was found: the kitchen's file and those beside it, or one for each dish where no kitchen is
 * named. Everything is checked; nothing is written yet.
 */
export function planKeeping(
  findings: Findings,
  opened: OpenKitchen | undefined,
  tables: Tables,
  cwd: string,
): Found<readonly ToWrite[]> {
  const ids = findings.dishes.map(({ id }) => id);
  const twice = ids.find((id, at) => ids.indexOf(id) !== at);
  if (twice !== undefined) return refuse(tellTwice(twice));
  return opened === undefined ? toDishFiles(findings, tables, cwd) : toKitchenFiles(findings, opened, tables);
}

/** Writes all files or none: each whole, and where one can't be written those before it go back to what they were. */
export function writeAll(files: readonly ToWrite[]): Found<readonly ToWrite[]> {
  const before = files.map(({ path }) => (existsSync(path) ? readFileSync(path, "utf8") : undefined));
  for (const [at, { path, text }] of files.entries()) {
    const trouble = writeWhole(text, path);
    if (trouble === undefined) continue;
    for (const [earlier, { path: written }] of files.slice(0, at).entries()) putBack(written, before[earlier]);
    return refuse(tellUnwritten(path, trouble));
  }
  return { ok: true, value: files };
}

function putBack(path: string, was: string | undefined): void {
  if (was === undefined) rmSync(path, { force: true });
  else writeWhole(was, path);
}

function toDishFiles(findings: Findings, tables: Tables, cwd: string): Found<readonly ToWrite[]> {
  const { dishes, ...others } = findings;
  if (Object.values(others).some((list) => list.length > 0)) return refuse(tellNoKitchen());
  const files: ToWrite[] = [];
  for (const dish of dishes) {
    const name = `halfloaf-dish-${dish.id}.json`;
    const place = findDishPlace(name, cwd);
    if (!place.ok) return place;
    files.push({ path: place.value, text: `${toDishText(dish, tables, "british")}\n`, what: `the dish ${dish.id}` });
  }
  return { ok: true, value: files };
}

function toKitchenFiles(findings: Findings, { file, kitchen }: OpenKitchen, tables: Tables): Found<readonly ToWrite[]> {
  if (file === undefined) return refuse(tellDemo());
  const path = realpathSync(file);
  const own = mergeFoods(findings, placeOwnFoods(file), tables.foods);
  if (!own.ok) return own;
  const changed = changeKitchen(path, findings, kitchen.packs);
  if (!changed.ok) return changed;
  const issues = findKitchenFaults(changed.value.content, { ...tables, foods: own.value.foods });
  if (issues.length > 0) return { ok: false, faults: issues.map((issue) => tellIssue(issue, changed.value.content)) };
  const matches = mergeMatches(findings, besideKitchen("matches", file));
  if (!matches.ok) return matches;
  return { ok: true, value: [...own.value.files, ...changed.value.files, ...matches.value] };
}

/** The file of own foods with what was found in place of what stood there of the same foods. */
function mergeFoods(
  { foods, overrides }: Findings,
  path: string,
  starter: FoodTable,
): Found<{ readonly foods: FoodTable; readonly files: ToWrite[] }> {
  const open = openOwnFoods(path);
  if (!open.ok) return open;
  const own: OwnFoods = {
    ...open.value,
    foods: [...open.value.foods.filter(({ id }) => !foods.some((each) => each.id === id)), ...foods],
    overrides: [
      ...open.value.overrides.filter(({ food }) => !overrides.some((each) => each.food === food)),
      ...overrides,
    ],
  };
  const laid = layOwnFoods(starter, own);
  if (!laid.ok) return laid;
  const what = [...foods.map(({ id }) => id), ...overrides.map(({ food }) => `figures of ${food}`)].join(", ");
  return {
    ok: true,
    value: { foods: laid.value, files: what === "" ? [] : [{ path, text: `${toJsonText(own)}\n`, what }] },
  };
}

/** The kitchen's file as it stands, with dishes, new packs and prices put in; whatever else is in it stays as it is. */
function changeKitchen(
  path: string,
  findings: Findings,
  packs: readonly Pack[],
): Found<{ readonly content: unknown; readonly files: ToWrite[] }> {
  const read = readJsonFile(path, "/");
  if (!read.ok) return read;
  const content = read.value.content as Record<string, readonly { readonly id: string }[] | undefined>;
  const priced = pricePacks(packs, findings);
  const dishIds = new Set(findings.dishes.map(({ id }) => id));
  const { dishes, newPacks } = findings;
  const what = [
    ...dishes.map(({ id }) => `the dish ${id}`),
    ...(priced.size === 0 ? [] : [`${priced.size} ${priced.size === 1 ? "price" : "prices"}`]),
    ...newPacks.map(({ id }) => `the new pack ${id}`),
  ].join(", ");
  if (what === "") return { ok: true, value: { content, files: [] } };
  const changed = {
    ...content,
    packs: [...(content.packs ?? []).map((pack) => priced.get(pack.id) ?? pack), ...newPacks],
    ...(dishes.length > 0 && { dishes: [...(content.dishes ?? []).filter(({ id }) => !dishIds.has(id)), ...dishes] }),
  };
  return { ok: true, value: { content: changed, files: [{ path, text: `${toJsonText(changed)}\n`, what }] } };
}

/** The packs whose price was seen anew, at that price; one that was seen later elsewhere stays as it is. */
function pricePacks(packs: readonly Pack[], { observations }: Findings): Map<string, Pack> {
  const days = [...observations.map(({ seen }) => seen.on), ...packs.flatMap(({ seen }) => seen?.on ?? [])].sort();
  const last = days.at(-1);
  if (last === undefined) return new Map();
  const observed = new Set(observations.map(({ pack }) => pack));
  const prices = latestPrices(packs, observations, last);
  return new Map(
    packs.flatMap((pack) => {
      const now = prices.get(pack.id)?.pack;
      return now === undefined || now === pack || !observed.has(pack.id) ? [] : [[pack.id, now]];
    }),
  );
}

function mergeMatches({ matches }: Findings, path: string): Found<readonly ToWrite[]> {
  if (matches.length === 0) return { ok: true, value: [] };
  const open = openMatches(path);
  if (!open.ok) return open;
  const merged = matches.reduce(rememberMatch, [...open.value]);
  const content = { format: "halfloaf-matches", version: 1, matches: merged };
  return { ok: true, value: [{ path, text: `${toJsonText(content)}\n`, what: `${matches.length} remembered` }] };
}

function tellUnwritten(path: string, trouble: string): Fault {
  const name = quote(basename(resolve(path)));
  return {
    code: "keep-not-written",
    path: [],
    value: name,
    sentence: `${name} can't be written (${trouble}).`,
    remedy: "Check that you may write there and that the disk is not full.",
  };
}

function tellTwice(id: string): Fault {
  return {
    code: "dish-twice",
    path: [],
    value: quote(id),
    sentence: `Two of the dishes would go by the id ${quote(id)}.`,
    remedy: "Keep them one by one with --dish, each with a --title of its own.",
  };
}

function tellNoKitchen(): Fault {
  return {
    code: "keep-no-kitchen",
    path: [],
    sentence: "Prices and figures of foods are kept in or beside a kitchen's file, and none is named.",
    remedy: "Name it with --kitchen.",
  };
}

function tellDemo(): Fault {
  return {
    code: "keep-demo",
    path: [],
    sentence: "A demo kitchen is never written over.",
    remedy: "Copy it from data/kitchens to a file of your own and name that with --kitchen.",
  };
}
