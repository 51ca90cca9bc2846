import { loadStarterTables } from "@halfloaf/data";
import { parseTables } from "halfloaf/kitchen";
import { expect, it } from "vitest";
import { type DishesFile, type FoodsFile, toTables } from "../src/kitchen/loadStarter.ts";
import { toTableFiles } from "./starterData.ts";

it("the tables beside the app are those of the data", () => {
  const read = parseTables(loadStarterTables());
  if (!read.ok) throw new Error("the starter tables are faulty");
  const { foods, dishes } = JSON.parse(JSON.stringify(toTableFiles())) as { foods: FoodsFile; dishes: DishesFile };
  const { retain, ...tables } = toTables(foods, dishes);
  const { retain: retainOfData, ...ofData } = read.value;
  expect(tables).toEqual(ofData);
  expect([...tables.foods.keys()]).toEqual([...ofData.foods.keys()]);
  for (const { composition } of tables.foods.values())
    for (const code of ["3455", "0000"]) expect(retain(composition, code)).toEqual(retainOfData(composition, code));
});
