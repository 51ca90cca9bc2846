import type { MenuPlan, MenuProblem } from "halfloaf/menu";

/** One search to run: it ends after so many moves, or when it is told to stop. */
export interface PlanJob {
  readonly problem: MenuProblem;
  readonly seed: number;
  readonly moves: number;
}

/** What a search has so far. */
export interface PlanProgress {
  readonly moves: number;
  /** Money of the best plan in minor units; absent while there is none. */
  readonly costMinor?: number;
}

/**
 * How a search ended. `planned`: the best plan found, `complete` where all moves were made. `none`: no plan keeps all
 * limits; the plan that breaks them least, and the sittings for which there is no dish at all. `cancelled`: nobody wants it.
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
  | { readonly status: "cancelled" };
