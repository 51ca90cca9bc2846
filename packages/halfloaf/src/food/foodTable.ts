import * as v from "valibot";
import { type Issue, type Parsed, parseWith } from "../quantity/issue.ts";
import { type Food, FoodFacts } from "./food.ts";
import { type CompositionRow, parseComposition } from "./parseComposition.ts";

/** One part of a food table: its name, the text of its composition rows and the list of its facts as read from JSON. */
export interface FoodTableFile {
  readonly name: string;
  readonly csv: string;
  readonly facts: unknown;
}

/** All foods by their id, in the order of the files and rows. */
export type FoodTable = ReadonlyMap<string, Food>;

/**
 * Reads a food table from its files. Composition and facts of a file hold the same foods in the same order; an id
 * stands once in all files. On failure gives every fault at once, each with a path that starts with the file:
 * `[name.csv, line, column]` or `[name.json, position, key, ...]`.
 */
export function parseFoodTable(
  files: readonly FoodTableFile[],
): { readonly ok: true; readonly table: FoodTable } | { readonly ok: false; readonly issues: readonly Issue[] } {
  const table = new Map<string, Food>();
  const issues: Issue[] = [];
  for (const file of files) {
    const composition = parseComposition(file.csv);
    const facts = parseFacts(file.facts);
    if (!composition.ok) issues.push(...composition.issues.map((issue) => within(`${file.name}.csv`, issue)));
    if (!facts.ok) issues.push(...facts.issues.map((issue) => within(`${file.name}.json`, issue)));
    if (composition.ok && facts.ok) issues.push(...join(file.name, composition.value, facts.value, table));
  }
  return issues.length === 0 ? { ok: true, table } : { ok: false, issues };
}

/** Each element is read by itself, so that one faulty food does not hide the faults of the others. */
function parseFacts(facts: unknown): Parsed<FoodFacts[]> {
  const list = parseWith(v.array(v.unknown()), facts);
  if (!list.ok) return list;
  const value: FoodFacts[] = [];
  const issues: Issue[] = [];
  for (const [at, each] of list.value.entries()) {
    const parsed = parseWith(FoodFacts, each);
    if (parsed.ok) value.push(parsed.value);
    else issues.push(...parsed.issues.map((issue) => within(at, issue)));
  }
  return issues.length === 0 ? { ok: true, value } : { ok: false, issues };
}

/** Adds the foods of one file to the table and gives what keeps them from being joined. */
function join(
  name: string,
  rows: readonly CompositionRow[],
  facts: readonly FoodFacts[],
  table: Map<string, Food>,
): Issue[] {
  const issues: Issue[] = [];
  for (let at = 0; at < Math.max(rows.length, facts.length); at++) {
    const [row, fact] = [rows[at], facts[at]];
    if (row === undefined || fact === undefined || row.id !== fact.id) {
      const [expected, received] = [row?.id ?? "no further food", fact?.id ?? "no further food"];
      issues.push({ code: "order", path: [`${name}.json`, at, "id"], expected, received });
      // What follows is out of step as well and would only repeat this.
      return issues;
    }
    if (table.has(row.id)) {
      issues.push({
        code: "unique",
        path: [`${name}.csv`, at + 2, "id"],
        expected: "an id not used before",
        received: row.id,
      });
    } else table.set(row.id, { ...fact, ...row });
  }
  return issues;
}

function within(key: string | number, issue: Issue): Issue {
  return { ...issue, path: [key, ...issue.path] };
}
