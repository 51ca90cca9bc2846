import { addDays, type CivilDate } from "../../../quantity/index.ts";
import { MASS_TOLERANCE_G, THAWED_DAYS } from "../../../stores/index.ts";
import type { DayJob } from "../../cooking/jobsOfDay.ts";
import type { WeekPlan } from "../../weekPlan.ts";
import type { EventOf } from "../event.ts";
import type { Pen } from "../Pen.ts";
import { keyOfPlanned, type RecordState } from "../recordState.ts";

/** A soak, a thawing or another step ahead that a week has somebody begin. */
export type JobAhead = Extract<DayJob, { readonly kind: "thaw" | "soak" | "ahead" }>;

/**
 * What was done ahead on a day, as events: that it was, and what its dish takes of each lot that goes from the freezer into the
 * fridge to thaw, which from then on keeps as thawed. Makings of a step leave the stores with the cooking. What
 * would have gone off by the sitting, thawed so early, stays where the record has it.
 */
export function beginAhead(
  state: RecordState,
  week: Pick<WeekPlan, "from" | "batches">,
  job: JobAhead,
  on: CivilDate,
  pen: Pen,
): readonly (EventOf<"begun"> | EventOf<"moved">)[] {
  const { dish, date, sitting, step } = job;
  const begun = pen.write({
    kind: "begun",
    on,
    dish,
    servedOn: date,
    sitting,
    ...(step !== undefined && { step }),
  });
  if (step !== undefined || addDays(on, THAWED_DAYS) < date) return [begun];
  return [begun, ...takeOutOfFreezer(state, week, job, on, pen)];
}

function takeOutOfFreezer(
  { lots, planned: bought }: RecordState,
  { from, batches }: Pick<WeekPlan, "from" | "batches">,
  { batch, dish, foods, putBy }: JobAhead,
  on: CivilDate,
  pen: Pen,
): EventOf<"moved">[] {
  const planned = batches[batch];
  if (planned?.dish !== dish) return [];
  const uses = planned.uses.filter(({ food }) => putBy !== undefined || foods.includes(food));
  const taken = new Map<string, number>();
  for (const { lot, massG } of uses) {
    const id = bought.get(keyOfPlanned(from, lot)) ?? lot;
    taken.set(id, (taken.get(id) ?? 0) + massG);
  }
  return [...taken].flatMap(([id, massG]): EventOf<"moved">[] => {
    const lot = lots.get(id);
    if (lot?.place !== "freezer" || lot.leftG <= MASS_TOLERANCE_G) return [];
    const isPart = massG < lot.leftG - MASS_TOLERANCE_G;
    const part = { massG, lot: pen.nameLot(lot.food ?? lot.cooked?.dish ?? id) };
    return [pen.write({ kind: "moved", on, lot: id, to: "fridge", ...(isPart && { part }) })];
  });
}
