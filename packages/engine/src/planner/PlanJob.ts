import type { MenuPlan, MenuProblem } from "halfloaf/menu";

/** What to search: it ends after so many moves, or when it is told to stop. */
export interface PlanJob {
  readonly problem: MenuProblem;
  readonly seed: number;
  /** Moves of each search. */
  readonly moves: number;
  /**
   * Searches to run beside each other, each in a worker of its own and from a seed of its own (`furtherSeed`), the best
   * of which is taken; absent = 1. `Planner.mostSearches` says how many the machine has room for.
   */
  readonly searches?: number;
  /** Seconds to prove meanwhile how little any plan can cost; absent = no proof. */
  readonly proofS?: number;
}

/** What there is so far. It never gets worse: of several searches the best plan is told, whichever found it. */
export interface PlanProgress {
  /** Moves that each search has made at least. */
  readonly moves: number;
  /** Money of the best plan in minor units; absent while there is none. */
  readonly costMinor?: number;
  /**
   * The best plan that was written down, which the judge found no fault in. It may lag behind `costMinor` by some
   * tenths of a second.
   */
  readonly plan?: MenuPlan;
  /** Seed of the search that found `plan`; absent while there is none. */
  readonly seed?: number;
  /** No plan costs less, in minor units; absent while nothing is proven. */
  readonly boundMinor?: number;
  /** No plan is cheaper than the best by more than this, in minor units; absent while either is. */
  readonly gapMinor?: number;
}

/**
 * How the searches ended. `planned`: the best plan found, with the seed and the moves of the search that found it;
 * `complete` where every search made all its moves, and then the same job gives the same plan again, as does one search
 * alone from that seed. `none`: no plan keeps all limits; the plan that breaks them least, and the sittings for which there
 * is no dish at all. `cancelled`: nobody wants it. `failed`: its worker broke down, for want of memory for example; of
 * several searches this is told only where no other found a plan.
 */
export type PlanOutcome =
  | {
      readonly status: "planned";
      readonly plan: MenuPlan;
      readonly costMinor: number;
      readonly seed: number;
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
