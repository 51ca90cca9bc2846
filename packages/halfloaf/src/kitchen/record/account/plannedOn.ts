import { addDays, type CivilDate } from "../../../quantity/index.ts";
import type { WeekPlan } from "../../weekPlan.ts";
import { menuOn } from "../menuOn.ts";
import type { RecordState } from "../recordState.ts";

/** What accepted weeks said of some days, in minor units. */
export interface PlannedSums {
  readonly tillMinor: number;
  readonly faresMinor: number;
  readonly platesMinor: number;
  readonly wasteMinor: number;
}

/** The sums planned from one day to another, each day by the week that ruled it; undefined where none ruled any. */
export function plannedOn(state: Pick<RecordState, "menus">, from: CivilDate, to: CivilDate): PlannedSums | undefined {
  const sums = { tillMinor: 0, faresMinor: 0, platesMinor: 0, wasteMinor: 0 };
  let isPlanned = false;
  if (state.menus.length === 0) return undefined;
  for (let day = from; day <= to; day = addDays(day, 1)) {
    const week = menuOn(state, day)?.week;
    if (week === undefined) continue;
    isPlanned = true;
    for (const { tillMinor, faresMinor } of week.trips.filter(({ date }) => date === day).map(toTill)) {
      sums.tillMinor += tillMinor;
      sums.faresMinor += faresMinor;
    }
    for (const { date, plateMinor } of week.sittings)
      if (date === day) for (const minor of plateMinor) sums.platesMinor += minor;
    for (const lot of week.lots) if (wastedOn(week, lot) === day) sums.wasteMinor += lot.wastedMinor;
  }
  return isPlanned ? sums : undefined;
}

function toTill({ tillMinor, fareMinor }: WeekPlan["trips"][number]) {
  return { tillMinor, faresMinor: fareMinor };
}

/** The day after its last is when a lot counts as waste, within the week. */
function wastedOn({ from, days }: WeekPlan, { keepsUntil }: WeekPlan["lots"][number]): CivilDate {
  const last = addDays(from, days - 1);
  if (keepsUntil === undefined) return last;
  const day = keepsUntil < from ? from : addDays(keepsUntil, 1);
  return [day, last].sort()[0] as CivilDate;
}
