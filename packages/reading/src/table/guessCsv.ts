import { CsvRows } from "./CsvRows.ts";
import type { CsvForm } from "./csvForm.ts";
import { foldText } from "./nearness.ts";

/** How a table in CSV seems to be written, by its beginning. */
export interface CsvGuess {
  readonly csv: CsvForm;
  /** The names of its columns, in their order; none where no header was found. */
  readonly header: readonly string[];
  /** The cells of the rows behind the header, as far as they were looked at. */
  readonly body: readonly (readonly string[])[];
}

const LOOKED_AT = 1 << 16;
const MOST_ROWS = 50;
const DELIMITERS = [";", "\t", "|", ","] as const;

/**
 * Guesses how a table in CSV is written: the delimiter that gives the most rows of one width, the decimal sign that its
 * figures have, and the line that names the columns. It looks at the beginning alone; what is stated goes before what would be
 * guessed.
 */
export function guessCsv(text: string, stated: Partial<CsvForm> = {}): CsvGuess {
  const head = (text.startsWith("\ufeff") ? text.slice(1) : text).slice(0, LOOKED_AT);
  const laid = (stated.delimiter === undefined ? DELIMITERS : [stated.delimiter]).map((delimiter) =>
    layOut(head, delimiter, text.length > LOOKED_AT),
  );
  const { rows, width, delimiter } = laid.reduce((a, b) => (b.score > a.score + 1e-9 ? b : a));
  const headerRow =
    stated.headerLine === undefined
      ? rows.find(({ cells }) => cells.length === width && isHeader(cells))
      : rows.find(({ line }) => line >= (stated.headerLine as number));
  const header = headerRow?.cells.map((cell) => cell.trim()) ?? [];
  const body = rows.filter(({ line }) => line > (headerRow?.line ?? 0)).map(({ cells }) => cells);
  const { decimal, thousands } = guessMarks(body.flat());
  const csv: CsvForm = {
    delimiter,
    decimal: stated.decimal ?? decimal,
    ...(stated.decimal === undefined && thousands !== undefined && { thousands }),
    headerLine: headerRow?.line ?? 1,
  };
  return { csv, header, body };
}

interface LaidOut {
  readonly delimiter: (typeof DELIMITERS)[number];
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
  /** Cells of most rows. */
  readonly width: number;
  readonly score: number;
}

function layOut(head: string, delimiter: LaidOut["delimiter"], isCut: boolean): LaidOut {
  const sound = new CsvRows(delimiter).push(head, true).filter(({ fault }) => fault === undefined);
  // The last row may be cut off where only the beginning of the table is looked at.
  const rows = (isCut ? sound.slice(0, -1) : sound).slice(0, MOST_ROWS);
  const widths = new Map<number, number>();
  for (const { cells } of rows) widths.set(cells.length, (widths.get(cells.length) ?? 0) + 1);
  const [width, count] = [...widths].reduce((a, b) => (b[1] > a[1] ? b : a), [0, 0]);
  return { delimiter, rows, width, score: width < 2 ? 0 : (count / rows.length) * Math.log2(width) };
}

/** A header names its columns: no two alike, none a number. */
function isHeader(cells: readonly string[]): boolean {
  const names = cells.map((cell) => cell.trim()).filter((cell) => cell !== "");
  return names.length >= 2 && new Set(names).size === names.length && names.every((name) => /^[^\d€£$]/u.test(name));
}

function guessMarks(cells: readonly string[]): Pick<CsvForm, "decimal" | "thousands"> {
  const count = (form: RegExp): number => cells.filter((cell) => form.test(cell.trim())).length;
  const decimal = count(/^\D{0,4}[\d.]*\d,\d{1,2}\D{0,4}$/) > count(/^\D{0,4}[\d,]*\d\.\d{1,2}\D{0,4}$/) ? "," : ".";
  const parted =
    decimal === "," ? /^\D{0,4}\d{1,3}(?:\.\d{3})+,\d{2}\D{0,4}$/ : /^\D{0,4}\d{1,3}(?:,\d{3})+\.\d{2}\D{0,4}$/;
  return { decimal, ...(count(parted) > 0 && { thousands: decimal === "," ? ("." as const) : ("," as const) }) };
}

/** Those columns that can be named: each name's first place. */
export function usableColumns(header: readonly string[]): string[] {
  return header.filter((name, at) => name !== "" && header.indexOf(name) === at);
}

/** How well a header is named by one of the words: 2 where it is that word, 1 where the word stands in it, else 0. */
export function namedness(name: string, words: readonly string[]): 0 | 1 | 2 {
  const folded = foldText(name.replace(/[_-]/g, " "));
  if (words.includes(folded)) return 2;
  return words.some((word) => ` ${folded} `.includes(` ${word} `)) ? 1 : 0;
}
