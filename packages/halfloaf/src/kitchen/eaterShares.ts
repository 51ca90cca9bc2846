import { energyNeed, type ReferReason } from "../intake/index.ts";
import { toKj } from "../quantity/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import type { Eater, Kitchen } from "./kitchen.ts";

/**
 * Energy of the day that four standard portions make, one of each kind: 1850 kcal. Whoever needs more eats more than
 * one standard portion of each dish.
 * **Source**: the sum of the median energies of the starter dishes of each kind, 423 + 588 + 215 + 607 kcal.
 */
export const STANDARD_DAY_KJ = toKj(1850);

/** What the plan knows of one eater's appetite. */
export interface EaterShare {
  readonly eater: Eater;
  /** Standard portions that this eater takes of a dish: energy need over the standard day. */
  readonly portions: number;
  /** Energy need of a whole day in kJ; absent where it is left to care. */
  readonly needKj?: number;
  /** The least energy that may be planned, as a share of the need, up to 1; absent with it. */
  readonly floorShare?: number;
  readonly referred?: ReferReason;
  /** Positions of the sittings this eater attends. */
  readonly sittings: readonly number[];
  /** Share of each day's energy that the attended sittings bring, 0 to 1. */
  readonly dayShare: readonly number[];
}

/** The appetite of each eater over the sittings to plan, in the order of the kitchen. */
export function eaterShares(kitchen: Kitchen, sittings: readonly DatedSitting[], days: number): EaterShare[] {
  const wholePct = Object.values(kitchen.energySharePct).reduce((sum, pct) => sum + pct, 0);
  return kitchen.eaters.map((eater) => {
    const attended = sittings.flatMap((sitting, k) => (sitting.eaters.includes(eater.id) ? [k] : []));
    const dayShare = Array.from({ length: days }, (_, day) =>
      attended.reduce((sum, k) => {
        const sitting = sittings[k] as DatedSitting;
        return sitting.day === day ? sum + (kitchen.energySharePct[sitting.kind] ?? 0) / wholePct : sum;
      }, 0),
    );
    const need = energyNeed(eater);
    const base = { eater, sittings: attended, dayShare };
    if (need.kind !== "need") return { ...base, portions: 1, ...(need.kind === "refer" && { referred: need.reason }) };
    return {
      ...base,
      portions: need.energyKj / STANDARD_DAY_KJ,
      needKj: need.energyKj,
      floorShare: need.floorKj / need.energyKj,
    };
  });
}
