import { cutToWidth, pad, textWidth } from "./textWidth.ts";

/** Narrowest width that pages are laid out for; a narrower screen wraps by itself. */
export const LEAST_WIDTH = 40;
/** Widest width used: longer lines are hard to read. */
export const MOST_WIDTH = 100;

const KEPT = "\u00a0";

/** A text that `wrap` keeps on one line: a figure with its unit, a name with its price. */
export function keepTogether(text: string): string {
  return text.replaceAll(" ", KEPT);
}

/** Breaks a text at its blanks into lines of at most `width` columns; a longer word is cut. Never empty. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/ +/).flatMap((word) => cutToWidth(word, width))) {
    if (line === "") line = word;
    else if (textWidth(line) + 1 + textWidth(word) <= width) line += ` ${word}`;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line].map((each) => each.replaceAll(KEPT, " "));
}

/** A text wrapped behind a lead: the first line starts with the lead, the others are set in as deep. */
export function wrapBehind(lead: string, text: string, width: number): string[] {
  const depth = textWidth(lead);
  return wrap(text, Math.max(10, width - depth)).map((line, at) => (at === 0 ? lead : " ".repeat(depth)) + line);
}

/** A text at the left and one at the right end of the line; the left one is wrapped where both don't fit. */
export function spread(left: string, right: string, width: number, lead = ""): string[] {
  const room = Math.max(10, width - textWidth(right) - 2);
  const lines = wrapBehind(lead, left, room);
  const last = lines.pop() as string;
  return [...lines, right === "" ? last : pad(last, width - textWidth(right)) + right];
}

/** One column of a table. */
export interface Column {
  readonly title: string;
  /** Figures stand at the right. */
  readonly right?: boolean;
  /** The column that gives way and wraps where the line is too short; the first one where none says so. */
  readonly wraps?: boolean;
}

const [GAP, NARROW_GAP] = [2, 1];
/** A column that gives way is at least so wide, or as wide as its widest cell; with less room its cells go on lines of their own. */
const LEAST_WRAP = 16;

/**
 * A table set in by `depth`: titles, then rows whose cells stand under each other; one column wraps to fit the width. Where
 * little is left for that one, its cells stand between those before it and those after it, each on lines of their own.
 */
export function layTable(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
  depth = 0,
): string[] {
  const titles = columns.map(({ title }) => title);
  const all = titles.some((title) => title !== "") ? [titles, ...rows] : rows;
  const widths = columns.map((_, at) => Math.max(0, ...all.map((row) => textWidth(row[at] ?? ""))));
  const flexible = Math.max(
    0,
    columns.findIndex(({ wraps }) => wraps),
  );
  const others = widths.reduce((sum, each, at) => (at === flexible || each === 0 ? sum : sum + each + GAP), 0);
  const room = width - depth - others;
  const natural = widths[flexible] as number;
  const lead = " ".repeat(depth);
  if (room < Math.min(LEAST_WRAP, natural))
    return layApart(columns, all, flexible, width - depth).map((line) => lead + line);
  widths[flexible] = Math.min(natural, room);
  return all.flatMap((row) => layRow(columns, row, widths, GAP).map((line) => lead + line));
}

/** Each row as up to three: the cells before one column, its own over the whole width, the cells after it. */
function layApart(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  at: number,
  width: number,
): string[] {
  const before = layPart(
    columns.slice(0, at),
    rows.map((row) => row.slice(0, at)),
    width,
  );
  const after = layPart(
    columns.slice(at + 1),
    rows.map((row) => row.slice(at + 1)),
    width - GAP,
  );
  const isFirst = at === 0;
  return rows.flatMap((row, place) => {
    const text = row[at] ?? "";
    return [
      ...(before[place] ?? []),
      ...(text === "" ? [] : wrapBehind(isFirst ? "" : " ".repeat(GAP), text, width)),
      ...(after[place] ?? []).map((line) => " ".repeat(GAP) + line),
    ];
  });
}

/** The lines of each row of columns none of which gives way; titles are broken where they are wider than what is below. */
function layPart(columns: readonly Column[], rows: readonly (readonly string[])[], width: number): string[][] {
  const widths = columns.map(({ title }, at) =>
    Math.max(
      0,
      ...title.split(" ").map(textWidth),
      ...rows.filter((row) => row[at] !== title).map((row) => textWidth(row[at] ?? "")),
    ),
  );
  const shown = widths.filter((each) => each > 0);
  const gap = shown.reduce((sum, each) => sum + each + GAP, -GAP) > width ? NARROW_GAP : GAP;
  return rows.map((row) => (row.every((cell) => cell === "") ? [] : layRow(columns, row, widths, gap)));
}

function layRow(columns: readonly Column[], row: readonly string[], widths: readonly number[], gap: number): string[] {
  const cells = columns.map((_, at) => wrap(row[at] ?? "", Math.max(1, widths[at] as number)));
  const height = Math.max(0, ...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    cells
      .flatMap((lines, at) => {
        // A column that is empty all the way down takes no room, not even a gap.
        if (widths[at] === 0) return [];
        return [pad(lines[line] ?? "", widths[at] as number, columns[at]?.right ? "start" : "end")];
      })
      .join(" ".repeat(gap))
      .trimEnd(),
  );
}
