import type { CivilDate } from "../../quantity/index.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { keyOfPlanned, type RecordState } from "./recordState.ts";
import { lotsOfLine, weekChanges } from "./weekChanges.ts";

/**
 * Of `weekChanges` what an accepted week takes no account of yet, so that it is worth planning again: what is done as planned is
 * none, nor is a pack that was not there and that no trip to come is to bring, nor a lot that never came and that nothing is to
 * be cooked of.
 */
export function weekNews(state: RecordState, week: WeekPlan, today: CivilDate): WeekChange[] {
  return weekChanges(state, week, today).filter((change) => {
    if (change.kind === "bought" || change.kind === "want") return false;
    if (change.kind === "gone") return isToBuy(change.pack, state, week, today);
    return change.kind !== "off" || change.massG !== undefined || isNeeded(change.lot, week, today);
  });
}

/** True where a trip to come is to bring such a pack that is not home yet. */
function isToBuy(pack: string, { planned }: RecordState, week: WeekPlan, today: CivilDate): boolean {
  const lines = week.trips
    .filter(({ date }) => date >= today)
    .flatMap(({ date, lines: each }) => each.map((line) => ({ line, date })));
  return lines.some(
    ({ line, date }) =>
      line.pack === pack && !lotsOfLine(week, date, line).every((lot) => planned.has(keyOfPlanned(week.from, lot))),
  );
}

/** True where something is still to be cooked of a lot of the week. */
function isNeeded(lot: string, { batches }: WeekPlan, today: CivilDate): boolean {
  return batches.some(({ date, uses }) => date >= today && uses.some((use) => use.lot === lot));
}
