import type { Issue } from "halfloaf/quantity";
import { type CsvFault, CsvRows } from "./CsvRows.ts";
import type { CsvForm } from "./csvForm.ts";
import { type FileSource, type ReadingWatch, readText } from "./FileSource.ts";
import { plain, quote } from "./IssueLog.ts";

/** A sound row while it is visited: its line, and the cell of a column by its name; undefined for a column that is not there. */
export interface Row {
  readonly line: number;
  readonly cell: (column: string) => string | undefined;
}

/** How the reading of a file ended: to its end, stopped, or not begun since columns are missing. */
export type FileOutcome = "read" | "stopped" | "columns-missing";

/** What is said of a faulty row. */
const FAULTS: Readonly<Record<CsvFault, readonly [expected: string, received: string]>> = {
  "text-after-quote": ["a delimiter or the end of the line behind a quotation", "text"],
  "quote-unclosed": ["a quotation that ends", "none within the file"],
  "row-too-long": ["a row of at most 131072 characters and 4096 cells", "more"],
};

/**
 * Reads a CSV file row by row, in constant memory. Every faulty row is told with file and line and passed over; columns
 * that are needed and missing are told all at once, and then nothing is read. A row with fewer cells than the header has
 * empty ones in their place; one with more is told and passed over.
 */
export async function visitRows(
  source: FileSource,
  form: CsvForm,
  needed: readonly string[],
  tell: (issue: Issue) => void,
  visit: (row: Row) => void,
  watch: ReadingWatch = {},
): Promise<FileOutcome> {
  const rows = new CsvRows(form.delimiter);
  let header: ReadonlyMap<string, number> | undefined;
  let cells: readonly string[] = [];
  let items = 0;
  const row = {
    line: 0,
    cell: (column: string): string | undefined => {
      const at = header?.get(column);
      return at === undefined ? undefined : (cells[at] ?? "");
    },
  };
  for await (const { text, size, isLast } of readText(source, form.encoding, tell)) {
    if (watch.signal?.aborted) return "stopped";
    for (const { line, cells: found, fault } of rows.push(text, isLast)) {
      if (line < form.headerLine) continue;
      if (fault !== undefined) tellFault(source.name, line, fault, tell);
      else if (header === undefined) {
        header = toHeader(found);
        if (!hasColumns(header, needed, [source.name, line], tell)) return "columns-missing";
      } else if (found.length > header.size) tellCells(source.name, line, header.size, found.length, tell);
      else {
        [row.line, cells] = [line, found];
        items++;
        visit(row);
      }
    }
    watch.onProgress?.({ file: source.name, items, size });
  }
  if (header !== undefined) return "read";
  hasColumns(new Map(), needed, [source.name, form.headerLine], tell);
  return "columns-missing";
}

/** The place of each column by its name; a name that stands twice means its first place, an empty name none. */
function toHeader(cells: readonly string[]): ReadonlyMap<string, number> {
  const header = new Map<string, number>();
  for (const [at, cell] of cells.entries()) {
    const name = cell.trim();
    // A column without a usable name still takes a place, so that the count of cells can be told.
    header.set(name === "" || header.has(name) ? `\u0000${at}` : name, at);
  }
  return header;
}

function hasColumns(
  header: ReadonlyMap<string, number>,
  needed: readonly string[],
  path: Issue["path"],
  tell: (issue: Issue) => void,
): boolean {
  const missing = needed.filter((name) => !header.has(name));
  const names = [...header.keys()].filter((name) => !name.startsWith("\u0000")).slice(0, 20);
  const received = names.length === 0 ? "no header" : plain(names.join(", "));
  for (const name of missing) tell({ code: "header", path, expected: `a column ${quote(name)}`, received });
  return missing.length === 0;
}

function tellFault(file: string, line: number, fault: CsvFault, tell: (issue: Issue) => void): void {
  const [expected, received] = FAULTS[fault];
  tell({ code: fault, path: [file, line], expected, received });
}

function tellCells(file: string, line: number, most: number, found: number, tell: (issue: Issue) => void): void {
  tell({ code: "cells", path: [file, line], expected: `at most ${most} cells`, received: `${found} cells` });
}
