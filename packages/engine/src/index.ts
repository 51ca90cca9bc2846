export type { OrderOutcome } from "./planner/OrderJob.ts";
export type { PlanJob, PlanOutcome, PlanProgress } from "./planner/PlanJob.ts";
export {
  Planner,
  type PlannerOptions,
  type RunningOrder,
  type RunningPlan,
  type RunningProof,
} from "./planner/Planner.ts";
export type { PlannerWorker } from "./planner/PlannerWorker.ts";
export type { ProofJob } from "./planner/ProofJob.ts";
export { type BoundOutcome, type BoundProgress, type BoundRequest, proveBound } from "./proveBound.ts";
export { proveShortList } from "./proveShortList.ts";
export { type LinearLimits, solveLinear } from "./solveLinear.ts";
