import type { DayJob, WeekPlan } from "halfloaf/kitchen";

/** A plate of a sitting: who eats it and how many standard portions it holds. */
export interface PlannedPlate {
  readonly eater: string;
  readonly portions: number;
}

/** The plates that a week plans of a batch for one sitting; what each eater gets follows from what it costs. */
export function platesOf(week: WeekPlan, batch: number, date: string, sitting: DayJob["sitting"]): PlannedPlate[] {
  return week.sittings
    .filter((each) => each.batch === batch && each.date === date && each.kind === sitting)
    .flatMap(({ eaters, plateMinor, portions }) => {
      const all = plateMinor.reduce((sum, minor) => sum + minor, 0);
      return eaters.map((eater, at) => ({
        eater,
        portions: portions * (all > 0 ? (plateMinor[at] as number) / all : 1 / eaters.length),
      }));
    })
    .filter(({ portions }) => portions > 0);
}
