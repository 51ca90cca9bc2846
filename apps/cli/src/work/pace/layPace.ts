import { STEP_KIND_WORDS } from "@halfloaf/words/en/steps";
import type { PaceOfKind } from "halfloaf/kitchen";
import { harmless } from "../../output/harmless.ts";
import { layTable, wrap } from "../../output/layout.ts";
import type { Page } from "../../output/Page.ts";

const COLUMNS = [
  { title: "", wraps: true },
  { title: "steps seen", right: true },
  { title: "took, of the stated", right: true },
  { title: "reckoned with", right: true },
];

/** The pace of a cook as a page: by kind of step how long it took against what dishes state, and what is made of it. */
export function layPace(
  learned: readonly PaceOfKind[],
  kitchen: string,
  file: string,
  { width, paint }: Page,
): string[] {
  const title = `Pace of the cook of ${harmless(kitchen)}`;
  if (learned.length === 0) {
    const none = `Nothing is known yet: every step is taken to last as long as its dish states. "halfloaf work" with --learn keeps what was marked, in ${harmless(file)}.`;
    return [paint.strong(title), ...wrap(none, width)];
  }
  const rows = learned.map(({ kind, count, median, factor }) => [
    STEP_KIND_WORDS[kind],
    String(count),
    toPercent(median),
    toPercent(factor),
  ]);
  const note = `The figure in the middle step between what dishes state and what was seen: few steps count little. What fire and time do is never shortened. Kept in ${harmless(file)}; "halfloaf pace --forget all" forgets it.`;
  return [paint.strong(title), "", ...layTable(COLUMNS, rows, width, 2), "", ...wrap(note, width).map(paint.quiet)];
}

function toPercent(factor: number): string {
  return `${Math.round(factor * 100)} %`;
}
