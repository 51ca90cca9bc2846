import type { WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";
import type { WorkFault } from "./WorkFault.ts";

const BOTH = 2;

/** In every minute the steps and washes ask for no more hands than the cooks have; the first breach is named. */
export function checkHands(problem: WorkProblem, plan: WorkPlan): readonly WorkFault[] {
  const asked = new Array<number>(plan.serveMinutes + 1).fill(0);
  const ask = (start: number, minutes: number, hands: number) => {
    for (let t = start; t < start + minutes && t < asked.length; t++) asked[t] = (asked[t] as number) + hands;
  };
  for (const [i, { minutes, hands }] of problem.steps.entries()) ask(plan.starts[i] as number, minutes, hands);
  for (const start of plan.boardWashes) ask(start, problem.board?.washMinutes ?? 0, BOTH);
  for (const { use, startMinutes } of plan.kitWashes) {
    const kind = problem.uses[use]?.kind as number;
    ask(startMinutes, problem.kit[kind]?.washMinutes ?? 0, BOTH);
  }
  const t = asked.findIndex((hands) => hands > BOTH * problem.cooks);
  if (t < 0) return [];
  return [{ code: "hands", path: ["minute", t], expected: `<= ${BOTH * problem.cooks}`, received: String(asked[t]) }];
}
