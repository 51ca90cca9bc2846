import type { MenuPlan, MenuProblem } from "halfloaf/menu";

/** One search to run: it ends after so many moves, or when it is told to stop. */
export interface PlanJob {
  readonly problem: MenuProblem;
  readonly seed: number;
  readonly moves: number;
  /** Seconds to prove meanwhile how little any plan can cost; absent = no proof. */
  readonly proofS?: number;
}

/** What there is so far. */
export interface PlanProgress {
  readonly moves: number;
  /** Money of the best plan in minor units; absent while there is none. */
  readonly costMinor?: number;
  /**
   * The best plan that was written down, which the judge found no fault in. It may lag behind `costMinor` by some
   * tenths of a second.
   */
  readonly plan?: MenuPlan;
  /** No plan costs less, in minor units; absent while nothing is proven. */
  readonly boundMinor?: number;
  /** No plan is cheaper than the best by more than this, in minor units; absent while either is. */
  readonly gapMinor?: number;
}

/**
 * How a search ended. `planned`: the best plan found, `complete` where all moves were made. `none`: no plan keeps all
 * limits; the plan that breaks them least, and the sittings for which there is no dish at all. `cancelled`: nobody
 * wants it. `failed`: its worker broke down, for want of memory for example.
 */
export type PlanOutcome =
  | {
      readonly status: "planned";
      readonly plan: MenuPlan;
      readonly costMinor: number;
      readonly moves: number;
      readonly complete: boolean;
    }
  | {
      readonly status: "none";
      readonly leastBroken?: MenuPlan;
      readonly gaps: readonly number[];
      readonly moves: number;
    }
  | { readonly status: "cancelled" }
  | { readonly status: "failed"; readonly reason: string };
