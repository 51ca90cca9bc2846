import type { MenuPlan, PlannedBatch } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";

/** Day on which a batch is cooked; never for a batch without a sitting. */
export function cookingDay(problem: MenuProblem, batch: PlannedBatch): number {
  return problem.sittings[batch.sittings[0] ?? -1]?.day ?? Number.POSITIVE_INFINITY;
}

/** Positions of the batches that were cooked before a day: what is left of them is eaten as planned. */
export function cookedBefore(problem: MenuProblem, plan: MenuPlan, day: number): ReadonlySet<number> {
  return new Set(plan.batches.flatMap((batch, at) => (cookingDay(problem, batch) < day ? [at] : [])));
}

/** The sittings that these batches feed. */
export function sittingsOf(plan: MenuPlan, batches: ReadonlySet<number>): ReadonlySet<number> {
  return new Set(plan.batches.flatMap(({ sittings }, at) => (batches.has(at) ? sittings : [])));
}
