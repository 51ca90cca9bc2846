import { type Html, html, type Piece } from "./html.ts";

/** A column: its title, and whether its cells are figures, which stand at the end of the line. */
interface Column {
  readonly title: Piece;
  readonly isFigure?: boolean;
}

/** A table that says what it is. */
interface TableParts {
  readonly caption?: Piece;
  readonly columns: readonly Column[];
  /** The first cell of each row names it. */
  readonly rows: readonly (readonly Piece[])[];
  /** Sums below a line. */
  readonly sums?: readonly (readonly Piece[])[];
}

/** A table with a head, whose rows are named by their first cells. **Source**: WCAG 2.2, 1.3.1. */
export function table({ caption, columns, rows, sums = [] }: TableParts): Html {
  const head = columns.map(({ title, isFigure }) => html`<th scope="col"${figureClass(isFigure)}>${title}</th>`);
  const lay = (cells: readonly Piece[]) =>
    html`<tr>${cells.map((cell, at) =>
      at === 0
        ? html`<th scope="row"${figureClass(columns[at]?.isFigure)}>${cell}</th>`
        : columns[at]?.isFigure
          ? html`<td class="figure"><bdi dir="auto">${cell}</bdi></td>`
          : html`<td>${cell}</td>`,
    )}</tr>`;
  return html`<table>${caption !== undefined && html`<caption>${caption}</caption>`}
<thead><tr>${head}</tr></thead>
<tbody>${rows.map(lay)}</tbody>${
    sums.length > 0 &&
    html`
<tfoot>${sums.map(lay)}</tfoot>`
  }
</table>`;
}

/** A name from outside, whose letters say by themselves in which direction they run. **Source**: WHATWG, HTML, `dir=auto`. */
export function name(text: string): Html {
  return html`<bdi dir="auto">${text}</bdi>`;
}

function figureClass(isFigure: boolean | undefined): Html | false {
  return isFigure === true && html` class="figure"`;
}
