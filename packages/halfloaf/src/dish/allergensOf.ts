import { EU_ALLERGENS, type FoodTable, US_ALLERGENS } from "../food/index.ts";
import type { Dish } from "./dish.ts";

/** Allergens of a dish under one law, in the order of its list. */
export interface DishAllergens<Allergen extends string> {
  /** In a making that is not optional, as written. */
  readonly sure: readonly Allergen[];
  /** Only in an optional making or in an alternative. */
  readonly possible: readonly Allergen[];
}

/** The allergens of a dish by the two lists the food table keeps. The label on each pack comes first. */
export interface AllergensByLaw {
  /** **Source**: Regulation (EU) 1169/2011, Annex II. */
  readonly eu: DishAllergens<(typeof EU_ALLERGENS)[number]>;
  /** **Source**: FALCPA 2004 and FASTER Act 2021. */
  readonly us: DishAllergens<(typeof US_ALLERGENS)[number]>;
  /** Foods that are not in the table: what they hold is not known, so the lists may be too short. */
  readonly unknownFoods: readonly string[];
}

/** The allergens of a dish, those sure and those that depend on what is chosen. */
export function allergensOf(dish: Pick<Dish, "makings">, foods: FoodTable): AllergensByLaw {
  const required = dish.makings.filter(({ optional }) => !optional).map(({ food }) => food);
  const all = dish.makings.flatMap(({ food, alternatives }) => [food, ...alternatives.map((each) => each.food)]);
  const collect = (ids: readonly string[], law: "eu" | "us") =>
    new Set<string>(ids.flatMap((id) => foods.get(id)?.allergens[law] ?? []));
  const split = <Allergen extends string>(list: readonly Allergen[], law: "eu" | "us") => {
    const [sure, any] = [collect(required, law), collect(all, law)];
    return {
      sure: list.filter((allergen) => sure.has(allergen)),
      possible: list.filter((allergen) => any.has(allergen) && !sure.has(allergen)),
    };
  };
  return {
    eu: split(EU_ALLERGENS, "eu"),
    us: split(US_ALLERGENS, "us"),
    unknownFoods: [...new Set(all)].filter((id) => !foods.has(id)),
  };
}
