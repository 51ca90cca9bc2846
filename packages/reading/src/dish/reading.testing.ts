import { loadStarterDishes, loadStarterFoods } from "@halfloaf/data";
import { Dish } from "halfloaf/dish";
import { type FoodTable, parseFoodTable } from "halfloaf/food";
import { parseWith } from "halfloaf/quantity";
import * as v from "valibot";
import { FoodIndex } from "../find/FoodIndex.ts";
import type { DraftOptions } from "./DishDraft.ts";

/** The starter foods. */
export function starterFoods(): FoodTable {
  const foods = parseFoodTable(loadStarterFoods());
  if (!foods.ok) throw new Error(JSON.stringify(foods.issues));
  return foods.table;
}

/** The starter dishes. */
export function starterDishes(): Dish[] {
  return loadStarterDishes().flatMap(({ content }) => {
    const dishes = parseWith(v.array(Dish), content);
    if (!dishes.ok) throw new Error(JSON.stringify(dishes.issues));
    return dishes.value;
  });
}

/** The starter foods with their index, British measures. */
export function starterOptions(): DraftOptions {
  const foods = starterFoods();
  return { foods, index: new FoodIndex(foods.values()), english: "british" };
}
