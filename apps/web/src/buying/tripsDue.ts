import type { WeekPlan } from "halfloaf/kitchen";
import type { RecordState } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { linesOf } from "./linesOf.ts";

type Trip = WeekPlan["trips"][number];

/** A trip to be made, and what of it is still to be bought. */
export interface TripDue {
  /** Its place among the trips of the week. */
  readonly at: number;
  readonly trip: Trip;
  readonly open: Trip["lines"];
}

/**
 * The trips of a week that are to be made on a day: those of the day with anything to be bought that was not missing there, and
 * those of the days before of which nothing was bought.
 */
export function tripsDue(state: RecordState, week: WeekPlan, day: CivilDate): TripDue[] {
  return week.trips.flatMap((trip, at): TripDue[] => {
    if (trip.date > day) return [];
    const lines = linesOf(state, week, trip);
    const isBegun = lines.some(({ paidMinor }) => paidMinor !== undefined);
    if (trip.date < day && isBegun) return [];
    const missing = [...state.missing.values()].filter((each) => each.trip === trip.date && each.shop === trip.shop);
    const open = lines.flatMap(({ line, paidMinor }) =>
      paidMinor !== undefined || missing.some(({ pack }) => pack === line.pack) ? [] : [line],
    );
    return open.length === 0 ? [] : [{ at, trip, open }];
  });
}
