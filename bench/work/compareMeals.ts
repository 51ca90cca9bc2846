import type { MealRun } from "./runMeals.ts";
import { medianOf } from "./statistics.ts";
import type { Trial } from "./trial.ts";

/** The same meals by the trial; where both kept all holds and proved it, serve and keeping must agree. */
export function compareMeals(trial: Trial, runs: readonly MealRun[], limitMs: number) {
  const both = runs.map((run) => ({ run, other: trial.solveMeal(run.problem, limitMs) }));
  const contradictions = both.flatMap(({ run: { seed, outcome, stageMs }, other }) => {
    if (outcome.kind !== "optimal" || !other.isProven || other.isRelaxed !== (stageMs.excess !== undefined)) return [];
    const { serveMinutes, keeping } = outcome.measures;
    if (other.isRelaxed || (other.serveMinutes === serveMinutes && other.keeping === keeping)) return [];
    return [`meal ${seed}: ${serveMinutes} at ${keeping}, the trial ${other.serveMinutes} at ${other.keeping}`];
  });
  const times = both.map(({ other }) => other.milliseconds);
  // The trial has no last stage, so ours is timed up to where it stops.
  const ours = both.map(({ run }) => run.stageMs.keeping ?? run.milliseconds);
  return {
    proven: both.filter(({ other }) => other.isProven).length / both.length,
    medianMs: medianOf(times),
    oursSameStagesMedianMs: medianOf(ours),
    timesFasterAtMedian: medianOf(times) / medianOf(ours),
    contradictions,
  };
}
