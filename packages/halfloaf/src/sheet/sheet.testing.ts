import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { parseKitchen, parseTables, type Tables, toMenuProblem, toWeekPlan } from "../kitchen/index.ts";
import { MenuSearch } from "../menu/index.ts";
import type { SheetNames, WeekSource } from "./WeekSource.ts";

/** The starter tables. */
export function readTables(): Tables {
  const tables = parseTables(loadStarterTables());
  if (!tables.ok) throw new Error("the starter tables cannot be read");
  return tables.value;
}

/** The menu of a demo kitchen after a short search, whose sums hold whether it keeps every limit or not. */
export function findWeek(demo: string, { days = 7, moves = 6000, seed = 1 } = {}): WeekSource {
  const tables = readTables();
  const kitchen = parseKitchen(loadDemoKitchens().find(({ name }) => name === demo)?.content);
  if (!kitchen.ok) throw new Error(`the demo ${demo} cannot be read`);
  const stated = toMenuProblem(kitchen.value, tables, kitchen.value.startsOn, days);
  const search = new MenuSearch(stated.problem, seed, { expectedMoves: moves });
  while (search.advance().moves < moves);
  const menu = search.best() ?? search.leastBroken();
  if (menu === undefined) throw new Error("no menu was found");
  const week = toWeekPlan(kitchen.value, tables, stated, menu, { seed, moves, moneyMinor: 0 });
  return { week, kitchen: kitchen.value, tables, names: namesOf(kitchen.value, tables) };
}

function namesOf({ eaters, shops }: WeekSource["kitchen"], { foods, dishes }: Tables): SheetNames {
  const dish = (id: string) => dishes.find((one) => one.id === id)?.title ?? id;
  return {
    dish,
    food: (id) => foods.get(id)?.names.british[0] ?? dish(id),
    eater: (id) => eaters.find((one) => one.id === id)?.name ?? id,
    shop: (id) => shops.find((one) => one.id === id)?.name ?? id,
  };
}
