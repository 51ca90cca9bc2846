import { proveBound } from "@halfloaf/engine";
import type { SearchRow } from "./measureSearch.ts";
import type { Sketch } from "./runSketch.ts";
import { medianOf, ratioOf, spreadOf } from "./statistics.ts";

/** Proven gaps of one problem in percent of the plan's money, by seconds. */
export interface ProofRow {
  readonly gaps: ReadonlyMap<number, number | undefined>;
  readonly sketchGaps: ReadonlyMap<number, number | undefined>;
}

/** Proves for each of the times beside the plan that a search of the same time found. */
export async function measureProof(
  { instance: { problem, seed }, costs }: SearchRow,
  seconds: readonly number[],
  sketch: Sketch | undefined,
): Promise<ProofRow> {
  const gaps = new Map<number, number | undefined>();
  const sketchGaps = new Map<number, number | undefined>();
  for (const s of seconds) {
    const costMinor = costs.get(s)?.[0];
    const proof = await proveBound(problem, {
      seconds: s,
      ...(costMinor !== undefined && { incumbentMinor: costMinor }),
    });
    gaps.set(s, gapPct(costMinor, "boundMinor" in proof ? proof.boundMinor : undefined));
    sketchGaps.set(s, sketch?.prove(problem, seed, s).gapPct);
  }
  return { gaps, sketchGaps };
}

/** By how much of itself a plan may at most be too dear, in percent. */
export function gapPct(costMinor: number | undefined, boundMinor: number | undefined): number | undefined {
  return costMinor === undefined || boundMinor === undefined ? undefined : (100 * (costMinor - boundMinor)) / costMinor;
}

/** Gaps over the problems of a group, by seconds. */
export function summariseProof(rows: readonly ProofRow[], seconds: readonly number[]) {
  return Object.fromEntries(
    seconds.map((s) => {
      const ratios = rows.map(({ gaps, sketchGaps }) => ratioOf(gaps.get(s), sketchGaps.get(s)));
      return [`${s}s`, { gapPct: spreadOf(rows.map(({ gaps }) => gaps.get(s))), gapRatioToSketch: medianOf(ratios) }];
    }),
  );
}
