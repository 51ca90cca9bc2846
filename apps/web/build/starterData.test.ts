import { loadStarterTables } from "@halfloaf/data";
import { parseTables } from "halfloaf/kitchen";
import { expect, it } from "vitest";
import { type TablesFile, toTables } from "../src/kitchen/loadStarter.ts";
import { writeTables } from "./starterData.ts";

it("the tables beside the app are those of the data", () => {
  const read = parseTables(loadStarterTables());
  if (!read.ok) throw new Error("the starter tables are faulty");
  const { retain, ...tables } = toTables(JSON.parse(writeTables()) as TablesFile);
  const { retain: retainOfData, ...ofData } = read.value;
  expect(tables).toEqual(ofData);
  expect([...tables.foods.keys()]).toEqual([...ofData.foods.keys()]);
  for (const { composition } of tables.foods.values())
    for (const code of ["3455", "0000"]) expect(retain(composition, code)).toEqual(retainOfData(composition, code));
});
