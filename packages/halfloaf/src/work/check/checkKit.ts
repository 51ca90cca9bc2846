import type { WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";
import type { WorkFault } from "./WorkFault.ts";

/**
 * Kit is played through piece by piece: a use takes a clean piece; one with a wash takes a used piece that is free
 * when the wash starts. Kit that needs no wash is clean again at once.
 */
export function checkKit(problem: WorkProblem, plan: WorkPlan): readonly WorkFault[] {
  return problem.kit.flatMap((_, kind) => playThrough(problem, plan, kind));
}

function playThrough(problem: WorkProblem, plan: WorkPlan, kind: number): readonly WorkFault[] {
  const { count, washMinutes } = problem.kit[kind] as WorkProblem["kit"][number];
  const takings = problem.uses.flatMap((use, index) => {
    if (use.kind !== kind) return [];
    const wash = plan.kitWashes.find((each) => each.use === index);
    const start = plan.starts[use.from] as number;
    const end = (plan.starts[use.to] as number) + (problem.steps[use.to]?.minutes as number);
    return [{ index, start, end, wash: wash?.startMinutes }];
  });
  takings.sort((a, b) => (a.wash ?? a.start) - (b.wash ?? b.start));
  const faults: WorkFault[] = [];
  let clean = count;
  const freeFrom: number[] = [];
  for (const { index, start, end, wash } of takings) {
    const at = wash ?? start;
    const free = freeFrom.findIndex((time) => time <= at);
    if (wash !== undefined && wash + (washMinutes ?? 0) > start) {
      faults.push({
        code: "unwashed",
        path: ["uses", index],
        expected: `a wash done by ${start}`,
        received: String(wash),
      });
    }
    if (wash === undefined && clean > 0) clean--;
    else if (free >= 0 && (wash !== undefined || washMinutes === undefined)) freeFrom.splice(free, 1);
    else
      faults.push({
        code: free >= 0 ? "unwashed" : "kit",
        path: ["uses", index],
        expected: `one of ${count} free`,
        received: `none at ${at}`,
      });
    freeFrom.push(end);
  }
  return faults;
}
