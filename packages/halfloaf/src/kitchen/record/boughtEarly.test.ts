import { expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { replan } from "../../menu/index.ts";
import { addDays, type CivilDate, daysBetween, parseWith } from "../../quantity/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import { writeWeek } from "../changeWeek/writeWeek.ts";
import { foodLife, placesOf } from "../foodLife.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import { WeekPlan } from "../weekPlan.ts";
import { planAccepted, tables } from "./acceptedWeek.testing.ts";
import { followWeek } from "./followWeek.ts";
import type { EventBody } from "./Pen.ts";
import type { RecordState } from "./recordState.ts";
import { weekChanges } from "./weekChanges.ts";
import { weekNews } from "./weekNews.ts";

const { kitchen, week, stateOf } = planAccepted();
const today = week.from;

type Trip = WeekPlan["trips"][number];
type Line = Trip["lines"][number];

const later = week.trips.find(({ date, lines }) => date > today && lines.length > 0) as Trip;

/** All packs of a line ticked today, before the trip that has them. */
function tick(line: Line): EventBody[] {
  const food = tables.foods.get(line.food);
  if (food === undefined) throw new Error("a food is not known");
  const { place } = foodLife(food, placesOf(kitchen.kit));
  return lotsOfLine(week, later.date, line).map((lot, at): EventBody => {
    const rest = { place, massG: line.massG / line.count, costMinor: 100, pack: line.pack };
    const planned = { week: week.from, lot };
    return { kind: "bought", on: today, lot: `home-${line.pack}-${at}`, food: line.food, planned, ...rest };
  });
}

function change(state: RecordState, before: WeekPlan, on: CivilDate, asked: readonly WeekChange[] = []) {
  const known = weekChanges(state, before, on);
  const followed = followWeek((all) => changeWeek(kitchen, tables, before, all, on), asked, known);
  if (!followed.ok) throw new Error(JSON.stringify(followed.issues));
  return followed.value.changed;
}

/** A line of the later trip of which something is cooked on its day or after, and that keeps until then. */
const needed = later.lines.find((line) => {
  const [first = ""] = lotsOfLine(week, later.date, line);
  const food = tables.foods.get(line.food);
  const isUsed = week.batches.some(({ uses }) => uses.some(({ lot }) => lot === first));
  return isUsed && food !== undefined && foodLife(food, placesOf(kitchen.kit)).unopenedDays > 7;
}) as Line;

test("what was bought before its trip is at hand, is cooked of as planned and not bought again", () => {
  const state = stateOf(...tick(needed));
  const names = lotsOfLine(week, later.date, needed);
  const homes = names.map((_, at) => `home-${needed.pack}-${at}`);
  const came = weekChanges(state, week, today);
  expect(came).toEqual(
    names.map((planned, at) =>
      expect.objectContaining({ kind: "came", planned, stock: expect.objectContaining({ id: homes[at] }) }),
    ),
  );
  expect(weekNews(state, week, today)).toEqual([]);
  const changed = change(state, week, today);
  const { plan, stated } = changed.before;
  expect(plan.purchases.some(({ pack }) => stated.packs[pack]?.id === needed.pack)).toBe(
    week.trips.some(({ lines }) => lines.some((line) => line.pack === needed.pack && line !== needed)),
  );
  const outcome = replan(changed.week, { judge: checkPlan, moves: 1500, wideMoves: 0, farMoves: 3000 });
  if (outcome.kind !== "planned") throw new Error("no menu was found");
  const written = writeWeek(kitchen, tables, changed, outcome.plan, { seed: 1, moves: 1500, moneyMinor: 0 });
  const mended: WeekPlan = JSON.parse(JSON.stringify(written));
  expect(parseWith(WeekPlan, mended).ok).toBe(true);
  const bought = mended.trips.flatMap(({ date, lines }) => lines.flatMap((line) => lotsOfLine(mended, date, line)));
  expect(bought.filter((name) => names.includes(name))).toEqual([]);
  expect(mended.besides).toEqual(
    names.map((planned, at) => ({ planned, paidMinor: 100, stock: expect.objectContaining({ id: homes[at] }) })),
  );
  expect(mended.lots.filter(({ id, usedG }) => homes.includes(id) && usedG > 0).length).toBeGreaterThan(0);
  const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = mended.accounts;
  expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
  const tomorrow = addDays(today, 1);
  expect([weekNews(state, mended, today), weekNews(state, mended, tomorrow)]).toEqual([[], []]);
  const again = change(state, mended, today);
  const held = again.week.held?.map(({ pack, untilDay }) => [again.stated.packs[pack]?.id, untilDay]);
  // Until that day is over no more of it is bought, unless the plan does.
  const isFree = mended.trips.every(
    ({ date, lines }) => date > later.date || lines.every(({ pack }) => pack !== needed.pack),
  );
  expect(held).toEqual(isFree ? [[needed.pack, daysBetween(week.from, later.date)]] : []);
});

test("a trip of which all was bought before is not made any more", () => {
  const state = stateOf(...later.lines.flatMap(tick));
  const { before } = change(state, week, today);
  const dates = before.plan.trips.map((trip) => before.stated.trips[trip]?.date);
  expect(dates).toEqual(week.trips.filter((trip) => trip !== later).map(({ date }) => date));
});

test("where only some packs of a line are home the plan goes on as it was, and on the day of the trip they are no news", () => {
  const many = { ...needed, count: 2 };
  const doubled = {
    ...week,
    trips: week.trips.map((trip) =>
      trip === later ? { ...trip, lines: trip.lines.map((line) => (line === needed ? many : line)) } : trip,
    ),
  };
  const state = stateOf(...tick(needed).slice(0, 1));
  expect(weekChanges(state, doubled, today).filter((each) => "planned" in each)).toEqual([]);
  expect(weekChanges(stateOf(...tick(needed)), week, later.date).map(({ kind }) => kind)).toEqual(["bought"]);
});
