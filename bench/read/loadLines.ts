import { readFileSync } from "node:fs";
import { parseCsv } from "./parseCsv.ts";

/** One labelled line of makings: what its source says quantity, unit and name are, as text. */
export interface LabelledLine {
  readonly id: string;
  readonly source: string;
  readonly line: string;
  readonly quantity: string;
  /** The end of a range, where the source keeps it apart. */
  readonly quantityMax: string;
  readonly unit: string;
  readonly name: string;
}

const SOURCES = ["nyt", "tasteset", "bbc"];

/**
 * Reads labelled lines from a .csv or .jsonl file with the fields source, line, quantity, quantity_max, unit and name.
 * Throws with the row where a field is missing or the source is unknown.
 */
export function loadLines(path: string): LabelledLine[] {
  const text = readFileSync(path, "utf8");
  const rows: unknown[] = path.endsWith(".jsonl")
    ? text
        .split("\n")
        .filter((line) => line.trim() !== "")
        .map((line) => JSON.parse(line))
    : parseCsv(text);
  return rows.map((row, at) => toLabelled(row as Record<string, unknown>, at, path));
}

function toLabelled(row: Record<string, unknown>, at: number, path: string): LabelledLine {
  const field = (name: string, otherwise?: string): string => {
    const value = row[name] ?? otherwise;
    if (typeof value !== "string") throw new Error(`${path}, row ${at + 1}: "${name}" is missing`);
    return value;
  };
  const source = field("source");
  if (!SOURCES.includes(source)) {
    throw new Error(`${path}, row ${at + 1}: source "${source}" is none of ${SOURCES.join(", ")}`);
  }
  return {
    id: field("id", String(at)),
    source,
    line: field("line"),
    quantity: field("quantity"),
    quantityMax: field("quantity_max", ""),
    unit: field("unit"),
    name: field("name"),
  };
}
