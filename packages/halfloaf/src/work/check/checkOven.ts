import type { WorkPlan } from "../plan.ts";
import { ovenMinutes, type WorkProblem } from "../problem.ts";
import type { WorkFault } from "./WorkFault.ts";

/** Shelves, one temperature at a time, and time to get from one to another and to the first. */
export function checkOven(problem: WorkProblem, plan: WorkPlan): readonly WorkFault[] {
  const { oven } = problem;
  const bakes = problem.steps.flatMap((step, i) => {
    if (!step.oven) return [];
    const start = plan.starts[i] as number;
    return [{ ...step.oven, step: i, start, end: start + step.minutes }];
  });
  if (!oven) {
    return bakes.map(({ step }) => ({
      code: "oven" as const,
      path: ["starts", step],
      expected: "an oven",
      received: "none",
    }));
  }
  const faults: WorkFault[] = [];
  for (const bake of bakes) {
    const { step, start, tempC } = bake;
    const warm = ovenMinutes(oven, oven.roomC, tempC);
    if (start < warm)
      faults.push({ code: "oven", path: ["starts", step], expected: `>= ${warm}`, received: String(start) });
    const at = bakes.filter((other) => other.start <= start && start < other.end);
    const shelves = at.reduce((sum, other) => sum + other.shelves, 0);
    if (shelves > oven.shelves) {
      faults.push({
        code: "shelves",
        path: ["minute", start],
        expected: `<= ${oven.shelves}`,
        received: String(shelves),
      });
    }
    for (const other of bakes) {
      if (other.tempC === tempC || other.start < start) continue;
      const ready = bake.end + ovenMinutes(oven, tempC, other.tempC);
      if (other.start >= ready) continue;
      faults.push({
        code: "oven",
        path: ["starts", other.step],
        expected: `>= ${ready}`,
        received: String(other.start),
      });
    }
  }
  return faults;
}
