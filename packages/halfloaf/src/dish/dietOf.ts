import { DIETS, type FoodTable } from "../food/index.ts";
import type { Dish } from "./dish.ts";

/** A way of eating: "vegan" is the strictest, "meat" the widest. */
export type Diet = (typeof DIETS)[number];

/** The place in the list of a way that is not in it. */
const UNKNOWN = -1;

/** The strictest ways of eating that still take a dish; undefined where a food is unknown. */
export interface DishDiet {
  /** With every making as written, the optional ones too. */
  readonly asWritten: Diet | undefined;
  /** Without the optional makings, and with the strictest of each making's alternatives. */
  readonly reachable: Diet | undefined;
}

/** The strictest ways of eating that still take a dish, as written and at best. */
export function dietOf(dish: Pick<Dish, "makings">, foods: FoodTable): DishDiet {
  const rank = (food: string) => DIETS.indexOf(foods.get(food)?.diet as Diet);
  const written = dish.makings.map(({ food }) => rank(food));
  const strictest = dish.makings
    .filter(({ optional }) => !optional)
    .map(({ food, alternatives }) => {
      const ranks = [food, ...alternatives.map((each) => each.food)].map(rank).filter((each) => each !== UNKNOWN);
      return ranks.length === 0 ? UNKNOWN : Math.min(...ranks);
    });
  return { asWritten: widest(written), reachable: widest(strictest) };
}

/** The widest of the ways; an unknown one leaves all unknown. */
function widest(ranks: readonly number[]): Diet | undefined {
  return ranks.includes(UNKNOWN) ? undefined : DIETS[Math.max(0, ...ranks)];
}

/** True where who eats `eater` eats what suits `food`. */
export function suitsDiet(food: Diet, eater: Diet): boolean {
  return DIETS.indexOf(food) <= DIETS.indexOf(eater);
}
