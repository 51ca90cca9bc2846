import type { Food, FoodTable } from "halfloaf/food";
import type { OfficialFood, OfficialTable } from "./OfficialTable.ts";

/** A food at hand and the official one that its own source names by its number. */
export interface NumberedFood {
  readonly food: Food;
  readonly official: OfficialFood;
}

/** Foods at hand whose source names the number of a food of the table, in their order. */
export function findNumberedFoods(foods: FoodTable, table: OfficialTable): NumberedFood[] {
  const numbers = new Map(
    [...table.foods.values()].flatMap((official) =>
      official.formerNumber === undefined ? [] : [[Number(official.formerNumber), official] as const],
    ),
  );
  return [...foods.values()].flatMap((food) => {
    const number = /\bNDB (\d+)/.exec(food.source)?.[1];
    const official = number === undefined ? undefined : numbers.get(Number(number));
    return official === undefined ? [] : [{ food, official }];
  });
}
