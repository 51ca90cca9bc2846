import { STEP_KIND_WORDS } from "@halfloaf/words/en/steps";
import type { Kitchen, PaceOfKind } from "halfloaf/kitchen";

/** That minutes are reckoned at the pace of a kitchen's cook, and at which; undefined where they are those that dishes state. */
export function tellPace({ pace = {} }: Kitchen): string | undefined {
  const factors = Object.entries(pace).map(
    ([kind, factor]) => `${STEP_KIND_WORDS[kind as PaceOfKind["kind"]]} ${Math.round(factor * 100)} %`,
  );
  if (factors.length === 0) return undefined;
  return `Minutes are reckoned at the pace of the cook, of what dishes state: ${factors.join(", ")}.`;
}
