import type { DayJob, WeekPlan } from "halfloaf/kitchen";
import { cook, eat, type Pen, type RecordEvent, toCookWish } from "halfloaf/kitchen/record";
import type { KitchenView } from "../kitchen/KitchenSession.ts";
import { platesOf } from "./platesOf.ts";

/** What an accepted week has somebody cook, heat again or take out. */
export type DishJob = Extract<DayJob, { readonly portions: number }>;

/** The events of a dish that was cooked and eaten as its week planned it, on its day or, where that is to come, today. */
export function tellDone(job: DishJob, week: WeekPlan, { state, tables, day }: KitchenView, pen: Pen): RecordEvent[] {
  const dish = tables.dishes.find(({ id }) => id === job.dish);
  if (dish === undefined) return [];
  const on = job.date < day ? job.date : day;
  const plates = platesOf(week, job.batch, job.date, job.sitting);
  if (job.kind !== "cook") {
    const served = plates.map((plate) => ({ ...plate, dish: job.dish }));
    const { eaten } = eat(state, { on, sitting: job.sitting, plates: served }, pen);
    return eaten === undefined ? [] : [eaten];
  }
  const wish = toCookWish(week, job.batch, dish);
  if (wish === undefined) return [];
  const { cooked, boxed, eaten } = cook(state, tables.foods, { ...wish, on, plates }, pen);
  return [cooked, ...boxed, ...(eaten === undefined ? [] : [eaten])];
}
