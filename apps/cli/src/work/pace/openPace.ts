import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { learnPace, type ObservedStep, type PaceOfKind } from "halfloaf/kitchen";
import { parseWith } from "halfloaf/quantity";
import { readJsonFile } from "../../input/readJsonFile.ts";
import { toFileWord } from "../../week/saveWeek.ts";
import { type Fault, type Found, refuse } from "../../words/Fault.ts";
import { tellIssue } from "../../words/issueWords.ts";
import { quote, valueAt } from "../../words/valueWords.ts";
import { PaceFile } from "./PaceFile.ts";

/** What is known of the pace of a kitchen's cook, and the file it is kept in. */
export interface OpenPace {
  readonly file: string;
  readonly isThere: boolean;
  readonly observed: readonly ObservedStep[];
  readonly learned: readonly PaceOfKind[];
}

/** The pace in a file, taken from the folder `cwd`; without a name the usual file of the kitchen. None yet = no pace. */
export function openPace(name: string | undefined, kitchen: string, cwd: string): Found<OpenPace> {
  const file = name ?? `halfloaf-pace-${toFileWord(kitchen)}.json`;
  if (!existsSync(resolve(cwd, file))) return { ok: true, value: { file, isThere: false, observed: [], learned: [] } };
  const read = readJsonFile(file, cwd);
  if (!read.ok) return read;
  const { content } = read.value;
  if (valueAt(content, ["format"]) !== "halfloaf-pace") return refuse(tellNoPace(file));
  const parsed = parseWith(PaceFile, content);
  if (!parsed.ok) return { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
  const { observed } = parsed.value;
  return { ok: true, value: { file, isThere: true, observed, learned: learnPace(observed) } };
}

function tellNoPace(file: string): Fault {
  return {
    code: "not-a-pace",
    path: ["format"],
    value: quote(file),
    sentence: `${quote(file)} holds no pace of Halfloaf; it is left as it is.`,
    remedy: "Name another file with --pace, or move that one away.",
  };
}
