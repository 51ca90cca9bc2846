import { resolve } from "node:path";
import type { ObservedStep } from "halfloaf/kitchen";
import { toJsonText } from "../../output/harmless.ts";
import { writeWhole } from "../../output/writeWhole.ts";
import { type Found, refuse } from "../../words/Fault.ts";
import { quote } from "../../words/valueWords.ts";
import type { PaceFile } from "./PaceFile.ts";

/** Steps that are kept, the latest; older ones are let go, as a cook changes. */
const MOST_KEPT = 1000;

/** Writes what was observed into the file of a kitchen's pace, whole or not at all. */
export function savePace(
  observed: readonly ObservedStep[],
  kitchen: string,
  file: string,
  cwd: string,
): Found<PaceFile> {
  const content: PaceFile = { format: "halfloaf-pace", version: 1, kitchen, observed: observed.slice(-MOST_KEPT) };
  const trouble = writeWhole(`${toJsonText(content)}\n`, resolve(cwd, file));
  if (trouble === undefined) return { ok: true, value: content };
  return refuse({
    code: "pace-not-written",
    path: [],
    value: quote(file),
    sentence: `${quote(file)} can't be written (${trouble}).`,
    remedy: "Check that its folder is there and that you may write in it, or name another file with --pace.",
  });
}
