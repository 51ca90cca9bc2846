import type { MenuProblem } from "../problem.ts";
import { decodePlan } from "./decodePlan.ts";
import { reckonLoads } from "./reckonLoads.ts";
import type { WeekState } from "./WeekState.ts";

/** True if the plan of this state can be carried home and put away; cheap where nothing limits either. */
export function carriesAll(problem: MenuProblem, state: WeekState): boolean {
  const { fridgeLitres, freezerLitres } = problem.limits;
  const isFree =
    fridgeLitres === undefined &&
    freezerLitres === undefined &&
    problem.trips.every(({ carryG }) => carryG === undefined);
  return isFree || reckonLoads(problem, decodePlan(state)).length === 0;
}
