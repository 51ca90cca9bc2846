import type { Happening } from "./Happening.ts";
import type { TimedCooking } from "./solveCooking.ts";

/**
 * What has happened by a minute where all went as planned: steps and washes that begin before it; steps that end by then
 * are done.
 */
export function happenedAsPlanned({ cooking, plan }: TimedCooking, minutes: number): Happening[] {
  const steps = cooking.problem.steps.flatMap((step, i): Happening[] => {
    const begunMinutes = plan.starts[i] as number;
    if (cooking.steps[i]?.step === undefined || begunMinutes >= minutes) return [];
    const end = begunMinutes + step.minutes;
    return [{ kind: "step", step: i, begunMinutes, ...(end <= minutes && { doneMinutes: end }) }];
  });
  const boards = plan.boardWashes.map((startMinutes): Happening => ({ kind: "board-wash", startMinutes }));
  const vessels = plan.kitWashes.map((wash): Happening => ({ kind: "kit-wash", ...wash }));
  return [...steps, ...[...boards, ...vessels].filter((each) => each.kind !== "step" && each.startMinutes < minutes)];
}
