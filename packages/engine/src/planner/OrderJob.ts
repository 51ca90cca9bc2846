import type { WorkOutcome, WorkPlan, WorkProblem } from "halfloaf/work";

/** One order of work to find. */
export interface OrderJob {
  readonly problem: WorkProblem;
  /** Milliseconds after which the best so far is given. */
  readonly limitMs: number;
  /** One 32-bit number that ends the search when it is not 0; absent where memory can't be shared. */
  readonly stopFlag?: SharedArrayBuffer;
}

/**
 * How an order of work ended: as the solver says; `broken-off` where its worker had to be ended before the solver could
 * answer, with the best order told by then and nothing known of how good it is; `failed` where the worker broke down.
 */
export type OrderOutcome =
  | WorkOutcome
  | { readonly kind: "broken-off"; readonly plan: WorkPlan }
  | { readonly kind: "failed"; readonly reason: string };
