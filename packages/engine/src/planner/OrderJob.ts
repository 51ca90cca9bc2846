import type { WorkProblem } from "halfloaf/work";

/** One order of work to find. */
export interface OrderJob {
  readonly problem: WorkProblem;
  /** Milliseconds after which the best so far is given. */
  readonly limitMs: number;
  /** One 32-bit number that ends the search when it is not 0; absent where memory can't be shared. */
  readonly stopFlag?: SharedArrayBuffer;
}
