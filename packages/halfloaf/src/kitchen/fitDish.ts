import {
  type ChosenFood,
  type Dish,
  isUnknown,
  type KitNeeded,
  kitNeeded,
  type Making,
  type MakingAmount,
  makingsOf,
  suitsDiet,
} from "../dish/index.ts";
import type { Food, FoodTable } from "../food/index.ts";
import type { Eater, Kitchen } from "./kitchen.ts";

/** Why a kitchen can't cook a dish. */
export type Unfit =
  | { readonly reason: "kit-missing"; readonly kit: string }
  | { readonly reason: "not-to-be-had"; readonly food: string }
  | { readonly reason: "not-for-these-eaters"; readonly food: string }
  | { readonly reason: "amount-unknown"; readonly food: string };

/** A dish as this kitchen cooks it for certain eaters: what goes in per standard portion. */
export interface FittedDish {
  readonly dish: Dish;
  readonly makings: readonly Extract<MakingAmount, { ok: true }>[];
  /** Which food stands for each making; undefined where an optional one is left out. */
  readonly choose: (making: Making) => ChosenFood | undefined;
  /** Where it lies cooked already; absent = it is cooked. */
  readonly putBy?: "fridge" | "freezer";
}

/** True if the eater takes this food: diet, allergens and single foods. */
export function takesFood(eater: Eater, food: Food): boolean {
  if (!suitsDiet(food.diet, eater.diet)) return false;
  if (eater.avoids.foods.includes(food.id)) return false;
  const held: readonly string[] = [...food.allergens.eu, ...food.allergens.us];
  return !eater.avoids.allergens.some((allergen) => held.includes(allergen));
}

/** What a kitchen lacks of the kit a dish needs, or undefined. A kettle can be replaced by a ring and a pot. */
function missingKit(needed: KitNeeded, kit: Kitchen["kit"]): string | undefined {
  if (needed.rings > kit.rings) return "ring";
  if (needed.pans > kit.pans) return "pan";
  if (needed.pots > kit.pots) return "pot";
  if (needed.boards > kit.boards) return "board";
  if (needed.oven && !kit.oven) return "oven";
  if (needed.microwave && !kit.microwave) return "microwave";
  if (needed.blender && !kit.blender) return "blender";
  if (needed.kettle && !kit.kettle && (kit.rings === 0 || kit.pots === 0)) return "kettle";
  return undefined;
}

/** Why a kitchen lacks the kit for a dish, or undefined where it has it all. */
export function findLackingKit(dish: Dish, kit: Kitchen["kit"]): Unfit | undefined {
  const lacking = missingKit(kitNeeded(dish), kit);
  return lacking === undefined ? undefined : { reason: "kit-missing", kit: lacking };
}

/** The food that stands for each making of a dish; optional makings have none. */
export type ChosenFoods = ReadonlyMap<Making, ChosenFood>;

/** The foods of a making that can be had and that all the eaters take, as its author orders them; or why it has none. */
export function listTaken(
  making: Making,
  foods: FoodTable,
  eaters: readonly Eater[],
  isToBeHad: (food: string) => boolean,
): readonly ChosenFood[] | Unfit {
  const options: ChosenFood[] = [making, ...making.alternatives];
  const had = options.filter(({ food }) => isToBeHad(food));
  if (had.length === 0) return { reason: "not-to-be-had", food: making.food };
  const taken = had.filter(({ food }) => eaters.every((eater) => takesFood(eater, foods.get(food) as Food)));
  return taken.length > 0 ? taken : { reason: "not-for-these-eaters", food: making.food };
}

/** The first food of each making that can be had and that all the eaters take; or why a making has none. */
function chooseFoods(
  dish: Dish,
  foods: FoodTable,
  eaters: readonly Eater[],
  isToBeHad: (food: string) => boolean,
): ChosenFoods | Unfit {
  const chosen = new Map<Making, ChosenFood>();
  for (const making of dish.makings) {
    if (making.optional) continue;
    const taken = listTaken(making, foods, eaters, isToBeHad);
    if ("reason" in taken) return taken;
    chosen.set(making, taken[0] as ChosenFood);
  }
  return chosen;
}

/** A dish of chosen foods with its amounts; or the making whose amount is not known. What is to taste has none. */
export function weighChosen(dish: Dish, foods: FoodTable, chosen: ChosenFoods): FittedDish | Unfit {
  const choose = (making: Making): ChosenFood | undefined => chosen.get(making);
  const makings: Extract<MakingAmount, { ok: true }>[] = [];
  for (const amount of makingsOf(dish, foods, choose)) {
    if (amount.ok) makings.push(amount);
    else if (isUnknown(amount) && amount.reason !== "to-taste") return { reason: "amount-unknown", food: amount.food };
  }
  return { dish, makings, choose };
}

/**
 * The dish with the first food of each making that can be had and that all the eaters take. Optional makings are
 * left out: a plan buys nothing that a dish can do without. Answers why where the kitchen can't cook it for them.
 */
export function fitDish(
  dish: Dish,
  foods: FoodTable,
  kit: Kitchen["kit"],
  eaters: readonly Eater[],
  isToBeHad: (food: string) => boolean,
): FittedDish | Unfit {
  const lacking = findLackingKit(dish, kit);
  if (lacking) return lacking;
  const chosen = chooseFoods(dish, foods, eaters, isToBeHad);
  return "reason" in chosen ? chosen : weighChosen(dish, foods, chosen);
}
