import type { CivilDate } from "../../../quantity/index.ts";
import { firstExpiredFirstOut, type KeepingLimit, type LotState } from "../../../stores/index.ts";
import type { RecordState } from "../recordState.ts";

/** One lot with anything left; mass in g, money in whole minor units at lot cost. */
export interface StoresRow {
  readonly lot: string;
  /** One of the two: what is as purchased, or cooked portions. */
  readonly food?: string;
  readonly dish?: string;
  readonly pack?: string;
  readonly place: LotState["place"];
  readonly since: CivilDate;
  /** Absent where it was never opened. */
  readonly openedOn?: CivilDate;
  readonly leftG: number;
  /** Absent for a food. */
  readonly portions?: number;
  readonly costMinor: number;
  /** Last day and what sets it; absent where nobody knows. */
  readonly until?: CivilDate;
  readonly because?: KeepingLimit;
  /** By how many g the record is known to be wrong; absent where it is not. */
  readonly toCountG?: number;
}

/** What is in the stores on a day, as plain rows, first expired first. `state` is that of the end of the day. */
export function listStores({ lots, toCount }: Pick<RecordState, "lots" | "toCount">, day: CivilDate): StoresRow[] {
  return firstExpiredFirstOut(lots.values())
    .filter(({ since }) => since <= day)
    .map(({ id, food, cooked, pack, place, since, openedOn, leftG, leftMinor, keeps }): StoresRow => {
      const doubt = toCount.get(id);
      return {
        lot: id,
        ...(food !== undefined && { food }),
        ...(cooked !== undefined && { dish: cooked.dish }),
        ...(pack !== undefined && { pack }),
        place,
        since,
        ...(openedOn !== undefined && { openedOn }),
        leftG,
        ...(cooked !== undefined && { portions: leftG / cooked.portionG }),
        costMinor: leftMinor,
        ...(keeps?.ok && { until: keeps.on, because: keeps.because }),
        ...(doubt !== undefined && { toCountG: doubt.shortG }),
      };
    });
}
