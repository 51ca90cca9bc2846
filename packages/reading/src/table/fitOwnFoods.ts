import {
  checkOwnFoods,
  type FoodOverride,
  type FoodTable,
  type OwnFood,
  type OwnFoodParts,
  parseOwnFoods,
  withOwnFoods,
} from "halfloaf/food";
import type { Parsed } from "halfloaf/quantity";
import { changesByOverride, type FigureChange } from "./figureChanges.ts";

/** A file of own foods beside the foods of a kitchen: what it brings, and what its figures change. */
export interface OwnFoodsBeside {
  readonly own: OwnFoodParts;
  /** The kitchen's foods with those of the file. */
  readonly laid: FoodTable;
  readonly foods: readonly OwnFood[];
  readonly overrides: readonly { readonly override: FoodOverride; readonly changes: readonly FigureChange[] }[];
}

/**
 * Reads the content of a file of own foods and lays it over the foods of a kitchen; `starter` are those that come with the
 * program, whose ids no own food may have. A food of the kitchen's own that the file brings anew takes the place of the one that
 * is there. On failure gives all faults at once.
 */
export function fitOwnFoods(content: unknown, kitchenFoods: FoodTable, starter: FoodTable): Parsed<OwnFoodsBeside> {
  const parsed = parseOwnFoods(content);
  if (!parsed.ok) return parsed;
  const own = parsed.value;
  const brought = new Set(own.foods.map(({ id }) => id));
  const foods = new Map([...kitchenFoods].filter(([id]) => starter.has(id) || !brought.has(id)));
  const issues = checkOwnFoods(foods, own);
  if (issues.length > 0) return { ok: false, issues };
  const laid = withOwnFoods(foods, own);
  const overrides = own.overrides.map((override) => {
    return { override, changes: changesByOverride(foods.get(override.food) ?? laid.get(override.food), override) };
  });
  return { ok: true, value: { own, laid, foods: own.foods, overrides } };
}
