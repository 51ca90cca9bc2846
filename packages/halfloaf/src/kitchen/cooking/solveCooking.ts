import type { HoldExcess, WorkPlan } from "../../work/plan.ts";
import { solveWork, type WorkOptions, type WorkOutcome } from "../../work/solveWork.ts";
import type { Cooking } from "./Cooking.ts";

/** A cooking with its order of work, and how good that is known to be. */
export interface TimedCooking {
  readonly cooking: Cooking;
  readonly plan: WorkPlan;
  /** Holds gone beyond; empty where all are kept. */
  readonly excesses: readonly HoldExcess[];
  /** True where no other order of work is served earlier with less gone beyond. */
  readonly isProven: boolean;
}

/** An order of work, or why there is none: rules that contradict each other, or a stop before one was found. */
export type CookingOutcome =
  | { readonly kind: "timed"; readonly timed: TimedCooking }
  | Extract<WorkOutcome, { readonly kind: "impossible" | "stopped" }>;

/** The order of work of a cooking; the same each time as long as nobody stops it. */
export function solveCooking(cooking: Cooking, options: WorkOptions): CookingOutcome {
  const outcome = solveWork(cooking.problem, options);
  if (outcome.kind === "impossible" || outcome.kind === "stopped") return outcome;
  const { plan, excesses } = outcome;
  const isProven = outcome.kind === "optimal" || !["excess", "serve"].includes(outcome.open.stage);
  return { kind: "timed", timed: { cooking, plan, excesses, isProven } };
}

/** A stop after so many questions of the search, so that it ends at the same place on every machine. */
export function stopAfter(questions: number): () => boolean {
  let asked = 0;
  return () => ++asked > questions;
}
