import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { parseKitchen, parseTables, restoreWeek, toMenuProblem, toWeekPlan } from "halfloaf/kitchen";
import { MenuSearch } from "halfloaf/menu";
import { expect, test } from "vitest";
import { serve } from "./serve.ts";
import { whyAbsent } from "./whyAbsent.ts";

const MOVES = 10_000;

const [tables, kitchen] = [
  parseTables(loadStarterTables()),
  parseKitchen(loadDemoKitchens().find(({ name }) => name === "one-ring")?.content),
];
if (!tables.ok || !kitchen.ok) throw new Error("the starter data are faulty");
const stated = toMenuProblem(kitchen.value, tables.value, kitchen.value.startsOn, 7);
const search = new MenuSearch(stated.problem, 1, { expectedMoves: MOVES });
while (search.advance().moves < MOVES);
const plan = search.best();
if (plan === undefined) throw new Error("no plan was found");
const week = toWeekPlan(kitchen.value, tables.value, stated, plan, { seed: 1, moves: MOVES, moneyMinor: 0 });
const before = restoreWeek(kitchen.value, tables.value, week);
if (!before.ok) throw new Error("the week is of another kitchen");
const stage = { kitchen: kitchen.value, tables: tables.value, before: before.value };
const to = week.sittings.findLastIndex(({ kind }) => kind === "evening");
const absent = tables.value.dishes
  .filter(({ id, fits }) => fits.includes("evening") && week.sittings.every(({ dish }) => dish !== id))
  .map(({ id }) => id);

test("a dish that is wanted stands where it is wanted in the first answer, and that one may be taken as it is", () => {
  const told = absent.slice(0, 2).map((dish) => {
    const asked = { week, kitchens: [stage.kitchen], known: [] };
    const answer = serve(stage, asked, { dish, to }, { day: week.from, isNear: true });
    if (answer.kind !== "fits") return answer.kind;
    expect(answer.week.sittings[to]?.dish).toBe(dish);
    expect(answer.changed).toContain(to);
    expect(restoreWeek(stage.kitchen, stage.tables, answer.week).ok).toBe(true);
    return answer.kind;
  });
  expect(told).toContain("fits");
});

test("why a dish is not there is told with each sitting that it was tried at, and what was told stays", () => {
  const told = [...whyAbsent(stage, week, absent[0] as string)];
  const tries = told.map((answer) => (answer.kind === "absent" ? answer.tries : []));
  expect(tries.map(({ length }) => length)).toEqual([1, 2, 3]);
  expect(tries[2]?.slice(0, 2)).toEqual(tries[1]);
});
