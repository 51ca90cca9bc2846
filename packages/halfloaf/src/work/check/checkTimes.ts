import type { WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";
import type { WorkFault, WorkFaultCode } from "./WorkFault.ts";

/** Earliest and latest starts, least waits, and that all is done before it is served. */
export function checkTimes({ steps, waits }: WorkProblem, plan: WorkPlan): readonly WorkFault[] {
  const faults: WorkFault[] = [];
  const note = (code: WorkFaultCode, path: (string | number)[], expected: string, received: number) =>
    faults.push({ code, path, expected, received: String(received) });
  for (const [i, { minutes, earliestMinutes, latestMinutes }] of steps.entries()) {
    const start = plan.starts[i] as number;
    if (earliestMinutes !== undefined && start < earliestMinutes)
      note("earliest", ["starts", i], `>= ${earliestMinutes}`, start);
    if (latestMinutes !== undefined && start > latestMinutes)
      note("latest", ["starts", i], `<= ${latestMinutes}`, start);
    if (start + minutes > plan.serveMinutes)
      note("served", ["starts", i], `an end by ${plan.serveMinutes}`, start + minutes);
  }
  for (const [w, { from, to, leastMinutes }] of waits.entries()) {
    const wait = (plan.starts[to] as number) - (plan.starts[from] as number) - (steps[from]?.minutes as number);
    if (wait < leastMinutes) note("wait-least", ["waits", w], `>= ${leastMinutes}`, wait);
  }
  return faults;
}
