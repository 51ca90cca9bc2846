import type { MenuProblem } from "../problem.ts";
import type { ReadPlan } from "./readPlan.ts";
import { readTogether } from "./readTogether.ts";

/**
 * Hands-on minutes of each day: cooking on the day of the fresh serving, with the washing between dishes cooked at once;
 * serving a leftover on its own day.
 */
export function sumHandsOn(problem: MenuProblem, plan: ReadPlan): number[] {
  const minutes = Array<number>(problem.days).fill(0);
  const spend = (day: number, spent: number): void => {
    minutes[day] = (minutes[day] as number) + spent;
  };
  for (const { dish, fresh, leftovers, portions } of plan.batches) {
    spend(fresh.sitting.day, dish.handsOn.fixed + dish.handsOn.perPortion * portions);
    for (const { sitting } of leftovers) spend(sitting.day, problem.worth.leftoverMinutes);
  }
  for (const { day, washMinutes } of readTogether(problem, plan)) spend(day, washMinutes);
  return minutes;
}
