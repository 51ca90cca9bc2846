/** A cell: a text, a number that is written as it is, or nothing. */
export type Cell = string | number | undefined;

/**
 * What a spreadsheet would take for a formula: texts that begin, after blanks, with one of these signs, their wide forms
 * among them, or with a tab or a break. **Source**: OWASP, CSV injection (from memory).
 */
const LIKE_FORMULA = /^[\s\u200b\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20|]|^[\t\r\n]/u;

/**
 * A table as comma-separated values: a line of titles, then one a row, each ended by CR LF. A text that a spreadsheet would
 * take for a formula gets an apostrophe before it; numbers stay as they are, so that they can be reckoned with.
 * **Source**: RFC 4180.
 */
export function toCsvText(titles: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [titles, ...rows].map((row) => `${row.map(toField).join(",")}\r\n`).join("");
}

function toField(cell: Cell): string {
  if (cell === undefined) return "";
  if (typeof cell === "number") return String(cell);
  const text = LIKE_FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
