import { checkPlan } from "../check/index.ts";
import { toRemainder } from "../replan/Remainder.ts";
import type { UnplannedWeek } from "../replan/replan.ts";
import { type LimitCosts, type LimitCostWish, limitCosts } from "./limitCosts.ts";
import type { LimitReading } from "./readLimits.ts";

/**
 * What each limit costs that what is left of a week comes up to: days that are over cost nothing more and bind no more. Trips are
 * named by the indices of the week. Undefined where the plan as it stands does not keep the limits: it must be planned again first.
 */
export function restLimitCosts(
  week: UnplannedWeek,
  wish: Omit<LimitCostWish, "known">,
): LimitCosts["limits"] | undefined {
  const { problem, plan, trips } = toRemainder(week);
  if (checkPlan(problem, plan).faults.length > 0) return undefined;
  const toWhole = ({ limit, ...rest }: LimitReading): LimitReading =>
    limit.kind === "carry" ? { ...rest, limit: { ...limit, trip: trips[limit.trip] as number } } : { ...rest, limit };
  return limitCosts(problem, plan, wish).limits.map(({ reading, step, savesMinor }) => ({
    reading: toWhole(reading),
    step,
    savesMinor,
  }));
}
