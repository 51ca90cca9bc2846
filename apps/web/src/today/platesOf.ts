import { type DayJob, type PortionOfEater, sharePortions, type WeekPlan } from "halfloaf/kitchen";

/** The plates that a week plans of a batch for one sitting; what each eater gets follows from what it costs. */
export function platesOf(week: WeekPlan, batch: number, date: string, sitting: DayJob["sitting"]): PortionOfEater[] {
  return week.sittings
    .filter((each) => each.batch === batch && each.date === date && each.kind === sitting)
    .flatMap(sharePortions)
    .filter(({ portions }) => portions > 0);
}
