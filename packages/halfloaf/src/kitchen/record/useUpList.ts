import { type CivilDate, daysBetween } from "../../quantity/index.ts";
import { firstExpiredFirstOut, type KeepingLimit, type LotState } from "../../stores/index.ts";
import type { RecordState } from "./recordState.ts";

/** What must go, and by when. */
export interface UseUpLine {
  readonly lot: string;
  readonly food?: string;
  readonly dish?: string;
  readonly place: LotState["place"];
  readonly leftG: number;
  /** Portions, for what is cooked. */
  readonly portions?: number;
  readonly leftMinor: number;
  /** Last day, and what sets it; absent where nobody knows. */
  readonly until?: CivilDate;
  readonly because?: KeepingLimit;
  /** Whole days left, 0 on the last day, negative for what has gone off; absent with `until`. */
  readonly daysLeft?: number;
}

/**
 * What is left in the stores and ends within so many days from a day on, or is not known to keep where it is, in the order
 * in which to use it: what has gone off first, what nobody knows of last.
 */
export function useUpList(state: RecordState, day: CivilDate, withinDays = 3): UseUpLine[] {
  return firstExpiredFirstOut(state.lots.values()).flatMap((lot): UseUpLine[] => {
    if (lot.since > day) return [];
    const { keeps, food, cooked, place, leftG, leftMinor } = lot;
    const daysLeft = keeps?.ok ? daysBetween(day, keeps.on) : undefined;
    if (daysLeft !== undefined && daysLeft > withinDays) return [];
    return [
      {
        lot: lot.id,
        ...(food !== undefined && { food }),
        ...(cooked !== undefined && { dish: cooked.dish, portions: leftG / cooked.portionG }),
        place,
        leftG,
        leftMinor,
        ...(keeps?.ok && daysLeft !== undefined && { until: keeps.on, because: keeps.because, daysLeft }),
      },
    ];
  });
}
