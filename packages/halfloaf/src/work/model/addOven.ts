import { ovenMinutes, type WorkOven, type WorkProblem } from "../problem.ts";
import { negate } from "../solver/literal.ts";
import type { WorkModel } from "./WorkModel.ts";

/**
 * The oven: shelves as a resource, and for two steps at different temperatures one after the other, with the time the
 * oven takes to get from one temperature to the other in between. The first heat-up makes a step wait at the start.
 */
export function addOven(model: WorkModel, oven: WorkOven): void {
  const { constraints, problem } = model;
  const steps = ovenSteps(problem);
  for (const { step, tempC } of steps) {
    const start = model.startOf(step);
    constraints.lows[start] = Math.max(constraints.lows[start] as number, ovenMinutes(oven, oven.roomC, tempC));
  }
  constraints.addCumulative(
    oven.shelves,
    steps.map(({ step, shelves }) => model.intervalOf(step, shelves)),
  );
  for (const [k, a] of steps.entries()) {
    for (const b of steps.slice(k + 1)) {
      if (a.tempC === b.tempC) continue;
      const isFirst = model.isBefore(a.step, b.step);
      const [start, next] = [model.startOf(a.step), model.startOf(b.step)];
      constraints.addEdge(start, next, model.minutesOf(a.step) + ovenMinutes(oven, a.tempC, b.tempC), isFirst);
      constraints.addEdge(next, start, model.minutesOf(b.step) + ovenMinutes(oven, b.tempC, a.tempC), negate(isFirst));
    }
  }
}

function ovenSteps(problem: WorkProblem) {
  return problem.steps.flatMap(({ oven }, step) => (oven ? [{ step, ...oven }] : []));
}
