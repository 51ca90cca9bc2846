export type { PlanJob, PlanOutcome, PlanProgress } from "./planner/PlanJob.ts";
export { Planner, type PlannerWorker, type RunningPlan } from "./planner/Planner.ts";
export { type BoundOutcome, type BoundProgress, type BoundRequest, proveBound } from "./proveBound.ts";
export { proveShortList } from "./proveShortList.ts";
export { type LinearLimits, solveLinear } from "./solveLinear.ts";
