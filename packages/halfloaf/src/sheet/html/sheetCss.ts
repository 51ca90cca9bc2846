import { LINE } from "./measureHtml.ts";

/** Papers a sheet is printed on. **Source**: ISO 216 (A4, 210 x 297 mm); ANSI/ASME Y14.1 (Letter, 8.5 x 11 in). */
export const PAPERS = { a4: "A4", letter: "letter" } as const;
export type Paper = keyof typeof PAPERS;

/**
 * The style of every sheet: black on white with greys that hold in print, nothing told by colour alone, and every distance
 * by reading direction rather than by left and right.
 */
export function sheetCss(paper: Paper): string {
  return `
@page { size: ${PAPERS[paper]}; margin: 10mm 12mm; }
:root { color-scheme: light; }
* { box-sizing: border-box; }
html { background: #fff; color: #111; font: 15px/1.4 Arial, "Liberation Sans", Helvetica, "Noto Sans", system-ui, sans-serif; }
body { margin: 0; }
body:lang(de) { hyphens: auto; hyphenate-limit-chars: 12 4 4; }
main { max-width: 60rem; margin: 0 auto; padding: 1.2rem; }
h1 { font-size: 1.5em; line-height: 1.2; margin: 0 0 .2em; }
h2 { font-size: 1.05em; margin: 1em 0 .25em; border-bottom: 1.5px solid #111; break-after: avoid; }
h3 { font-size: 1em; margin: .7em 0 .2em; break-after: avoid; }
p { margin: .3em 0; }
ul { margin: .3em 0; padding-inline-start: 1.2em; }
ul.plain { list-style: none; padding: 0; margin: 0; }
li { margin: .1em 0; orphans: 2; widows: 2; }
bdi { overflow-wrap: anywhere; }
.figure bdi { overflow-wrap: normal; }
table { border-collapse: collapse; width: 100%; margin: .3em 0; }
caption { text-align: start; font-weight: 600; padding: .3em 0 .1em; }
th, td { text-align: start; vertical-align: top; padding: .12em .5em .12em 0; border-bottom: .5px solid #999; font-weight: 400; }
thead th { font-size: .85em; font-weight: 600; vertical-align: bottom; border-bottom: 1px solid #111; }
tfoot { display: table-row-group; }
tfoot th, tfoot td { font-weight: 700; border-top: 1px solid #111; border-bottom: 0; }
.figure { text-align: end; white-space: nowrap; font-variant-numeric: tabular-nums; padding-inline: .5em 0; }
.figure + :not(.figure) { padding-inline-start: .9em; }
tr, caption, h2, h3 { break-inside: avoid; }
tbody tr:first-child { break-after: avoid; }
tbody tr:last-child, tfoot tr { break-before: avoid; }
.note { font-size: .85em; color: #333; }
.claims { border: 2px solid #111; padding: .4em .8em; margin: .6em 0; break-inside: avoid; }
.claims ul { list-style: none; padding: 0; margin: 0; font-weight: 700; }
.short, .above { font-weight: 700; }
.allergen { font-weight: 800; text-transform: uppercase; }
figure { margin: .6em 0; break-inside: avoid; }
figure svg { max-width: 100%; height: auto; }
details { border-bottom: .5px solid #999; padding: .25em 0; }
summary { cursor: pointer; font-weight: 600; }
.sheet > .flow { columns: 2; column-gap: 7mm; }
.sheet > .flow > section { break-inside: avoid-column; }
.sheet > .flow > section.long { break-inside: auto; }
.sheet > .flow .wide { break-inside: avoid; }
h2 + .wide, h2 + table { margin-top: .1em; }
.sheet > .flow > section:first-child > h2 { margin-top: 0; }
.sheet > .all > section > .wide { font-size: .92em; }
@media screen and (max-width: 46rem) { .sheet > .flow { columns: 1; } .wide { overflow-x: auto; } .wide > table { min-width: 34rem; } }
@media screen { .sheet + .sheet { margin-top: 3rem; border-top: 4px solid #111; padding-top: 1rem; } }
@media print {
  html { font-size: 9.6pt; line-height: 1.28; }
  main { max-width: none; padding: 0; }
  .sheet + .sheet { break-before: page; }
  .sheet { font-size: var(--letters, 9.6pt); line-height: ${LINE}; }
  .sheet > .flow { columns: var(--columns, 2); }
  .tight th, .tight td { padding-block: .09em .06em; }
  .tight h2 { margin-top: .6em; }
  .tight p, .tight ul:not(.plain) { margin-block: .15em; }
  .tight li { margin: 0; }
  details { break-inside: avoid; }
  summary { break-after: avoid; }
  details::details-content { content-visibility: visible; block-size: auto; }
  a { color: inherit; text-decoration: none; }
}
`;
}
