import type { MenuProblem } from "../problem.ts";
import { decodePlan } from "../search/decodePlan.ts";
import { reckonLoads } from "../search/reckonLoads.ts";
import type { WeekState } from "../search/WeekState.ts";

/** True if the menu's purchases can be carried home and put away; cheap where nothing limits either. */
export function isCarried(problem: MenuProblem, state: WeekState): boolean {
  const { fridgeLitres, freezerLitres } = problem.limits;
  const isLimited =
    problem.trips.some((trip) => trip.carryG !== undefined) || (fridgeLitres ?? freezerLitres) !== undefined;
  return !isLimited || reckonLoads(problem, decodePlan(state)).length === 0;
}
