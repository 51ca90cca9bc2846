import type { WeekPlan } from "halfloaf/kitchen";
import { keyOfPlanned, menuOn, type RecordState } from "halfloaf/kitchen/record";
import { type CivilDate, daysBetween } from "halfloaf/quantity";

/** A trip of the accepted week, and what of it is not at home yet. */
export interface OpenTrip {
  /** First day of the week. */
  readonly week: CivilDate;
  readonly trip: WeekPlan["trips"][number];
  readonly lines: readonly OpenLine[];
}

/** Packs of one kind that are still to be bought, with the lots that they are in the week. */
interface OpenLine {
  readonly pack: string;
  readonly food: string;
  readonly lots: readonly string[];
}

/** The trips of the week that rules a day with anything still to be bought, in order of time. */
export function openTrips(state: RecordState, day: CivilDate): OpenTrip[] {
  const week = menuOn(state, day)?.week;
  if (week === undefined) return [];
  return week.trips.flatMap((trip): OpenTrip[] => {
    const number = daysBetween(week.from, trip.date) + 1;
    const lines = trip.lines.flatMap(({ pack, food }): OpenLine[] => {
      const lots = week.lots
        .filter(({ id, from }) => from === "bought" && id.startsWith(`${pack}-day-${number}-`))
        .map(({ id }) => id)
        .filter((id) => !state.planned.has(keyOfPlanned(week.from, id)));
      return lots.length === 0 ? [] : [{ pack, food, lots }];
    });
    return lines.length === 0 ? [] : [{ week: week.from, trip, lines }];
  });
}

/** The trips to tick on a day: those planned for it, else those that are overdue, else the next. */
export function tripsToTick(trips: readonly OpenTrip[], day: CivilDate): OpenTrip[] {
  const today = trips.filter(({ trip }) => trip.date === day);
  if (today.length > 0) return today;
  const overdue = trips.filter(({ trip }) => trip.date < day);
  return overdue.length > 0 ? overdue : trips.slice(0, 1);
}
