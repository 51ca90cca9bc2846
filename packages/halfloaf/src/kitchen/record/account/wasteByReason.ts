import type { CivilDate } from "../../../quantity/index.ts";
import type { RecordState } from "../recordState.ts";

/** What was lost for one reason. */
export interface ReasonLoss {
  /** As the record has it (see `WASTE_REASONS`); "missing" = counting did not find it; absent = nobody said why. */
  readonly why?: string;
  readonly massG: number;
  readonly costMinor: number;
}

/** The waste from one day to another by the reason told for it, the dearest first; what `wasteBy` tells by food, it adds up to. */
export function wasteByReason({ lots }: Pick<RecordState, "lots">, from: CivilDate, to: CivilDate): ReasonLoss[] {
  const found = new Map<string | undefined, ReasonLoss>();
  for (const { outflows } of lots.values())
    for (const { kind, on, massG, costMinor, why: told } of outflows) {
      if ((kind !== "wasted" && kind !== "missing") || on < from || on > to) continue;
      const why = kind === "missing" ? "missing" : told;
      const known = found.get(why) ?? { ...(why !== undefined && { why }), massG: 0, costMinor: 0 };
      found.set(why, { ...known, massG: known.massG + massG, costMinor: known.costMinor + costMinor });
    }
  return [...found.values()].sort((a, b) => b.costMinor - a.costMinor);
}
