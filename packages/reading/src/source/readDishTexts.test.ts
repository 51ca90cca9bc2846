import { loadStarterFoods } from "@halfloaf/data";
import { parseFoodTable } from "halfloaf/food";
import { expect, test } from "vitest";
import { draftDish } from "../dish/draftDish.ts";
import { FoodIndex } from "../find/FoodIndex.ts";
import { readDishTexts } from "./readDishTexts.ts";

const JSON_LD = `{"@type":"Recipe","name":"Leek soup","recipeYield":"2","recipeIngredient":["200 g leek","1 tbsp olive oil"],
"recipeInstructions":"Fry the leek in the oil for 5 minutes. </script><script>alert(1)</script> Serve."}`;
const MARKED = `<div itemscope itemtype="https://schema.org/Recipe"><h1 itemprop="name">Leek soup</h1><p itemprop="recipeYield">2</p>
<p itemprop="recipeIngredient">200 g leek</p><p itemprop="recipeIngredient">1 tbsp olive oil</p>
<p itemprop="recipeInstructions">Fry the leek in the oil for 5 minutes. Serve.</p></div>`;
const PASTED =
  "Leek soup\nServes 2\n\n200 g leek\n1 tbsp olive oil\n\nMethod\nFry the leek in the oil for 5 minutes. Serve.";

const parsed = parseFoodTable(loadStarterFoods());
const foods = parsed.ok ? parsed.table : new Map();

test.each([
  ["JSON-LD without a page", JSON_LD, "page"],
  ["a page", MARKED, "page"],
  ["pasted text", PASTED, "dish"],
] as const)("%s is drafted the same, with its guesses marked, whatever form it comes in", (_, content, kind) => {
  const read = readDishTexts(content);
  expect(read.kind).toBe(kind);
  const [draft] = read.dishes.map((text) =>
    draftDish(text, { foods, index: new FoodIndex(foods.values()), english: "british" }),
  );
  expect([draft?.title?.value, draft?.portions?.value]).toEqual(["Leek soup", 2]);
  expect(draft?.makings.map(({ food }) => [food?.value, food?.sure])).toEqual([
    ["leek", "likely"],
    ["olive-oil", "likely"],
  ]);
  expect(draft?.method.map(({ kind: step, minutes }) => [step.value, minutes.sure])).toEqual([
    ["fry", "sure"],
    ["serve", "guess"],
  ]);
  expect(JSON.stringify(draft)).not.toContain("<script");
});

test("what tells no dish gives none, and what a person says it is goes before what it looks like", () => {
  expect(readDishTexts("The quay was grey.").dishes).toEqual([]);
  expect(readDishTexts(PASTED, "page")).toMatchObject({ kind: "page" });
});
