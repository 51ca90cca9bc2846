import type { HoldExcess, WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";
import { checkBoard } from "./checkBoard.ts";
import { checkHands } from "./checkHands.ts";
import { checkKit } from "./checkKit.ts";
import { checkOven } from "./checkOven.ts";
import { checkTimes } from "./checkTimes.ts";
import { findExcesses, measureWork } from "./measureWork.ts";
import type { WorkFault } from "./WorkFault.ts";

/**
 * Judges an order of work from the problem and the plan alone: every rule it breaks, minute by minute, and its
 * measures. `excesses` are the holds said to be gone beyond; any other excess, or a greater one, is a fault.
 *
 * An empty list of faults means that a cook can do it as it stands. The problem itself is taken as it is.
 */
export function checkWork(problem: WorkProblem, plan: WorkPlan, excesses: readonly HoldExcess[] = []) {
  const shape = checkShape(problem, plan);
  if (shape.length > 0) return { faults: shape, measures: undefined };
  const faults = [
    ...checkTimes(problem, plan),
    ...checkHolds(problem, plan, excesses),
    ...checkHands(problem, plan),
    ...checkBoard(problem, plan),
    ...checkKit(problem, plan),
    ...checkOven(problem, plan),
  ];
  return { faults, measures: measureWork(problem, plan) };
}

function checkShape({ steps, uses }: WorkProblem, plan: WorkPlan): WorkFault[] {
  const faults: WorkFault[] = [];
  const isTime = (time: number) => Number.isInteger(time) && time >= 0;
  const note = (path: (string | number)[], expected: string, received: number) =>
    faults.push({ code: "shape", path, expected, received: String(received) });
  if (plan.starts.length !== steps.length) note(["starts"], `${steps.length} starts`, plan.starts.length);
  for (const [i, start] of plan.starts.entries()) if (!isTime(start)) note(["starts", i], "a minute from 0", start);
  if (!isTime(plan.serveMinutes)) note(["serveMinutes"], "a minute from 0", plan.serveMinutes);
  for (const [k, start] of plan.boardWashes.entries())
    if (!isTime(start)) note(["boardWashes", k], "a minute from 0", start);
  for (const [k, { use, startMinutes }] of plan.kitWashes.entries()) {
    if (uses[use] === undefined) note(["kitWashes", k, "use"], "a use", use);
    if (!isTime(startMinutes)) note(["kitWashes", k, "startMinutes"], "a minute from 0", startMinutes);
  }
  return faults;
}

function checkHolds(problem: WorkProblem, plan: WorkPlan, said: readonly HoldExcess[]): WorkFault[] {
  const allowed = (dish: number, wait: number | undefined) =>
    said.filter((each) => each.dish === dish && each.wait === wait).reduce((sum, { minutes }) => sum + minutes, 0);
  return findExcesses(problem, plan).flatMap(({ dish, wait, minutes, isFirm }) => {
    const most = isFirm ? 0 : allowed(dish, wait);
    if (minutes <= most) return [];
    const path = wait === undefined ? ["dishes", dish, "holdMinutes"] : ["waits", wait, "mostMinutes"];
    return [
      {
        code: "hold" as const,
        path,
        expected: `at most ${most} minutes beyond`,
        received: `${minutes} minutes beyond`,
      },
    ];
  });
}
