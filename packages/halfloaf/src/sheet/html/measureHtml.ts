import type { Html } from "./html.ts";

/** Room and heights in em of the page's letters. */
type Em = number;

/** Height of a line of text, in its own letters; the same in `sheetCss`. */
export const LINE: Em = 1.16;
/** Size of what is told small, as part of the letters about it. */
const SMALL = 0.85;
/** Margins, padding and borders of each kind of block, above and below together. */
const ROW_EDGE: Em = 0.2;
const FRAME_EDGE: Em = 2.4;
const EDGES: Readonly<Record<string, Em>> = { h1: 0.2, h2: 1.0, h3: 0.95, p: 0.15, li: 0.02, caption: 0.4 };
const SIZES: Readonly<Record<string, number>> = { h1: 1.5, h2: 1.05 };
/** Space between a cell and the next one. */
const GAP: Em = 0.5;
/** Where the text of an item begins. */
const INDENT: Em = 1.2;

/** The height of something laid out in so much width. */
type Height = (width: Em) => Em;

/**
 * About how high a piece of a sheet is when it is printed into a column of some width, by the widths of the letters that
 * `sheetCss` asks for: words are broken into lines, and a table shares its width out as a browser does. It knows the blocks
 * that sheets are made of: headings, paragraphs, items and tables. **Source**: W3C, CSS 2.2, 17.5.2.2 (table widths).
 */
export function measureHtml({ html }: Html): Height {
  const found = html.matchAll(/<(table|caption|h1|h2|h3|p|li)\b([^>]*)>([\s\S]*?)<\/\1>/g);
  const blocks = [...found].map(([block, name = "", attributes = "", content = ""]) =>
    name === "table" ? measureTable(block) : measureBlock(name, attributes, content),
  );
  const frames = (html.split('class="claims"').length - 1) * FRAME_EDGE;
  return (width) => sum(blocks.map((block) => block(width))) + frames;
}

function measureBlock(name: string, attributes: string, content: string): Height {
  const words = wordsOf(content);
  const size = (SIZES[name] ?? 1) * (attributes.includes('"note"') ? SMALL : 1);
  const indent = name === "li" ? INDENT : 0;
  return (width) => (countLines(words, (width - indent) / size) * LINE + (EDGES[name] ?? 0)) * size;
}

interface Cell {
  /** Widths of the words of each item; of the one text where it is no list. */
  readonly items: readonly (readonly Em[])[];
  readonly size: number;
  /** Width of the whole text on one line, and of the widest part that is not broken. */
  readonly most: Em;
  readonly least: Em;
}

function measureTable(table: string): Height {
  const caption = /<caption>([\s\S]*?)<\/caption>/.exec(table)?.[1];
  const head = /<thead>[\s\S]*?<\/thead>/.exec(table)?.[0] ?? "";
  const rows = [...table.matchAll(/<tr>([\s\S]*?)<\/tr>/g)].map(([row]) => readCells(row, head.includes(row)));
  const above = caption === undefined ? () => 0 : measureBlock("caption", "", caption);
  return (width) => {
    const widths = shareWidth(rows, width);
    const heights = rows.map((cells) =>
      Math.max(...cells.map((cell, column) => heightOfCell(cell, (widths[column] as Em) - GAP))),
    );
    return above(width) + sum(heights) + (rows.length + 2) * ROW_EDGE;
  };
}

function readCells(row: string, isHead: boolean): Cell[] {
  return [...row.matchAll(/<t[hd]\b([^>]*)>([\s\S]*?)<\/t[hd]>/g)].map(([, attributes = "", content = ""]): Cell => {
    const listed = [...content.matchAll(/<li>([\s\S]*?)<\/li>/g)].map(([, item = ""]) => item);
    const items = (listed.length > 0 ? listed : [content]).map(wordsOf);
    const size = isHead ? SMALL : 1;
    const most = Math.max(...items.map((words) => sum(words) + words.length * SPACE)) * size + GAP;
    const widest = Math.max(0, ...items.flat()) * size + GAP;
    return { items, size, most, least: attributes.includes("figure") ? most : widest };
  });
}

/** Every column has its least width; what is left is shared out by how much more each could do with. */
function shareWidth(rows: readonly (readonly Cell[])[], width: Em): Em[] {
  const columns = Math.max(0, ...rows.map((cells) => cells.length));
  const of = (key: "most" | "least") =>
    Array.from({ length: columns }, (_, column) => Math.max(0, ...rows.map((cells) => cells[column]?.[key] ?? 0)));
  const [most, least] = [of("most"), of("least")];
  if (sum(most) <= width) return most.map((each) => (each * width) / Math.max(sum(most), GAP));
  const share = (width - sum(least)) / Math.max(sum(most) - sum(least), GAP);
  return least.map((each, column) => each + Math.max(0, share) * ((most[column] as Em) - each));
}

function heightOfCell({ items, size }: Cell, width: Em): Em {
  return Math.max(1, sum(items.map((words) => countLines(words, width / size)))) * LINE * size;
}

function countLines(words: readonly Em[], room: Em): number {
  let [lines, used] = [1, 0];
  for (const word of words) {
    const rest = used === 0 ? word : used + SPACE + word;
    if (rest <= room || used === 0) used = rest;
    else [lines, used] = [lines + 1, word];
    // A word that has no room on a line of its own is broken.
    while (used > room && room > 1) [lines, used] = [lines + 1, used - room];
  }
  return lines;
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}

/** Widths of the words of a piece, what is small in it smaller and what is bold wider. */
function wordsOf(content: string): Em[] {
  const words: Em[] = [];
  let [isSmall, isBold, width] = [false, false, 0];
  const end = () => {
    if (width > 0) words.push(width);
    width = 0;
  };
  for (const [tag] of content.matchAll(/<[^>]*>|&[^;]+;|[\s\S]/gu)) {
    if (tag.length > 1 && tag.startsWith("<")) {
      if (tag.startsWith("<span")) isSmall = tag.includes('"note"');
      if (tag === "</span>") isSmall = false;
      if (tag === "<b>" || tag === "</b>") isBold = tag === "<b>";
    } else if (tag === " " || tag === "\n") end();
    else width += widthOfLetter(tag) * (isSmall ? SMALL : 1) * (isBold ? BOLD : 1);
  }
  end();
  return words;
}

const BOLD = 1.07;
/** Widths of letters by class. **Source**: the widths of Arial and what is made to fit it (from memory), rounded up. */
const WIDTHS: readonly (readonly [letters: string, width: Em])[] = [
  ["ijl'|", 0.23],
  ["I.,:;!/ft []()\\-\u00a0\u202f\u2009", 0.3],
  ["cksvxyzJ", 0.51],
  ["mwMW%@\u2014\u2026&\u25b2\u25bc", 0.88],
];
const WIDTH_OF: ReadonlyMap<string, Em> = new Map(
  WIDTHS.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width] as const)),
);
/** From here on letters are of scripts whose signs fill a square. **Source**: Unicode, blocks. */
const SQUARE = 0x2e80;

const SPACE: Em = 0.3;

function widthOfLetter(letter: string): Em {
  const known = WIDTH_OF.get(letter);
  if (known !== undefined) return known;
  if ((letter.codePointAt(0) ?? 0) >= SQUARE) return 1;
  return letter === letter.toLowerCase() ? 0.56 : 0.68;
}
