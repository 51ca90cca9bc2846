import { type FoodTable, massOfAmount } from "../food/index.ts";
import type { Issue } from "../quantity/index.ts";
import type { ChosenFood } from "./amounts.ts";
import type { Dish } from "./dish.ts";
import { orderSteps } from "./stepOrder.ts";

type Path = Issue["path"];

/**
 * Everything in a dish that does not hold together, beyond its shape: foods that are not in the table, amounts that can't
 * become grams, names that name nothing, steps that wait for each other. An empty list means that it is sound. "To taste" is
 * no fault. A food that only stands as an alternative may be named by a step.
 */
export function checkDish(dish: Pick<Dish, "makings" | "method" | "main">, foods: FoodTable): Issue[] {
  return [...checkMakings(dish, foods), ...checkMain(dish), ...checkSteps(dish), ...checkRings(dish)];
}

function checkMakings(dish: Pick<Dish, "makings">, foods: FoodTable): Issue[] {
  return dish.makings.flatMap((making, at) => [
    ...checkChosen(making, ["makings", at], foods),
    ...making.alternatives.flatMap((each, other) => checkChosen(each, ["makings", at, "alternatives", other], foods)),
  ]);
}

function checkChosen({ food: id, amount }: ChosenFood, path: Path, foods: FoodTable): Issue[] {
  const food = foods.get(id);
  if (food === undefined) return [toIssue("food-unknown", [...path, "food"], "a food of the table", id)];
  const mass = massOfAmount(food, amount);
  if (mass.ok || mass.reason === "to-taste") return [];
  const expected = {
    "density-unknown": `a mass, since no density is known of ${id}`,
    "pieces-unknown": `a mass, since no piece of ${id} is known`,
    "size-unknown": `one of the sizes ${food.pieces.map(({ size }) => size).join(", ")}`,
  }[mass.reason];
  return [toIssue(mass.reason, [...path, "amount"], expected, JSON.stringify(amount))];
}

function checkMain({ main, makings }: Pick<Dish, "main" | "makings">): Issue[] {
  if (makings.some(({ food }) => food === main)) return [];
  return [toIssue("main-unknown", ["main"], "the food of a making", main)];
}

function checkSteps({ method, makings }: Pick<Dish, "method" | "makings">): Issue[] {
  const ids = method.map(({ id }) => id);
  const listed = new Set(makings.flatMap(({ food, alternatives }) => [food, ...alternatives.map((each) => each.food)]));
  return method.flatMap((step, at) => [
    ...(ids.indexOf(step.id) === at
      ? []
      : [toIssue("step-twice", ["method", at, "id"], "an id not used before", step.id)]),
    ...step.after.flatMap((id, place) =>
      ids.includes(id) ? [] : [toIssue("step-unknown", ["method", at, "after", place], "the id of a step", id)],
    ),
    ...step.foods.flatMap((id, place) =>
      listed.has(id) ? [] : [toIssue("food-unlisted", ["method", at, "foods", place], "the food of a making", id)],
    ),
  ]);
}

function checkRings({ method }: Pick<Dish, "method">): Issue[] {
  return orderSteps(method).cyclic.map((at) => {
    const expected = "steps that do not wait for themselves, directly or through others";
    return toIssue("step-cyclic", ["method", at, "after"], expected, method[at]?.id ?? "");
  });
}

function toIssue(code: string, path: Path, expected: string, received: string): Issue {
  return { code, path, expected, received };
}
