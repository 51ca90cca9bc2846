import type { WorkMeasures, WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";

/** A hold that is gone beyond, and by how many minutes. */
export interface FoundExcess {
  readonly dish: number;
  readonly wait?: number;
  readonly minutes: number;
  readonly isFirm: boolean;
}

/** Every hold that the plan goes beyond. */
export function findExcesses(problem: WorkProblem, plan: WorkPlan): readonly FoundExcess[] {
  const found: FoundExcess[] = [];
  for (const [w, wait] of problem.waits.entries()) {
    if (wait.mostMinutes === undefined) continue;
    const minutes = waited(problem, plan, wait.from, plan.starts[wait.to] as number) - wait.mostMinutes;
    const dish = problem.steps[wait.from]?.dish as number;
    if (minutes > 0) found.push({ dish, wait: w, minutes, isFirm: wait.isFirm === true });
  }
  for (const [dish, { last, holdMinutes, isFirm }] of problem.dishes.entries()) {
    if (holdMinutes === undefined) continue;
    const minutes = waited(problem, plan, last, plan.serveMinutes) - holdMinutes;
    if (minutes > 0) found.push({ dish, minutes, isFirm: isFirm === true });
  }
  return found;
}

/** What the plan is worth, counted from its times. Turns are 0 with two cooks. */
export function measureWork(problem: WorkProblem, plan: WorkPlan): WorkMeasures {
  const excessMinutes = findExcesses(problem, plan).reduce((sum, { minutes }) => sum + minutes, 0);
  return {
    excessMinutes,
    serveMinutes: plan.serveMinutes,
    keeping: keepingOf(problem, plan),
    turns: turnsOf(problem, plan),
  };
}

function waited(problem: WorkProblem, plan: WorkPlan, from: number, until: number): number {
  return until - (plan.starts[from] as number) - (problem.steps[from]?.minutes as number);
}

function keepingOf(problem: WorkProblem, plan: WorkPlan): number {
  let keeping = plan.boardWashes.length * (problem.board?.washWeight ?? 0);
  for (const { last, holdWeight } of problem.dishes)
    keeping += holdWeight * waited(problem, plan, last, plan.serveMinutes);
  for (const { from, to, weight } of problem.waits) {
    if (weight !== undefined) keeping += weight * waited(problem, plan, from, plan.starts[to] as number);
  }
  return keeping;
}

function turnsOf({ cooks, steps }: WorkProblem, plan: WorkPlan): number {
  if (cooks !== 1) return 0;
  const row = steps
    .flatMap(({ hands, minutes, dish }, i) =>
      hands === 2 && minutes > 0 ? [{ dish, start: plan.starts[i] as number }] : [],
    )
    .sort((a, b) => a.start - b.start);
  return row.filter(({ dish }, k) => k > 0 && dish !== row[k - 1]?.dish).length;
}
