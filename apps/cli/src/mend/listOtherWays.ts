import type { WeekPlan } from "halfloaf/kitchen";
import type { MendReport } from "./MendReport.ts";

type Cooking = Pick<WeekPlan["batches"][number], "date" | "kind" | "dish" | "taken">;

/** What of a week says with which makings its dishes are cooked. */
export interface Ways {
  readonly batches: readonly Cooking[];
}

/** Cookings of the same dish at the same sitting that take other makings than before. */
export function listOtherWays(old: Ways, week: Ways): NonNullable<MendReport["otherWays"]> {
  const before = new Map(old.batches.map((batch) => [keyOf(batch), wayOf(batch)]));
  return week.batches.flatMap((batch) => {
    const was = before.get(keyOf(batch));
    const { date, kind, dish, taken = [] } = batch;
    return was === undefined || was === wayOf(batch) ? [] : [{ date, kind, dish, taken }];
  });
}

const keyOf = ({ date, kind, dish }: Cooking): string => `${date} ${kind} ${dish}`;

function wayOf({ taken = [] }: Cooking): string {
  return taken
    .map(({ food, insteadOf }) => `${food} ${insteadOf}`)
    .sort()
    .join(", ");
}
