import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, type CivilDate } from "../../quantity/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import { countBesides } from "../changeWeek/comeBesides.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import { toMenuProblem } from "../toMenuProblem.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { planAccepted, tables } from "./acceptedWeek.testing.ts";
import type { EventBody } from "./Pen.ts";
import type { RecordState } from "./recordState.ts";
import { tripsBesides } from "./tripsBesides.ts";
import { weekChanges } from "./weekChanges.ts";
import { weekNews } from "./weekNews.ts";

const { kitchen, week, stateOf } = planAccepted();

const days = Array.from({ length: week.days }, (_, day) => addDays(week.from, day));
const tripDays = week.trips.map(({ date }) => date);
const [free, another] = days.slice(1).filter((date) => !tripDays.includes(date)) as [CivilDate, CivilDate];
const [trip] = week.trips;
const line = trip?.lines[0];
if (trip === undefined || line === undefined) throw new Error("nothing is bought");

const buy = (on: CivilDate, lot: string, planned?: string, shop?: string): EventBody => ({
  kind: "bought",
  on,
  lot,
  food: "salt",
  place: "dry-store",
  massG: 500,
  costMinor: 60,
  ...(shop !== undefined && { shop }),
  ...(planned !== undefined && { planned: { week: week.from, lot: planned } }),
});

const last = days.at(-1) as CivilDate;

test("each day on which something was bought and the week has no trip is a trip, up to today", () => {
  const state = stateOf(buy(free, "a"), buy(free, "b"), buy(another, "c"), buy(trip.date, "d"));
  expect(tripsBesides(state, week, last)).toEqual([free, another].sort().map((date) => ({ date })));
  expect(tripsBesides(state, week, [free, another].sort()[0] as CivilDate)).toHaveLength(1);
  expect(tripsBesides(stateOf(buy(addDays(week.from, -1), "a")), week, last)).toEqual([]);
});

test("a trip of the week that was made on another day is none besides, and what was at hand before tells of none", () => {
  const [name] = lotsOfLine(week, trip.date, line);
  expect(tripsBesides(stateOf(buy(free, "a", name)), week, last)).toEqual([]);
  expect(tripsBesides(stateOf(buy(trip.date, "d"), buy(free, "a", name)), week, last)).toEqual([{ date: free }]);
  const stocked: WeekPlan = {
    ...week,
    lots: [...week.lots, { ...(week.lots[0] as WeekPlan["lots"][number]), id: "a", from: "stores" }],
  };
  expect(tripsBesides(stateOf(buy(free, "a")), stocked, last)).toEqual([]);
});

test("each shop of a day is a visit of its own, also on a day on which the week goes to another one", () => {
  const at = (date: CivilDate, lot: string, shop?: string) => buy(date, lot, undefined, shop);
  const two = stateOf(at(free, "a", "one"), at(free, "b", "two"), at(free, "c", "one"), at(free, "d"));
  expect(tripsBesides(two, week, last)).toEqual([
    { date: free, shop: "one" },
    { date: free, shop: "two" },
  ]);
  const there = stateOf(at(trip.date, "a", trip.shop), at(trip.date, "b", "elsewhere"), at(trip.date, "c"));
  expect(tripsBesides(there, week, last)).toEqual([{ date: trip.date, shop: "elsewhere" }]);
});

test("visits besides are as many as the pairs of day and shop that the week has not, whatever was bought on them", () => {
  const shops = ["one", "two", trip.shop];
  const visit = fc.record({ date: fc.constantFrom(...days), shop: fc.constantFrom(...shops) });
  fc.assert(
    fc.property(fc.array(visit, { maxLength: 8 }), (visits) => {
      const state = stateOf(...visits.map(({ date, shop }, at) => buy(date, `lot-${at}`, undefined, shop)));
      const pairs = new Set(visits.map(({ date, shop }) => `${date} ${shop}`));
      const own = new Set(week.trips.map(({ date, shop }) => `${date} ${shop}`));
      const besides = tripsBesides(state, week, last).map(({ date, shop }) => `${date} ${shop}`);
      expect(besides).toEqual([...pairs].filter((pair) => !own.has(pair)).sort());
    }),
    { endOnFailure: true, numRuns: 50 },
  );
});

const mostTrips = (state: RecordState, on: CivilDate): number => {
  const changed = changeWeek(kitchen, tables, week, weekChanges(state, week, on), on);
  if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
  return changed.value.week.problem.limits.maxTrips;
};

test("leaves one less of the most trips when the week is planned again, and is no news by itself", () => {
  const [first] = [free, another].sort() as [CivilDate];
  const whole = toMenuProblem(kitchen, tables, week.from, week.days).problem.limits.maxTrips;
  expect(mostTrips(stateOf(), first)).toBe(whole);
  expect(mostTrips(stateOf(buy(first, "a")), first)).toBe(Math.max(whole - 1, week.trips.length));
  const twice = stateOf(buy(first, "a", undefined, "one"), buy(first, "b", undefined, "two"));
  expect(mostTrips(twice, first)).toBe(Math.max(whole - 2, week.trips.length));
  expect(weekNews(stateOf(buy(first, "a")), week, first).map(({ kind }): string => kind)).not.toContain("went");
});

test("trips besides are off the most trips, which are never less than the plan has nor more than they were", () => {
  const { problem } = toMenuProblem(kitchen, tables, week.from, week.days);
  const few = fc.nat({ max: 6 });
  fc.assert(
    fc.property(few, few, few, (maxTrips, planned, count) => {
      const plan = { batches: [], trips: Array.from({ length: planned }, (_, at) => at), purchases: [], uses: [] };
      const went = Array.from({ length: count }, (_, day) => ({
        kind: "went" as const,
        date: addDays(week.from, day),
      }));
      const given = { ...problem, limits: { ...problem.limits, maxTrips } };
      const left = countBesides(given, plan, [...went, ...went]).limits.maxTrips;
      expect(left).toBeLessThanOrEqual(maxTrips);
      if (planned <= maxTrips) expect(left).toBe(Math.max(maxTrips - count, planned));
    }),
    { endOnFailure: true },
  );
});
