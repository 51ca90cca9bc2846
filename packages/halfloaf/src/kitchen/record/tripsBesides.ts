import type { CivilDate } from "../../quantity/index.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { keyOfPlanned, type RecordState } from "./recordState.ts";

/** A visit to a shop; absent = it was not said to which. */
export interface Visit {
  readonly date: CivilDate;
  readonly shop?: string;
}

type Bought = Pick<RecordState, "lots" | "planned" | "boughtAt">;

/**
 * The visits up to a day on which something was bought although an accepted week has no such trip: one for each day and shop, in
 * order. Where it was not said at which shop something was bought it was at another visit of that day, if there is any. What was at hand when
 * the week was planned tells of none, and a trip of the week that was made on another day than its own is that trip.
 */
export function tripsBesides(
  state: Bought,
  week: Pick<WeekPlan, "from" | "trips" | "lots" | "besides">,
  today: CivilDate,
): Visit[] {
  const made = listVisits(state, week, today);
  const isMade = (trip: Visit): boolean => made.some((visit) => isSame(visit, trip));
  const moved = week.trips.flatMap((trip) => (trip.date < today && !isMade(trip) ? madeOn(state, week, trip) : []));
  const known = [...week.trips, ...moved];
  const besides = made.filter((visit) => !known.some((trip) => isSame(trip, visit)));
  return besides.sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
}

/** True where two visits may be one: of one day, and not to two shops. */
function isSame(one: Visit, other: Visit): boolean {
  return one.date === other.date && (one.shop === undefined || other.shop === undefined || one.shop === other.shop);
}

function keyOf({ date, shop = "" }: Visit): string {
  return `${date} ${shop}`;
}

/** Every visit of the week's days on which something was bought that was not there when it was planned. */
function listVisits(
  { lots, boughtAt }: Bought,
  week: Pick<WeekPlan, "from" | "lots" | "besides">,
  today: CivilDate,
): Visit[] {
  const besides = new Set((week.besides ?? []).map(({ stock }) => stock.id));
  const atHand = new Set(week.lots.flatMap(({ id, from }) => (from === "stores" && !besides.has(id) ? [id] : [])));
  const visits = [...lots.values()].flatMap(({ id, origin, since }): Visit[] => {
    if (origin !== "bought" || since < week.from || since > today || atHand.has(id)) return [];
    const shop = boughtAt.get(id);
    return [{ date: since, ...(shop !== undefined && { shop }) }];
  });
  const named = [...new Map(visits.map((visit) => [keyOf(visit), visit])).values()];
  return named.filter(
    ({ date, shop }) => shop !== undefined || named.every((other) => other.date !== date || !other.shop),
  );
}

/** The visit on which something of a trip's lists first came home; none where nothing did. */
function madeOn(
  { lots, planned }: Bought,
  week: Pick<WeekPlan, "from">,
  { date, shop, lines }: WeekPlan["trips"][number],
): Visit[] {
  const days = lines.flatMap((line) =>
    lotsOfLine(week, date, line).flatMap((name) => {
      const since = lots.get(planned.get(keyOfPlanned(week.from, name)) ?? "")?.since;
      return since === undefined ? [] : [since];
    }),
  );
  return days
    .sort()
    .slice(0, 1)
    .map((first) => ({ date: first, shop }));
}
