import type { DayJob } from "halfloaf/kitchen";
import type { DishWanted } from "../thinking/Thinker.ts";

/** What is cooked for one sitting, together. */
interface SittingCooking {
  readonly sitting: DayJob["sitting"];
  readonly wanted: readonly DishWanted[];
}

/** The cookings among the jobs of a day, one for each sitting, in the order of the jobs. */
export function cookingsOf(jobs: readonly DayJob[]): readonly SittingCooking[] {
  const cookings = new Map<DayJob["sitting"], DishWanted[]>();
  for (const job of jobs) {
    if (job.kind !== "cook") continue;
    const wanted = cookings.get(job.sitting) ?? [];
    cookings.set(job.sitting, [...wanted, { dish: job.dish, portions: job.portions }]);
  }
  return [...cookings].map(([sitting, wanted]) => ({ sitting, wanted }));
}
