import { loadStarterFoods } from "@halfloaf/data";
import { expect, test } from "vitest";
import { findFoodCalled } from "./findFoodCalled.ts";
import { type FoodTable, parseFoodTable } from "./foodTable.ts";

const parsed = parseFoodTable(loadStarterFoods());
const table = parsed.ok ? parsed.table : new Map();
const idOf = (called: string, english: "british" | "american" = "british") =>
  findFoodCalled(table, called, english)?.id;

test("a food is meant by its id and by any of its names", () => {
  expect(idOf("rice-white-long")).toBe("rice-white-long");
  expect([idOf("Courgette"), idOf("zucchini"), idOf("ZUCCHETTI")]).toEqual(["courgette", "courgette", "courgette"]);
  expect([idOf("Rueebli"), idOf("frühlingszwiebel"), idOf("Weisskraut")]).toEqual([
    "carrot",
    "spring-onion",
    "cabbage-white",
  ]);
});

test("the kitchen's English goes before the other", () => {
  const [passata, puree] = [table.get("passata"), table.get("tomato-puree")];
  const named = new Map([
    ["passata", { ...passata, names: { british: ["passata"], american: ["tomato puree"] } }],
    ["tomato-puree", { ...puree, names: { british: ["tomato puree"], american: ["tomato paste"] } }],
  ]) as FoodTable;
  const meant = (["british", "american"] as const).map((english) => findFoodCalled(named, "tomato puree", english)?.id);
  expect(meant).toEqual(["tomato-puree", "passata"]);
});

test("a part of a name means no food", () => {
  expect([idOf("Zwieb"), idOf(""), idOf("Wasser")]).toEqual([undefined, undefined, undefined]);
});
