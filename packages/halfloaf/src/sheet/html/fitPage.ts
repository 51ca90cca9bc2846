import { type Html, html } from "./html.ts";
import { measureHtml } from "./measureHtml.ts";
import type { Paper } from "./sheetCss.ts";

/** What stands on a page: above, in columns, and below over the whole width. */
export interface PageToFit {
  readonly above: readonly (Html | false)[];
  readonly columns: readonly (Html | false)[];
  readonly below: readonly (Html | false)[];
}

/** Points of the printed part of each paper, within the margins of `sheetCss`. **Source**: as `PAPERS`. */
const ROOM: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  a4: { width: 527, height: 785 },
  letter: { width: 544, height: 735 },
};
/** Sizes of letters that are tried, in tenths of a point; in the smallest a page may run on. */
const [LARGEST, SMALLEST] = [105, 60];
const COLUMNS = [2, 3];
/** Space between columns, in points, and the lines by which they end unevenly, in em. */
const [GUTTER, UNEVEN] = [20, 2];
/** Of the page is filled at most so much: other letters than those measured may stand in. */
const FILLED = 0.95;

/** A page of a sheet, all of it in the largest letters in which it stands on one. */
export function fitPage(page: PageToFit, paper: Paper): Html {
  const measured = {
    whole: [...page.above, ...page.below].flatMap((part) => (part === false ? [] : [measureHtml(part)])),
    inColumns: page.columns.flatMap((part) => (part === false ? [] : [measureHtml(part)])),
  };
  const { width, height: most } = ROOM[paper];
  const fits = COLUMNS.map((columns) => {
    const heightIn = (tenths: number) => heightOf(measured, columns, width, tenths / 10);
    const tenths = largestWithin(FILLED * most, heightIn);
    return { columns, tenths, height: heightIn(tenths) };
  });
  // A page that is too full for the smallest letters takes the columns in which it is least too full.
  const isBetter = (one: Fit, other: Fit) =>
    one.tenths === other.tenths ? one.height < other.height : one.tenths > other.tenths;
  const { columns, tenths } = fits.reduce((best, fit) => (isBetter(fit, best) ? fit : best));
  return html`<article class="sheet tight" style="--letters: ${tenths / 10}pt; --columns: ${columns}">
${page.above}
<div class="flow">
${page.columns}
</div>
<div class="all">${page.below}</div>
</article>`;
}

type Heights = readonly ReturnType<typeof measureHtml>[];
interface Measured {
  readonly whole: Heights;
  readonly inColumns: Heights;
}

interface Fit {
  readonly tenths: number;
  readonly height: number;
}

/** Tenths of a point of the largest letters in which the page is no higher than so much; the smallest where it never is. */
function largestWithin(most: number, heightIn: (tenths: number) => number): number {
  let [fits, tooLarge] = [SMALLEST, LARGEST + 1];
  while (tooLarge - fits > 1) {
    const tenths = Math.floor((fits + tooLarge) / 2);
    if (heightIn(tenths) <= most) fits = tenths;
    else tooLarge = tenths;
  }
  return fits;
}

/** Points that the page takes in letters of some size. */
function heightOf({ whole, inColumns }: Measured, columns: number, width: number, points: number): number {
  const sum = (heights: Heights, room: number) => heights.reduce((all, height) => all + height(room / points), 0);
  const column = (width - (columns - 1) * GUTTER) / columns;
  return points * (sum(whole, width) + sum(inColumns, column) / columns + UNEVEN);
}
