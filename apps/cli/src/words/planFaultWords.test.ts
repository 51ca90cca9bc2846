import { type KitchenProblem, toMenuProblem } from "halfloaf/kitchen";
import { MenuSearch } from "halfloaf/menu";
import { checkPlan, type PlanFaultCode } from "halfloaf/menu/check";
import { expect, test } from "vitest";
import { loadTables } from "../input/loadTables.ts";
import { openKitchen } from "../input/openKitchen.ts";
import { toNames } from "./Names.ts";
import { tellPlanFault } from "./planFaultWords.ts";

function stateWeek() {
  const opened = openKitchen("port-ansel", ".", loadTables());
  if (!opened.ok) throw new Error("the demo kitchen does not open");
  const { kitchen, tables } = opened.value;
  const stated = toMenuProblem(kitchen, tables, kitchen.startsOn, 4);
  const search = new MenuSearch(stated.problem, 1, { expectedMoves: 8000 });
  for (let moves = 0; moves < 8000; ) moves = search.advance().moves;
  const plan = search.best() ?? search.leastBroken();
  if (plan === undefined) throw new Error("the search gave no menu at all");
  return { stated, plan, names: toNames(kitchen, tables), currency: kitchen.currency };
}

/** The same problem with every limit so tight that hardly anything keeps it. */
function tighten(stated: KitchenProblem): KitchenProblem {
  const { problem } = stated;
  return {
    ...stated,
    wishes: [
      {
        menu: { dishes: [], sittings: [0], least: 1 },
        path: ["wishes", 0],
        what: { group: "fish", manner: "soup" },
        days: [0, 3],
      },
    ],
    problem: {
      ...problem,
      dishes: problem.dishes.map((dish) => ({
        ...dish,
        maxUses: 0,
        keepsDays: 0,
        needsHeat: true,
        travels: false,
        servedCold: false,
      })),
      sittings: problem.sittings.map((sitting, at) => ({ ...sitting, minutes: 0, heat: false, packed: at % 2 === 0 })),
      lots: problem.lots.map((lot) => ({ ...lot, mustUse: true, lastDay: 0 })),
      packs: problem.packs.map((pack) => ({ ...pack, limit: 0 })),
      trips: problem.trips.map((trip) => ({ ...trip, carryG: 1, period: problem.periodDay.length })),
      profiles: problem.profiles.map((profile) => ({
        ...profile,
        bounds: [{ component: 0, kind: "at-least" as const, amount: 1e6, hard: true }],
      })),
      wishes: [{ dishes: [], sittings: [0], least: 1 }],
      limits: {
        budgetMinor: 1,
        handsOnMinutes: problem.limits.handsOnMinutes.map(() => 1),
        energyTolerance: 0.0001,
        distinct: 99,
        mainMax: 0,
        batchPortions: 0.1,
        maxTrips: 0,
        fridgeLitres: 0.001,
        freezerLitres: 0.001,
      },
    },
  };
}

const week = stateWeek();
const tight = tighten(week.stated);
const faults = checkPlan(tight.problem, week.plan).faults;
const told = faults.map((fault) => tellPlanFault(fault, { ...week, stated: tight }));

test("every limit that a menu can break is told in whole sentences", () => {
  for (const { sentence, remedy } of told) {
    expect(sentence).toMatch(/^["\p{Lu}].*\.$/u);
    expect(remedy).toMatch(/\.$/);
    expect(`${sentence} ${remedy}`).not.toMatch(/undefined|NaN|\[object| batch \d|food \d| dish \d| lot of no/);
  }
});

test("the limits of a kitchen have words of their own", () => {
  const codes: PlanFaultCode[] = [
    "budget",
    "hands-on",
    "energy",
    "bound",
    "distinct",
    "main",
    "uses",
    "wish",
    "max-trips",
    "carry",
    "fridge",
    "must-use",
    "elapsed",
    "heat",
    "packed",
    "leftover-cold",
    "keeps",
    "batch-size",
    "lot-late",
    "lot-early",
    "pack-limit",
  ];
  expect(codes.filter((code) => !faults.some((fault) => fault.code === code))).toEqual([]);
  for (const { sentence } of told) expect(sentence).not.toContain(" instead of ");
});

test("the budget says how much too much", () => {
  const budget = told.find(({ code }) => code === "budget");
  expect(budget?.sentence).toMatch(
    /^Money: (\d+)\.(\d\d) EUR would be paid, the budget is 0\.01 EUR: \d+\.\d\d EUR too much\.$/,
  );
});

test("days, sittings and eaters are named", () => {
  expect(told.find(({ code }) => code === "hands-on")?.sentence).toMatch(
    /^Hands-on minutes: \w+day \d+ \w+ would take \d+ min, 1 min are at hand/,
  );
  expect(told.find(({ code }) => code === "elapsed")?.sentence).toMatch(
    /on \w+day \d+ \w+, (morning|midday|between|evening) \(.+\) would take/,
  );
  expect(told.find(({ code }) => code === "energy")?.sentence).toMatch(
    /(Joren|Maris).* would get \d+\.\d % of what is wanted on \w+day/,
  );
});

test("minutes that are over by less than one are never told as those at hand", () => {
  const fault = {
    code: "elapsed" as const,
    path: ["batches", 0],
    expected: "at most 19 minutes",
    received: "19.31 minutes",
  };
  expect(tellPlanFault(fault, week).sentence).toMatch(/ would take 20 min, 19 min are at hand\.$/);
});

test("dishes cooked at once are named together", () => {
  const [first, second] = [0, 1].map((batch) =>
    week.names.dish(week.stated.dishes[week.plan.batches[batch]?.dish as number]?.dish.id as string),
  );
  const fault = {
    code: "elapsed" as const,
    path: ["batches", 0, 1],
    expected: "at most 30 minutes",
    received: "41 minutes",
  };
  const { sentence } = tellPlanFault(fault, week);
  expect(sentence).toMatch(/ and .*, cooked at once, would take 41 min, 30 min are at hand\.$/);
  for (const name of [first, second]) expect(sentence).toContain(name);
});
