import { existsSync } from "node:fs";
import { dirname } from "node:path";
import { RememberedMatch } from "@halfloaf/reading";
import { parseWith } from "halfloaf/quantity";
import * as v from "valibot";
import { readJsonFile } from "../input/readJsonFile.ts";
import type { Found } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";

/** The file beside a kitchen's that remembers which pack a text on receipts and in lists means. */
export const MatchesFile = v.strictObject({
  format: v.literal("halfloaf-matches"),
  version: v.literal(1),
  /** Of one text and shop the later one holds. */
  matches: v.array(RememberedMatch),
});
export type MatchesFile = v.InferOutput<typeof MatchesFile>;

/** What was matched before; nothing where there is no file. */
export function openMatches(file: string): Found<readonly RememberedMatch[]> {
  if (!existsSync(file)) return { ok: true, value: [] };
  const read = readJsonFile(file, dirname(file));
  if (!read.ok) return read;
  const { content } = read.value;
  const parsed = parseWith(MatchesFile, content);
  if (parsed.ok) return { ok: true, value: parsed.value.matches };
  return { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
}
