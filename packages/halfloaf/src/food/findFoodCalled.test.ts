import { loadStarterFoods } from "@halfloaf/data";
import { expect, test } from "vitest";
import { findFoodCalled } from "./findFoodCalled.ts";
import { type FoodTable, parseFoodTable } from "./foodTable.ts";

const parsed = parseFoodTable(loadStarterFoods());
const table = parsed.ok ? parsed.table : new Map();
const idOf = (called: string, language = "en") => findFoodCalled(table, called, "british", language)?.id;

test("a food is meant by its id and by any of its names", () => {
  expect(idOf("rice-white-long")).toBe("rice-white-long");
  expect([idOf("Courgette"), idOf("ZUCCHINI"), idOf("ZUCCHETTI", "de-CH")]).toEqual(Array(3).fill("courgette"));
  expect(["Rueebli", "frühlingszwiebel", "Weisskraut"].map((called) => idOf(called, "de"))).toEqual([
    "carrot",
    "spring-onion",
    "cabbage-white",
  ]);
});

test("a name means a food only where its language is spoken", () => {
  expect([idOf("butter"), idOf("germ"), idOf("Karotte")]).toEqual([undefined, undefined, undefined]);
  expect(idOf("butter", "de-AT")).toBe("butter-unsalted");
  expect(table.get(idOf("germ", "de-AT") ?? "")?.id).toMatch(/yeast/);
  expect(idOf("carrot", "de")).toBe("carrot");
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
