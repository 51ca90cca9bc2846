import { realpathSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import type { WeekPlan } from "halfloaf/kitchen";
import { readJsonFile } from "../input/readJsonFile.ts";
import { toJsonText } from "../output/harmless.ts";
import { writeWhole } from "../output/writeWhole.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { quote, valueAt } from "../words/valueWords.ts";

/** The usual name of a week's file: kitchen and first day, in signs that every disk takes. */
export function nameWeekFile(kitchen: string, from: string): string {
  return `halfloaf-week-${toFileWord(kitchen)}-${from}.json`;
}

/** The name of a kitchen as a word in the name of a file, in signs that every disk takes. */
export function toFileWord(kitchen: string): string {
  const plain = kitchen
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return plain === "" ? "kitchen" : plain;
}

/**
 * The path a week may be written to. Refused are a folder that is not there, and whatever stands there already and is
 * not a week of ours. Nothing is touched.
 */
export function findPlace(name: string, cwd: string): Found<string> {
  const path = resolve(cwd, name);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind !== undefined) {
    const read = kind.isFile() ? readJsonFile(name, cwd) : undefined;
    const isWeek = read?.ok === true && valueAt(read.value.content, ["format"]) === "halfloaf-week";
    return isWeek ? { ok: true, value: realpathSync(path) } : refuse(tellTaken(name));
  }
  if (statSync(dirname(path), { throwIfNoEntry: false })?.isDirectory()) return { ok: true, value: path };
  return refuse({
    code: "out-no-folder",
    path: [],
    value: quote(name),
    sentence: `The folder of ${quote(name)} is not there.`,
    remedy: "Make it first, or name another file with --out.",
  });
}

/** Writes a plan whole or not at all: a crash half-way leaves what was there before. */
export function saveWeek(plan: WeekPlan, path: string, name: string): Found<string> {
  const trouble = writeWhole(`${toJsonText(plan)}\n`, path);
  if (trouble === undefined) return { ok: true, value: path };
  return refuse({
    code: "out-not-written",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} can't be written (${trouble}).`,
    remedy: "Check that you may write there and that the disk is not full, or name another file with --out.",
  });
}

function tellTaken(name: string): Fault {
  return {
    code: "out-taken",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} is there already and is not a week of Halfloaf; it is left as it is.`,
    remedy: "Name another file with --out, or move that one away.",
  };
}
