import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { expect, test } from "vitest";
import { checkPlan } from "../menu/check/index.ts";
import { MenuSearch } from "../menu/index.ts";
import { parseKitchen } from "./checkKitchen.ts";
import { readWeekPlan } from "./readWeekPlan.ts";
import { parseTables } from "./tables.ts";
import { toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";

const MOVES = 12_000;

function plan(name: string, days: number) {
  const tables = parseTables(loadStarterTables());
  const kitchen = parseKitchen(loadDemoKitchens().find((demo) => demo.name === name)?.content);
  if (!tables.ok || !kitchen.ok) throw new Error("the demo cannot be read");
  const stated = toMenuProblem(kitchen.value, tables.value, kitchen.value.startsOn, days);
  const search = new MenuSearch(stated.problem, 1, { expectedMoves: MOVES });
  while (search.advance().moves < MOVES);
  const menu = search.best() ?? search.leastBroken();
  if (menu === undefined) throw new Error("no menu");
  const facts = { seed: 1, moves: MOVES, moneyMinor: 0 };
  const week = toWeekPlan(kitchen.value, tables.value, stated, menu, facts);
  return { stated, menu, week, again: (other = menu) => toWeekPlan(kitchen.value, tables.value, stated, other, facts) };
}

for (const { name } of loadDemoKitchens()) {
  test(`the week of ${name} comes back from its file as it was`, () => {
    const { stated, menu, week, again } = plan(name, 7);
    const read = readWeekPlan(JSON.parse(JSON.stringify(week)), stated);
    if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 3)));
    expect(again(read.value)).toEqual(week);
    expect([read.value.batches, read.value.trips, read.value.purchases]).toEqual([
      menu.batches,
      menu.trips,
      menu.purchases,
    ]);
    const [before, after] = [menu, read.value].map((one) => checkPlan(stated.problem, one));
    expect(after?.money.totalMinor).toBeCloseTo(before?.money.totalMinor ?? Number.NaN, 6);
    expect(after?.faults.length).toBe(before?.faults.length);
  });
}

test("whatever no longer fits the kitchen is told by its place, all at once", () => {
  const { stated, week } = plan("one-ring", 3);
  const codesOf = (changed: typeof week): string[] => {
    const read = readWeekPlan(changed, stated);
    return read.ok ? [] : [...new Set(read.issues.map(({ code }) => code))].sort();
  };
  expect(codesOf(week)).toEqual([]);
  expect(codesOf({ ...week, from: "2030-01-01", days: 9 })).toEqual(["week-days", "week-from"]);
  expect(codesOf({ ...week, sittings: week.sittings.slice(1) })).toContain("sitting-missing");
  const [sitting] = week.sittings;
  if (!sitting) throw new Error("no sitting");
  expect(codesOf({ ...week, sittings: [...week.sittings, sitting] })).toContain("sitting-unknown");
  const batches = week.batches.map((batch, at) => (at === 0 ? { ...batch, dish: "no-such-dish" } : batch));
  expect(codesOf({ ...week, batches })).toEqual(["batch-dish", "dish-unfit"]);
  const at = week.batches.findIndex(({ taken }) => taken !== undefined);
  const taken = [{ food: "no-such-food", insteadOf: week.batches[at]?.taken?.[0]?.insteadOf ?? "" }];
  const ways = week.batches.map((batch, i) => (i === at ? { ...batch, taken } : batch));
  expect(codesOf({ ...week, batches: ways })).toEqual(["way-gone"]);
  const away = week.trips.map((trip) => ({ ...trip, shop: "no-such-shop" }));
  expect(codesOf({ ...week, trips: away })).toEqual(["lot-unknown", "pack-unknown", "trip-unknown"]);
  const lots = week.batches.map((batch) => ({ ...batch, uses: batch.uses.map((use) => ({ ...use, lot: "gone" })) }));
  expect(codesOf({ ...week, batches: lots })).toEqual(["lot-unknown"]);
});
