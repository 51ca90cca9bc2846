import type { CivilDate } from "../../../quantity/index.ts";
import { firstExpiredFirstOut, type LotState, MASS_TOLERANCE_G } from "../../../stores/index.ts";
import type { EventOf } from "../event.ts";
import type { Pen } from "../Pen.ts";
import type { RecordState } from "../recordState.ts";

/** What somebody found: of one lot, or of a food (or a dish) all in all, in g. */
export type Count = (
  | { readonly lot: string; readonly massG: number }
  | { readonly food: string; readonly massG: number }
  | { readonly dish: string; readonly massG: number }
) & {
  /** What became of what is missing; absent = nobody knows, and it counts as waste. */
  readonly as?: "used" | "wasted";
};

/** A lot whose count differs from the record. */
export interface CountDifference {
  readonly lot: string;
  readonly recordedG: number;
  readonly countedG: number;
  /** Cost of what is missing at most, in minor units; 0 where more was found. */
  readonly costMinor: number;
}

/** The events of a stocktake, and what they set right. */
export interface StocktakeWritten {
  readonly events: readonly EventOf<"counted">[];
  readonly differences: readonly CountDifference[];
  /** Counts of which no lot is at hand: what was found has to be stocked. */
  readonly strange: readonly Count[];
}

/**
 * A stocktake as events. Where a food is counted all in all, what is missing is taken from the lots first expired first
 * out, and what was found besides is put to the last. Lots that agree are counted too where they were in doubt.
 */
export function stocktake(state: RecordState, counts: readonly Count[], on: CivilDate, pen: Pen): StocktakeWritten {
  const events: EventOf<"counted">[] = [];
  const differences: CountDifference[] = [];
  const strange: Count[] = [];
  for (const count of counts) {
    const shares = shareCount(state, count, on);
    if (shares.length === 0 && count.massG > 0) strange.push(count);
    for (const { lot, massG } of shares) {
      const isSame = Math.abs(lot.leftG - massG) <= MASS_TOLERANCE_G;
      if (isSame && !state.toCount.has(lot.id)) continue;
      const { as } = count;
      events.push(pen.write({ kind: "counted", on, lot: lot.id, massG, ...(as !== undefined && { as }) }));
      if (!isSame) differences.push(toDifference(lot, massG));
    }
  }
  return { events, differences, strange };
}

interface CountShare {
  readonly lot: LotState;
  readonly massG: number;
}

/** What was counted, lot by lot. */
function shareCount(state: RecordState, count: Count, on: CivilDate): CountShare[] {
  if ("lot" in count) {
    const lot = state.lots.get(count.lot);
    return lot === undefined ? [] : [{ lot, massG: count.massG }];
  }
  const isIt = (lot: LotState) => ("food" in count ? lot.food === count.food : lot.cooked?.dish === count.dish);
  const lots = firstExpiredFirstOut([...state.lots.values()].filter((lot) => isIt(lot) && lot.since <= on));
  let restG = count.massG;
  const shares = lots.reverse().map((lot): { lot: LotState; massG: number } => {
    const massG = Math.min(lot.leftG, restG);
    restG -= massG;
    return { lot, massG };
  });
  const last = shares[0];
  if (last !== undefined && restG > MASS_TOLERANCE_G) last.massG += restG;
  return shares.reverse();
}

function toDifference({ id, leftG, leftMinor }: LotState, countedG: number): CountDifference {
  const missing = Math.max(0, leftG - countedG);
  return {
    lot: id,
    recordedG: leftG,
    countedG,
    costMinor: missing === 0 ? 0 : Math.ceil((leftMinor * missing) / leftG),
  };
}
