import { existsSync, readFileSync, realpathSync, rmSync } from "node:fs";
import { basename, resolve } from "node:path";
import { type Findings, withFindings } from "@halfloaf/reading";
import { checkOwnFoods } from "halfloaf/food";
import { findKitchenFaults, type Kitchen, type Tables } from "halfloaf/kitchen";
import { latestPrices, type Pack } from "halfloaf/price";
import type { OpenKitchen } from "../input/openKitchen.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import { toJsonText } from "../output/harmless.ts";
import { writeWhole } from "../output/writeWhole.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { quote } from "../words/valueWords.ts";
import { findDishPlace } from "./dish/findDishPlace.ts";
import { toDishText } from "./dish/toDishText.ts";
import { tellFindings } from "./tellFindings.ts";

/** A file that is to be written, and what is then in it, for people. */
export interface ToWrite {
  readonly path: string;
  readonly text: string;
  readonly what: string;
}

/**
 * The files that keep what was found: the kitchen's file, or one for each dish where no kitchen is named. Everything is
 * checked; nothing is written yet.
 */
export function planKeeping(
  findings: Findings,
  opened: OpenKitchen | undefined,
  starter: Tables,
  cwd: string,
): Found<readonly ToWrite[]> {
  const faults = findFoundFaults(findings, starter);
  if (faults.length > 0) return { ok: false, faults };
  return opened === undefined ? toDishFiles(findings, starter, cwd) : toKitchenFile(findings, opened, starter);
}

/** What keeps findings from being kept wherever that is: two dishes of one id, own foods that have the id of others. */
export function findFoundFaults({ dishes, foods }: Findings, starter: Tables): readonly Fault[] {
  const ids = dishes.map(({ id }) => id);
  const twice = ids.find((id, at) => ids.indexOf(id) !== at);
  const issues = checkOwnFoods(starter.foods, { foods: [...foods], overrides: [] });
  return [...(twice === undefined ? [] : [tellTwice(twice)]), ...issues.map((issue) => tellIssue(issue, { foods }))];
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

/** The kitchen's file as it stands, with what was found put in; whatever else is in it stays as it is. */
function toKitchenFile(findings: Findings, { file, kitchen }: OpenKitchen, starter: Tables): Found<readonly ToWrite[]> {
  if (file === undefined) return refuse(tellDemo());
  const path = realpathSync(file);
  const read = readJsonFile(path, "/");
  if (!read.ok) return read;
  const content = read.value.content as Partial<Record<keyof Kitchen, unknown>>;
  const priced = pricePacks(kitchen.packs, findings);
  const what = tellFindings(findings, priced.size);
  if (what === "") return { ok: true, value: [] };
  const asWritten = <Key extends "packs" | "foods" | "overrides" | "dishes">(key: Key) =>
    (content[key] ?? []) as Kitchen[Key];
  const lists = withFindings(
    {
      packs: asWritten("packs").map((pack) => priced.get(pack.id) ?? pack),
      foods: asWritten("foods"),
      overrides: asWritten("overrides"),
      dishes: asWritten("dishes"),
    },
    findings,
  );
  const filled = Object.entries(lists).filter(([key, list]) => list.length > 0 || key in content);
  const changed = { ...content, ...Object.fromEntries(filled) };
  const issues = findKitchenFaults(changed, starter);
  if (issues.length > 0) return { ok: false, faults: issues.map((issue) => tellIssue(issue, changed)) };
  return { ok: true, value: [{ path, text: `${toJsonText(changed)}\n`, what }] };
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
    sentence: "Prices, foods and figures of foods are kept in a kitchen, and none is named.",
    remedy: "Name its file or folder with --kitchen.",
  };
}

function tellDemo(): Fault {
  return {
    code: "keep-demo",
    path: [],
    sentence: "A demo kitchen is never written over.",
    remedy:
      'Copy it from data/kitchens to a file of your own, or keep it in a folder with "halfloaf settle", and name that with --kitchen.',
  };
}
