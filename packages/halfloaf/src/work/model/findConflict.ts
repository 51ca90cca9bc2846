import type { WorkProblem } from "../problem.ts";
import { Solver } from "../solver/Solver.ts";
import { boundlessExcess, buildWorkModel } from "./buildWorkModel.ts";
import type { RuleId } from "./WorkModel.ts";

/** Rules that cannot all be kept. */
export interface WorkConflict {
  readonly rules: readonly RuleId[];
  /** True where leaving out any one of them would leave an order of work; false where the search was stopped. */
  readonly isLeast: boolean;
}

/**
 * Firm holds, latest starts and kit that contradict each other: rules are left out one by one for as long as the rest
 * still contradict. Least waits and the order of the steps are taken as given.
 */
export function findConflict(problem: WorkProblem, horizon: number, shouldStop: () => boolean): WorkConflict {
  const all = rulesOf(problem);
  const ignored = new Set<RuleId>();
  for (const rule of all) {
    ignored.add(rule);
    const end = attempt(problem, horizon, ignored, shouldStop);
    if (end === "stopped") return { rules: all.filter((each) => each === rule || !ignored.has(each)), isLeast: false };
    if (end === "solved") ignored.delete(rule);
  }
  return { rules: all.filter((rule) => !ignored.has(rule)), isLeast: true };
}

function attempt(problem: WorkProblem, horizon: number, ignored: ReadonlySet<RuleId>, shouldStop: () => boolean) {
  const question = {
    horizon,
    serveFrom: 0,
    serveUntil: horizon,
    mostExcess: boundlessExcess(problem, horizon),
    ignored,
  };
  const { model, afterwards } = buildWorkModel(problem, question);
  return new Solver(model.constraints, { schedule: [...model.start, model.serve], afterwards, shouldStop }).search();
}

function rulesOf(problem: WorkProblem): readonly RuleId[] {
  return [
    ...(problem.oven ? (["oven"] as const) : []),
    ...(problem.board ? (["board"] as const) : []),
    "hands" as const,
    ...problem.kit.map((_, kind) => `kit ${kind}` as const),
    ...problem.waits.flatMap(({ mostMinutes, isFirm }, w) =>
      mostMinutes !== undefined && isFirm ? [`wait ${w}` as const] : [],
    ),
    ...problem.dishes.flatMap(({ holdMinutes, isFirm }, d) =>
      holdMinutes !== undefined && isFirm ? [`dish ${d}` as const] : [],
    ),
    ...problem.steps.flatMap(({ latestMinutes }, i) => (latestMinutes === undefined ? [] : [`latest ${i}` as const])),
  ];
}
