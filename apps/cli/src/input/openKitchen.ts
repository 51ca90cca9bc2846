import { existsSync } from "node:fs";
import { basename, resolve } from "node:path";
import { loadDemoKitchens } from "@halfloaf/data";
import { findKitchenFaults, type Kitchen, parseKitchen, type Tables, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import type { Issue } from "halfloaf/quantity";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { findNearest } from "../words/nearest.ts";
import { quote, valueAt } from "../words/valueWords.ts";
import { findLines } from "./findLines.ts";
import { readJsonFile } from "./readJsonFile.ts";

/** The demo kitchen that is taken where none is named. */
export const USUAL_KITCHEN = "port-ansel";

const FORMAT = "halfloaf-kitchen";
const VERSION = 1;

/** A kitchen that may be planned for, with everything it is planned with. */
export interface OpenKitchen {
  /** The demo's name, or the file's without its ending. */
  readonly name: string;
  /** Path of its file; absent for a demo. */
  readonly file?: string;
  readonly kitchen: Kitchen;
  /** The starter tables with what the kitchen has of its own. */
  readonly tables: Tables;
}

/**
 * The kitchen of a name: first the demo called so, else the file, taken from the folder `cwd`. Whatever is wrong with it
 * comes back at once, in words.
 */
export function openKitchen(name: string, cwd: string, starter: Tables): Found<OpenKitchen> {
  const source = findSource(name, cwd);
  if (!source.ok) return source;
  const { content, text, file } = source.value;
  const stranger = findStranger(content);
  if (stranger !== undefined) return refuse(stranger);
  const issues = findKitchenFaults(content, starter);
  if (issues.length > 0) return { ok: false, faults: tellIssues(issues, content, text, starter) };
  const parsed = parseKitchen(content);
  if (!parsed.ok) throw new Error("a kitchen without faults could not be read");
  const kitchen = parsed.value;
  const tables = withOwnFoodsAndDishes(starter, kitchen);
  return { ok: true, value: { name: source.value.name, ...(file !== undefined && { file }), kitchen, tables } };
}

interface Source {
  readonly name: string;
  readonly content: unknown;
  /** Absent for a demo, whose faults have no lines. */
  readonly text?: string;
  /** Path of the file; absent for a demo. */
  readonly file?: string;
}

function findSource(name: string, cwd: string): Found<Source> {
  const demos = loadDemoKitchens();
  const demo = demos.find((each) => each.name === name);
  if (demo !== undefined) return { ok: true, value: demo };
  const isPath = /[\\/.]/.test(name);
  if (!isPath && !existsSync(resolve(cwd, name))) return refuse(tellNoKitchen(name, demos));
  const read = readJsonFile(name, cwd);
  if (!read.ok) return read;
  const file = resolve(cwd, name);
  return { ok: true, value: { ...read.value, file, name: basename(name).replace(/\.json$/i, "") } };
}

function tellNoKitchen(name: string, demos: readonly { readonly name: string }[]): Fault {
  const names = demos.map((demo) => demo.name);
  return {
    code: "kitchen-unknown",
    path: [],
    value: quote(name),
    sentence: `There is no file and no demo kitchen ${quote(name)}.`,
    remedy: `Name a file, or one of the demo kitchens ${names.join(", ")}.`,
  };
}

/** A file that is no kitchen of a version this program knows, told before its every part is called faulty. */
function findStranger(content: unknown): Fault | undefined {
  const [format, version] = [valueAt(content, ["format"]), valueAt(content, ["version"])];
  if (format === "halfloaf-week") {
    return {
      code: "format-week",
      path: ["format"],
      value: quote(format),
      sentence: "This file holds a week's plan, not a kitchen.",
      remedy: "Name the kitchen that the week was planned for.",
    };
  }
  if (format === "halfloaf-backup" || format === "halfloaf-record") {
    const what = format === "halfloaf-backup" ? "is a backup of a kitchen" : "holds the record of a kitchen";
    return {
      code: "format-kept",
      path: ["format"],
      value: quote(format),
      sentence: `This file ${what}, with all that happened in it; it is not a kitchen to be planned as it stands.`,
      remedy: 'Bring it back into a folder with "halfloaf restore FILE --kitchen FOLDER"; it is planned from there.',
    };
  }
  if (format === FORMAT && typeof version === "number" && version > VERSION) {
    return {
      code: "version-newer",
      path: ["version"],
      value: String(version),
      sentence: `This kitchen is written in version ${version} of its format; this program reads version ${VERSION}.`,
      remedy: "Get a newer Halfloaf; changing the number would not make it readable.",
    };
  }
  return undefined;
}

/** All issues in words; those of a file in the order of its lines. */
function tellIssues(issues: readonly Issue[], content: unknown, text: string | undefined, starter: Tables): Fault[] {
  const faults = issues.map((issue) => tellIssue(issue, content, nearNames(issue, content, starter)));
  if (text === undefined) return faults;
  const lines = findLines(
    text,
    issues.map(({ path }) => path),
  );
  return faults.map((fault, at) => ({ ...fault, line: lines[at] as number })).sort((a, b) => a.line - b.line);
}

/** Names that could have been meant by one that leads nowhere, by the code of the issue. */
function nearNames({ code, received }: Issue, content: unknown, starter: Tables): Readonly<Record<string, string[]>> {
  const idsOf = (list: string): string[] => {
    const entries = valueAt(content, [list]);
    const ids = Array.isArray(entries) ? entries.map((entry) => valueAt(entry, ["id"])) : [];
    return ids.filter((id) => typeof id === "string");
  };
  const choices: Readonly<Record<string, () => Iterable<string>>> = {
    "food-unknown": () => [...starter.foods.keys(), ...idsOf("foods")],
    "shop-unknown": () => idsOf("shops"),
    "eater-unknown": () => idsOf("eaters"),
    "lot-unknown": () => idsOf("stores"),
    "dish-unknown": () => [...starter.dishes.map(({ id }) => id), ...idsOf("dishes")],
  };
  const choice = choices[code];
  return choice === undefined ? {} : { [code]: findNearest(received, choice(), 3) };
}
