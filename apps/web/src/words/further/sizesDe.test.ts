import { loadStarterFoods } from "@halfloaf/data";
import { parseFoodTable } from "halfloaf/food";
import { expect, test } from "vitest";
import { SIZES_DE } from "./sizesDe.ts";

test("every size of a piece in the food table is told in German, and no other", () => {
  const parsed = parseFoodTable(loadStarterFoods());
  if (!parsed.ok) throw new Error("the starter foods cannot be read");
  const sizes = new Set([...parsed.table.values()].flatMap(({ pieces }) => pieces.map(({ size }) => size)));
  expect(Object.keys(SIZES_DE).sort()).toEqual([...sizes].sort());
});
