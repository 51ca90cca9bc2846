import type { FileSource } from "./FileSource.ts";
import type { FoodDataFiles } from "./readFoodDataCsv.ts";

/** Files of a download without which there is no table. */
export const NEEDED_DOWNLOAD_FILES = ["food.csv", "nutrient.csv", "food_nutrient.csv"] as const;

/** The files of a CSV download of FoodData Central by their names, those that are there; undefined where the main ones are not. */
export function foodDataFiles(find: (name: string) => FileSource | undefined): FoodDataFiles | undefined {
  const [food, nutrient, foodNutrient] = NEEDED_DOWNLOAD_FILES.map(find);
  if (food === undefined || nutrient === undefined || foodNutrient === undefined) return undefined;
  const foodPortion = find("food_portion.csv");
  const measureUnit = find("measure_unit.csv");
  const formerNumber = find("sr_legacy_food.csv") ?? find("foundation_food.csv");
  return {
    food,
    nutrient,
    foodNutrient,
    ...(foodPortion && { foodPortion }),
    ...(measureUnit && { measureUnit }),
    ...(formerNumber && { formerNumber }),
  };
}
