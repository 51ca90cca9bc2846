import { fitOwnFoods, NO_FINDINGS } from "@halfloaf/reading";
import { type English, type FoodTable, foodName } from "halfloaf/food";
import type { Found } from "../../words/Fault.ts";
import { tellIssue } from "../../words/issueWords.ts";
import type { FileReading } from "../FileReading.ts";

/** A file of own foods and overrides, laid over the foods of a kitchen to see whether it fits. */
export function readOwnFoods(
  name: string,
  content: unknown,
  kitchenFoods: FoodTable,
  starter: FoodTable,
  english: English,
): Found<FileReading> {
  const fitted = fitOwnFoods(content, kitchenFoods, starter);
  if (!fitted.ok) return { ok: false, faults: fitted.issues.map((issue) => tellIssue(issue, content)) };
  const { own, laid, foods, overrides } = fitted.value;
  const named = (id: string) => ({ id, name: foodName(laid.get(id), english) ?? id });
  const taken = overrides.map(({ override: { food, from }, changes }) => {
    return { food: named(food), from, changes: [...changes], contradictions: [] };
  });
  return {
    ok: true,
    value: {
      part: { kind: "foods", file: name, foods: foods.map(({ id }) => named(id)), taken },
      findings: { ...NO_FINDINGS, foods: own.foods, overrides: own.overrides },
      open: [],
    },
  };
}
