import type { ChosenFood, Dish, Making } from "../dish/index.ts";
import type { FoodTable } from "../food/index.ts";
import { type ChosenFoods, type FittedDish, listTaken, weighChosen } from "./fitDish.ts";
import type { Eater } from "./kitchen.ts";
import type { WeekPlan } from "./weekPlan.ts";

/** A cooking of a kept week: what went in says which of its makings were cooked with another food than first stated. */
export type KeptCooking = Pick<WeekPlan["batches"][number], "dish" | "portions" | "putBy" | "taken" | "uses">;

/** Most combinations of foods that are tried for a cooking whose uses leave open which making each was for. */
const MOST_COMBINED = 64;

/** How far a way of cooking a dish is from what went into a cooking: foods on one side alone, and g of a portion. */
export interface WayMiss {
  readonly foods: number;
  readonly massG: number;
}

/** How far the makings of one way are from what was used. */
export function missOfWay({ makings }: Pick<FittedDish, "makings">, { portions, uses }: KeptCooking): WayMiss {
  const wanted = new Map<string, number>();
  for (const { food, purchasedG } of makings) wanted.set(food, (wanted.get(food) ?? 0) + purchasedG.middle);
  const used = new Map<string, number>();
  for (const { food, massG } of uses) used.set(food, (used.get(food) ?? 0) + massG / portions);
  const foods = [...new Set([...wanted.keys(), ...used.keys()])];
  return {
    foods: foods.filter((food) => !wanted.has(food) || !used.has(food)).length,
    massG: foods.reduce((sum, food) => sum + Math.abs((wanted.get(food) ?? 0) - (used.get(food) ?? 0)), 0),
  };
}

/** Nearest first. */
export function compareMisses(a: WayMiss, b: WayMiss): number {
  return a.foods - b.foods || a.massG - b.massG;
}

/**
 * The foods with which a dish was cooked in a kept week, as far as they can still be had and these eaters take them;
 * undefined where a making has none. Of several ways that the uses allow, the one whose amounts are nearest.
 */
export function findKeptWay(
  dish: Dish,
  foods: FoodTable,
  eaters: readonly Eater[],
  isToBeHad: (food: string) => boolean,
  cooking: KeptCooking,
): ChosenFoods | undefined {
  const used = new Set(cooking.uses.map(({ food }) => food));
  let ways: ChosenFoods[] = [new Map<Making, ChosenFood>()];
  for (const making of dish.makings) {
    if (making.optional) continue;
    const taken = listTaken(making, foods, eaters, isToBeHad);
    if ("reason" in taken) return undefined;
    const fits = taken.filter(({ food }) => used.has(food));
    const named = fits.filter((option) => option.food === namedFor(making, cooking));
    const options = named.length > 0 ? named : fits.length > 0 ? fits : taken.slice(0, 1);
    ways = options.flatMap((option) => ways.map((way) => new Map(way).set(making, option))).slice(0, MOST_COMBINED);
  }
  const weighed = ways.flatMap((way) => {
    const fitted = weighChosen(dish, foods, way);
    return "reason" in fitted ? [] : [{ way, miss: missOfWay(fitted, cooking) }];
  });
  return weighed.sort((a, b) => compareMisses(a.miss, b.miss))[0]?.way;
}

/** The food that a cooking names for a making, where it names one. */
export function namedFor(
  { food: stated, alternatives }: Making,
  { taken = [] }: Pick<KeptCooking, "taken">,
): string | undefined {
  return taken.find(({ food, insteadOf }) => insteadOf === stated && alternatives.some((other) => other.food === food))
    ?.food;
}

/** Makings of a dish that are cooked with another food than first stated, each pair once. */
export function listTakenOtherwise({
  dish,
  choose,
}: Pick<FittedDish, "dish" | "choose">): NonNullable<KeptCooking["taken"]> {
  const pairs = dish.makings.flatMap((making) => {
    const food = choose(making)?.food;
    return food === undefined || food === making.food ? [] : [{ food, insteadOf: making.food }];
  });
  return pairs.filter(
    ({ food, insteadOf }, at) => pairs.findIndex((one) => one.food === food && one.insteadOf === insteadOf) === at,
  );
}
