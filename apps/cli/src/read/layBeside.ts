import { wrap } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import { pad } from "../output/textWidth.ts";

/** What was read beside what it was understood as; `lead` stands before the left side. */
export interface BesideRow {
  readonly lead: string;
  readonly left: string;
  /** Each text on lines of its own; a doubt is set off. */
  readonly right: readonly { readonly text: string; readonly isDoubt?: boolean }[];
}

const GAP = 3;
const LEFT_SHARE = 0.45;

/** Rows of two columns, both wrapped, for a page of any width. */
export function layBeside(
  rows: readonly BesideRow[],
  { width, paint }: Page,
  titles: readonly [string, string],
): string[] {
  const depth = Math.max(0, ...rows.map(({ lead }) => lead.length + 1));
  const left = Math.floor((width - depth - GAP) * LEFT_SHARE);
  const right = width - depth - GAP - left;
  const heading = paint.quiet(`${" ".repeat(depth)}${pad(titles[0], left + GAP)}${titles[1]}`.trimEnd());
  return [
    heading,
    ...rows.flatMap((row) => {
      const lefts = wrap(row.left, left);
      const rights = row.right.flatMap(({ text, isDoubt }) =>
        wrap(text, right).map((line) => (isDoubt ? paint.warning(line) : line)),
      );
      return Array.from({ length: Math.max(lefts.length, rights.length) }, (_, at) => {
        const lead = at === 0 ? row.lead.padStart(depth - 1) : "";
        return `${lead.padEnd(depth)}${pad(lefts[at] ?? "", left + GAP)}${rights[at] ?? ""}`.trimEnd();
      });
    }),
  ];
}
