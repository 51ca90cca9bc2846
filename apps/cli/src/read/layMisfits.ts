import { tellCount } from "@halfloaf/words/en";
import { wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import { tellMisfit } from "../words/readWords.ts";

const MOST_SHOWN = 20;

/** What did not fit in a table or list, with line and column; the first ones in full. */
export function layMisfits(
  issues: readonly Parameters<typeof tellMisfit>[0][],
  count: number,
  { width, paint }: Page,
): string[] {
  if (count === 0) return [];
  const shown = issues.slice(0, MOST_SHOWN);
  const more = count - shown.length;
  return [
    "",
    paint.heading(`NOT UNDERSTOOD: ${tellCount(count, "place")}`),
    ...shown.flatMap((issue) => wrapBehind("  ", tellMisfit(issue), width)),
    ...(more > 0 ? [`  and ${more} more; --json lists up to 500`] : []),
  ];
}
