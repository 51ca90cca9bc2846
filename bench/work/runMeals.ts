import { solveWork, type WorkOutcome, type WorkProblem, type WorkStage } from "halfloaf/work";
import { checkWork } from "halfloaf/work/check";
import { generateMeal } from "./generateMeal.ts";
import { maximumOf, medianOf } from "./statistics.ts";

/** One meal: when each stage was proven, and what the checker says of the plan. */
export interface MealRun {
  readonly seed: number;
  readonly problem: WorkProblem;
  readonly outcome: WorkOutcome;
  readonly stageMs: Partial<Record<WorkStage, number>>;
  readonly milliseconds: number;
  readonly faults: number;
}

export function runMeal(seed: number, isCrowded: boolean, limitMs: number): MealRun {
  const problem = generateMeal(seed, isCrowded);
  const began = performance.now();
  const stageMs: Partial<Record<WorkStage, number>> = {};
  const outcome = solveWork(problem, {
    shouldStop: () => performance.now() - began > limitMs,
    onStage: (stage) => {
      stageMs[stage] = performance.now() - began;
    },
  });
  const milliseconds = performance.now() - began;
  return { seed, problem, outcome, stageMs, milliseconds, faults: countFaults(problem, outcome) };
}

/** Rules broken, and measures that the checker counts otherwise. */
function countFaults(problem: WorkProblem, outcome: WorkOutcome): number {
  if (outcome.kind !== "optimal" && outcome.kind !== "feasible") return 0;
  const { faults, measures } = checkWork(problem, outcome.plan, outcome.excesses);
  const isMiscounted = outcome.kind === "optimal" && JSON.stringify(outcome.measures) !== JSON.stringify(measures);
  return faults.length + (isMiscounted ? 1 : 0);
}

/** Sums up the meals whose holds can be kept and those whose holds collide. */
export function sumUpMeals(runs: readonly MealRun[]) {
  const collides = ({ outcome, stageMs }: MealRun) =>
    stageMs.excess !== undefined || (outcome.kind === "feasible" && outcome.open.stage === "excess");
  const within = (group: readonly MealRun[], ms: number) =>
    group.filter(({ outcome, milliseconds }) => outcome.kind === "optimal" && milliseconds <= ms).length / group.length;
  const describe = (group: readonly MealRun[]) => ({
    meals: group.length,
    provenAllStages: {
      "0.05": within(group, 50),
      "0.2": within(group, 200),
      "1": within(group, 1000),
      limit: within(group, Infinity),
    },
    serveProvenWithin: Object.fromEntries(
      [50, 200, 1000].map((ms) => [
        ms / 1000,
        group.filter(({ stageMs }) => (stageMs.serve ?? Infinity) <= ms).length / group.length,
      ]),
    ),
    medianMs: medianOf(group.map(({ milliseconds }) => milliseconds)),
    greatestMs: maximumOf(group.map(({ milliseconds }) => milliseconds)),
    withoutPlan: group.filter(({ outcome }) => outcome.kind === "stopped" || outcome.kind === "impossible").length,
  });
  return {
    steps: { least: Math.min(...runs.map(stepsOf)), most: Math.max(...runs.map(stepsOf)) },
    holdsKept: describe(runs.filter((run) => !collides(run))),
    holdsCollide: describe(runs.filter(collides)),
    faults: runs.reduce((sum, { faults }) => sum + faults, 0),
    open: runs.flatMap(({ seed, outcome }) => {
      const { kind } = outcome;
      if (kind === "optimal") return [];
      return [{ seed, kind, ...(kind === "feasible" ? outcome.open : {}) }];
    }),
  };
}

function stepsOf({ problem }: MealRun): number {
  return problem.steps.length;
}
