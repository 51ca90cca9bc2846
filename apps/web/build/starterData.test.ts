import { loadStarterTables } from "@halfloaf/data";
import { parseTables } from "halfloaf/kitchen";
import { expect, it } from "vitest";
import { type DishesFile, type FoodNames, type FoodsFile, toTables, withGerman } from "../src/kitchen/loadStarter.ts";
import { toTableFiles } from "./starterData.ts";

it("the tables beside the app are those of the data", () => {
  const read = parseTables(loadStarterTables());
  if (!read.ok) throw new Error("the starter tables are faulty");
  const { foods, namesDe, dishes } = JSON.parse(JSON.stringify(toTableFiles())) as {
    foods: FoodsFile;
    namesDe: FoodNames;
    dishes: DishesFile;
  };
  const { retain, ...tables } = toTables(foods, dishes);
  const { retain: retainOfData, ...ofData } = read.value;
  expect({ ...tables, foods: withGerman(tables.foods, namesDe) }).toEqual(ofData);
  expect([...tables.foods.keys()]).toEqual([...ofData.foods.keys()]);
  for (const { composition } of tables.foods.values())
    for (const code of ["3455", "0000"]) expect(retain(composition, code)).toEqual(retainOfData(composition, code));
});
