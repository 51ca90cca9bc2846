import type { Kitchen, KitchenProblem, RestoredWeek, Tables, WeekPlan } from "halfloaf/kitchen";
import { checkPlan } from "halfloaf/menu/check";

/** A week as a problem in the kitchen that it is reasoned about in. */
export interface Stage {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly before: RestoredWeek;
}

type Seated = Pick<WeekPlan["sittings"][number], "date" | "kind"> & { readonly eaters: readonly string[] };

/** What tells one sitting from another in weeks of the same days. */
export function nameOf({ date, kind, eaters }: Seated): string {
  return [date, kind, ...eaters].join();
}

/** The index in the problem of a sitting of the week; undefined where it is none of the problem's. */
export function indexOf(stated: KitchenProblem, week: WeekPlan, sitting: number): number | undefined {
  const planned = week.sittings[sitting];
  const found =
    planned === undefined ? -1 : stated.sittings.findIndex((each) => !each.putBy && nameOf(each) === nameOf(planned));
  return found < 0 ? undefined : found;
}

/** What the week costs, everything weighed, in minor units. */
export function moneyOf({ before: { stated, plan } }: Pick<Stage, "before">): number {
  return checkPlan(stated.problem, plan).money.totalMinor;
}
