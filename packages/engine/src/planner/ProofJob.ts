import type { MenuProblem } from "halfloaf/menu";
import type { BoundOutcome } from "../proveBound.ts";

/** One bound to prove. */
export interface ProofJob {
  readonly problem: MenuProblem;
  /** Seconds to work. */
  readonly seconds: number;
  /** Money of the best plan known, in minor units; absent while there is none. */
  readonly incumbentMinor?: number;
  /** Dishes to which plans are narrowed, as indices of the problem's dishes; absent means all. */
  readonly dishes?: readonly number[];
}

/** What a worker answers: the proof, and how much memory its solver has taken by now. */
export interface ProofAnswer {
  readonly outcome: BoundOutcome;
  readonly memoryBytes: number;
}
