import type { Choose, Dish } from "../../dish/index.ts";
import type { WorkStage } from "../../work/solveWork.ts";
import type { SittingKitchen } from "./Cooking.ts";
import { solveCooking, stopAfter, type TimedCooking } from "./solveCooking.ts";
import { toWorkProblem } from "./toWorkProblem.ts";

/** Questions of the search after which it is stopped; a dish of a usual size is solved before the first. */
const MOST_QUESTIONS = 40;

/**
 * The order of work of a dish by itself, for the portions it is written for; asked up to a stage, absent = all of them.
 * Undefined where the kit does not suffice, or the search finds nothing in its counted work.
 */
export function timeAlone(
  dish: Dish,
  kitchen: SittingKitchen,
  choose: Choose,
  until?: WorkStage,
): TimedCooking | undefined {
  const stated = toWorkProblem({ ...kitchen, dishes: [{ dish, portions: dish.portions, choose }] });
  if (!stated.ok) return undefined;
  const options = { shouldStop: stopAfter(MOST_QUESTIONS), ...(until !== undefined && { until }) };
  const outcome = solveCooking(stated.cooking, options);
  return outcome.kind === "timed" ? outcome.timed : undefined;
}
