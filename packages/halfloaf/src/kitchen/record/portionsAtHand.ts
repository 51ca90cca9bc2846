import type { CivilDate } from "../../quantity/index.ts";
import { firstExpiredFirstOut, isGoneOff } from "../../stores/index.ts";
import type { RecordState } from "./recordState.ts";

/** Cooked portions in fridge or freezer. */
export interface PortionsAtHand {
  readonly lot: string;
  readonly dish: string;
  readonly portions: number;
  readonly place: "fridge" | "freezer" | "dry-store";
  readonly cookedOn: CivilDate;
  /** Last day; absent where it is not known. */
  readonly until?: CivilDate;
  readonly costMinor: number;
  /** All foods that went in; absent where that is not known. */
  readonly foods?: readonly string[];
}

/** The cooked portions that are good on a day, or not known to have gone off, in the order in which to eat them. */
export function portionsAtHand(state: RecordState, day: CivilDate): PortionsAtHand[] {
  return firstExpiredFirstOut(state.lots.values()).flatMap((lot): PortionsAtHand[] => {
    const { id, cooked, keeps, leftG, leftMinor, place, boughtOn, since } = lot;
    if (cooked === undefined || since > day || (keeps !== undefined && isGoneOff(keeps, day))) return [];
    const known = { ...(keeps?.ok && { until: keeps.on }), ...(cooked.foods && { foods: cooked.foods }) };
    const portions = leftG / cooked.portionG;
    return [{ lot: id, dish: cooked.dish, portions, place, cookedOn: boughtOn, ...known, costMinor: leftMinor }];
  });
}
