import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import {
  changeWeek,
  type Kitchen,
  kitchenChanges,
  parseKitchen,
  parseTables,
  restoreWeek,
  toMenuProblem,
  toWeekPlan,
  type WeekChange,
} from "halfloaf/kitchen";
import { MenuSearch } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { addDays } from "halfloaf/quantity";
import { describe, expect, test } from "vitest";
import type { WayOut } from "./Told.ts";
import { toWish } from "./toWish.ts";
import { turnKnobs } from "./turnKnobs.ts";
import { whyNone } from "./whyNone.ts";

const MOVES = 6000;

const [tables, read] = [
  parseTables(loadStarterTables()),
  parseKitchen(loadDemoKitchens().find(({ name }) => name === "port-ansel")?.content),
];
if (!tables.ok || !read.ok) throw new Error("the starter data are faulty");
const kitchen = read.value;
const tableSet = tables.value;
const stated = toMenuProblem(kitchen, tables.value, kitchen.startsOn, 7);
const search = new MenuSearch(stated.problem, 1, { expectedMoves: MOVES });
while (search.advance().moves < MOVES);
const plan = search.best();
if (plan === undefined) throw new Error("no plan was found");
const week = toWeekPlan(kitchen, tables.value, stated, plan, { seed: 1, moves: MOVES, moneyMinor: 0 });
const before = restoreWeek(kitchen, tables.value, week);
if (!before.ok) throw new Error("the week is of another kitchen");
const stage = { kitchen, tables: tables.value, before: before.value };
const day = addDays(week.from, 3);

const ask = (now: Kitchen, asked: readonly WeekChange[] = []) => {
  const known = kitchenChanges(kitchen, now);
  return whyNone(stage, { week, kitchens: [kitchen], known }, { asked, now, day, moves: 250 });
};

const limited = (limits: Partial<Kitchen["limits"]>): Kitchen => ({
  ...kitchen,
  limits: { ...kitchen.limits, ...limits },
});

const turn = (now: Kitchen, { knobs }: WayOut): Kitchen => ({
  ...now,
  ...turnKnobs(
    now,
    knobs.map((knob) => ({ knob, value: knob.enough })),
  ),
});

/** What the judge finds wrong with the week that shows that a way is enough, in the kitchen set so. */
const faultsOf = ({ week: shown }: WayOut, now: Kitchen, asked: readonly WeekChange[] = []) => {
  if (shown === undefined) throw new Error("no week shows it");
  const changes = [...asked, ...kitchenChanges(kitchen, now)];
  const changed = changeWeek(kitchen, tableSet, shown, changes, day);
  if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
  return checkPlan(changed.value.week.problem, changed.value.week.plan).faults;
};

describe("a week that can't be planned again", () => {
  test("is told of a dish that is moved, which then stands where it was wanted and not where it was", () => {
    const to = week.sittings.findIndex(({ date, kind }) => date > day && kind === "evening");
    const { dish } = week.sittings[to] as (typeof week.sittings)[number];
    const from = week.sittings.findIndex(
      ({ date, kind, dish: other }, at) => at !== to && date > day && kind === "evening" && other !== dish,
    );
    const leaving = week.sittings[from] as (typeof week.sittings)[number];
    const asked = [toWish(week, to, leaving.dish) as WeekChange];
    const now = limited({ budgetMinor: 500 });
    const known = kitchenChanges(kitchen, now);
    const leaves = { dish: leaving.dish, from };
    const told = whyNone(stage, { week, kitchens: [kitchen], known }, { asked, leaves, now, day, moves: 2000 });
    if (told?.kind !== "collision") throw new Error(`told ${told?.kind}`);
    expect(told.collisions.flat()).toContain("budget");
    const shown = told.ways.flatMap((way) => way.week ?? []);
    for (const { sittings } of shown)
      expect([sittings[to]?.dish, sittings[from]?.dish === leaving.dish]).toEqual([leaving.dish, false]);
  });

  test("is told with the limits that collide, and what is said to be enough is, in the figures of the kitchen", () => {
    const now = limited({ handsOnMinutes: 4 });
    const told = ask(now);
    if (told?.kind !== "collision") throw new Error(`told ${told?.kind}`);
    expect(told.collisions.flat()).toContain("hands-on");
    const ways = told.ways.filter(({ otherwise }) => otherwise.length === 0);
    expect(ways.length).toBeGreaterThan(0);
    const [way] = ways as [WayOut];
    expect(way.knobs.every(({ weekday }) => weekday === undefined || weekday >= 4)).toBe(true);
    expect(faultsOf(way, turn(now, way))).toEqual([]);
  });

  test("has a budget raised as far as is enough whatever of it is spent, on the way and besides", () => {
    const asked: WeekChange[] = [
      {
        kind: "came",
        stock: { id: "found-salt", food: "salt", place: "dry-store", boughtOn: day, massG: 500, costMinor: 300 },
        paidMinor: 300,
      },
    ];
    const now = limited({ budgetMinor: 100 });
    const told = ask(now, asked);
    if (told?.kind !== "collision") throw new Error(`told ${told?.kind}`);
    const budget = told.ways.find(({ knobs }) => knobs.length === 1 && knobs[0]?.limit === "budget");
    if (budget === undefined) throw new Error("the budget alone is not enough");
    const over = week.trips
      .filter(({ date }) => date < day)
      .reduce((sum, trip) => sum + trip.tillMinor + trip.fareMinor, 0);
    expect(budget.knobs[0]?.enough).toBeGreaterThan(over);
    expect(faultsOf(budget, turn(now, budget), asked)).toEqual([]);
  });
});
