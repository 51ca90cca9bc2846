import type { MenuProblem } from "../problem.ts";
import type { ReadPlan } from "./readPlan.ts";

/** Hands-on minutes of each day: cooking on the day of the fresh serving, serving a leftover on its own day. */
export function sumHandsOn(problem: MenuProblem, plan: ReadPlan): number[] {
  const minutes = Array<number>(problem.days).fill(0);
  const spend = (day: number, spent: number): void => {
    minutes[day] = (minutes[day] as number) + spent;
  };
  for (const { dish, fresh, leftovers, portions } of plan.batches) {
    spend(fresh.sitting.day, dish.handsOn.fixed + dish.handsOn.perPortion * portions);
    for (const { sitting } of leftovers) spend(sitting.day, problem.worth.leftoverMinutes);
  }
  return minutes;
}
