export type { WorkConflict } from "./model/findConflict.ts";
export type { RuleId } from "./model/WorkModel.ts";
export type { HoldExcess, WorkMeasures, WorkPlan } from "./plan.ts";
export type {
  WorkBoard,
  WorkDish,
  WorkKit,
  WorkOven,
  WorkProblem,
  WorkStep,
  WorkUse,
  WorkWait,
} from "./problem.ts";
export type { Schedule } from "./solver/findSchedule.ts";
export type { Project } from "./solver/project.ts";
export { type ProjectOptions, type ProjectOutcome, solveProject } from "./solver/solveProject.ts";
export { solveWork, type WorkOptions, type WorkOutcome, type WorkStage } from "./solveWork.ts";
