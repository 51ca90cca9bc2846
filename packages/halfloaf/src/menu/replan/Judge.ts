import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";

/** A broken rule as a judge tells it. */
export interface JudgedFault {
  readonly code: string;
  readonly path: readonly (string | number)[];
  readonly expected: string;
  readonly received: string;
}

/** What a judge says of a plan: every rule it breaks, and its money in minor units. */
export interface Verdict<Fault extends JudgedFault = JudgedFault> {
  readonly faults: readonly Fault[];
  readonly money: { readonly totalMinor: number };
}

/**
 * Judges plans apart from the planner: `checkPlan` of `menu/check`. It comes in as an argument, as the planner may not
 * know its checker.
 */
export type Judge = (problem: MenuProblem, plan: MenuPlan) => Verdict;
