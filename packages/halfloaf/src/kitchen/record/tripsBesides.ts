import type { CivilDate } from "../../quantity/index.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { keyOfPlanned, type RecordState } from "./recordState.ts";

/**
 * The days up to one on which something was bought although an accepted week has no trip then: a trip each. What was at hand when
 * the week was planned tells of none, and a trip of the week that was made on another day than its own is that trip.
 */
export function tripsBesides(
  state: Pick<RecordState, "lots" | "planned">,
  week: Pick<WeekPlan, "from" | "trips" | "lots" | "besides">,
  today: CivilDate,
): CivilDate[] {
  const besides = new Set((week.besides ?? []).map(({ stock }) => stock.id));
  const atHand = new Set(week.lots.flatMap(({ id, from }) => (from === "stores" && !besides.has(id) ? [id] : [])));
  const dates = new Set(
    [...state.lots.values()].flatMap(({ id, origin, since }) => {
      const isBought = origin === "bought" && since >= week.from && since <= today;
      return isBought && !atHand.has(id) ? [since] : [];
    }),
  );
  const planned = new Set(week.trips.map(({ date }) => date));
  const moved = new Set(
    week.trips.flatMap((trip) => (trip.date < today && !dates.has(trip.date) ? madeOn(state, week, trip) : [])),
  );
  return [...dates].filter((date) => !planned.has(date) && !moved.has(date)).sort();
}

/** The first day on which something of a trip's lists came home; none where nothing did. */
function madeOn(
  { lots, planned }: Pick<RecordState, "lots" | "planned">,
  week: Pick<WeekPlan, "from">,
  { date, lines }: WeekPlan["trips"][number],
): CivilDate[] {
  const days = lines.flatMap((line) =>
    lotsOfLine(week, date, line).flatMap((name) => {
      const since = lots.get(planned.get(keyOfPlanned(week.from, name)) ?? "")?.since;
      return since === undefined ? [] : [since];
    }),
  );
  return days.sort().slice(0, 1);
}
