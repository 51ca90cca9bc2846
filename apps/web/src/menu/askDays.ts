import { type Kitchen, listOver } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import type { SittingTimes } from "halfloaf/sheet";
import { clockTime } from "../kitchen/today.ts";
import type { DaysAsked } from "../thinking/stateAsked.ts";

/** Days of a kitchen from a date on, as they can still be planned now by the times at which people sit down. */
export function askDays(kitchen: Kitchen, from: CivilDate, days: number, times: SittingTimes): DaysAsked {
  return { from, days, over: listOver(kitchen, { from, days }, clockTime(), times) };
}
