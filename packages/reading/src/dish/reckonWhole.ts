import { type Dish, isKnown, makingsOf } from "halfloaf/dish";
import type { Food, FoodTable } from "halfloaf/food";
import { type DraftStep, type Field, reckoned } from "../method/DraftStep.ts";
import { HOT } from "../method/workWords.ts";
import type { DishDraft, DraftMaking } from "./DishDraft.ts";
import type { Passage } from "./DishText.ts";

/** Groups whose foods season or carry a dish and are seldom what it is made of. */
const SELDOM_MAIN: ReadonlySet<Food["group"]> = new Set([
  "fat",
  "sauce",
  "herb",
  "spice",
  "leavening",
  "sweet",
  "drink",
]);

/** The making of the greatest mass that is no fat, sauce, herb, spice, leavening, sweet or drink, else of the greatest mass. */
export function reckonMain(makings: readonly DraftMaking[], foods: FoodTable): Field<string> | undefined {
  const known = massesOf(makings, foods);
  const [heaviest] = [...known].sort((a, b) => Number(a.isSeldom) - Number(b.isSeldom) || b.massG - a.massG);
  const [first] = makings.flatMap(({ food }) => food?.value ?? []);
  const main = heaviest?.food ?? first;
  return main === undefined ? undefined : reckoned(main, "guess", "main-by-mass");
}

/** The raw edible mass of a portion, of the makings whose mass is known: what boils away or is taken up is not known. */
export function reckonPortionMassG(
  makings: readonly DraftMaking[],
  portions: number | undefined,
  foods: FoodTable,
): Field<number> | undefined {
  const massG = massesOf(makings, foods).reduce((sum, each) => sum + each.massG, 0);
  if (!(massG > 0) || portions === undefined) return undefined;
  return reckoned(Math.round((massG / portions) * 10) / 10 || 0.1, "guess", "mass-of-raw-makings");
}

function massesOf(
  makings: readonly DraftMaking[],
  foods: FoodTable,
): { readonly food: string; readonly massG: number; readonly isSeldom: boolean }[] {
  const stated = makings.flatMap(({ food, amount, as }): Dish["makings"] => {
    if (food === undefined || amount === undefined) return [];
    const base = { food: food.value, amount: amount.value, optional: false, alternatives: [] };
    return [as === undefined ? base : { ...base, as: as.value }];
  });
  return makingsOf({ makings: stated, portions: 1 }, foods)
    .filter(isKnown)
    .map(({ food, edibleG }) => ({
      food,
      massG: edibleG.middle,
      isSeldom: SELDOM_MAIN.has(foods.get(food)?.group as Food["group"]),
    }));
}

/** Words of titles and what they say of how a dish is cooked; ours, no source. */
const MANNER_WORDS: readonly (readonly [RegExp, Dish["manner"]])[] = [
  [/\b(?:porridge|oatmeal|congee)\b/i, "porridge"],
  [/\b(?:soup|broth|chowder|gazpacho)\b/i, "soup"],
  [/\b(?:curry|dal|dhal|daal|masala|korma)\b/i, "curry"],
  [/\b(?:salad|slaw|coleslaw)\b/i, "salad"],
  [/\b(?:sandwich|wrap|pitta|toastie|burger|on toast|tacos?|roll)s?\b/i, "sandwich"],
  [/\b(?:noodles?|ramen|udon|soba)\b/i, "noodles"],
  [/\b(?:pasta|spaghetti|penne|macaroni|lasagne|lasagna|tagliatelle|orzo)\b/i, "pasta"],
  [/\bstir-?fr(?:y|ied)\b/i, "stir-fry"],
  [/\b(?:omelette|omelet|frittata|scrambled|shakshuka|fried eggs?)\b/i, "eggs"],
  [/\b(?:stew|casserole|chilli|chili|goulash|tagine|ragout|hotpot)\b/i, "stew"],
  [/\b(?:dip|hummus|houmous|spread|pâté)\b/i, "dip"],
  [/\b(?:risotto|pilaf|pilau|paella|jollof|pilav)\b/i, "one-pot-grain"],
  [/\b(?:bread|cake|pie|tart|bake|baked|roast|gratin|muffins?|biscuits?|cookies?|crumble|pizza)\b/i, "bake"],
];

/** How the dish is cooked: by its title, else by the kinds of its steps. */
export function reckonManner(title: string, method: readonly DraftStep[]): Field<Dish["manner"]> {
  const named = MANNER_WORDS.find(([words]) => words.test(title))?.[1];
  if (named !== undefined) return reckoned(named, "likely", "manner-by-title");
  const kinds = new Set(method.map(({ kind }) => kind.value));
  const manner = kinds.has("bake") ? "bake" : kinds.has("simmer") ? "stew" : isHot(method) ? "pan" : "no-heat";
  return reckoned(manner, "guess", "manner-by-steps");
}

const SITTING_WORDS: readonly (readonly [RegExp, Dish["fits"][number]])[] = [
  [/\b(?:breakfast|brunch|morning)\b/i, "morning"],
  [/\b(?:lunch|midday)\b/i, "midday"],
  [/\b(?:snack|dessert|sweet|cake|biscuits?|cookies?|starter|side|drink)s?\b/i, "between"],
  [/\b(?:dinner|supper|main|evening|tea)\b/i, "evening"],
];

/** The sittings it is for: those that its categories name, else the two main meals. */
export function reckonFits(categories: readonly Passage[]): Field<Dish["fits"]> {
  const text = categories.map((passage) => passage.text).join("\n");
  const fits = SITTING_WORDS.filter(([words]) => words.test(text)).map(([, kind]) => kind);
  return fits.length > 0
    ? reckoned(fits, "likely", "fits-by-category")
    : reckoned(["midday", "evening"], "guess", "fits-unsaid");
}

/** Hot where anything is cooked, else cold. */
export function reckonServed(method: readonly DraftStep[]): DishDraft["served"] {
  return reckoned([isHot(method) ? "hot" : "cold"], "guess", "served-by-steps");
}

function isHot(method: readonly DraftStep[]): boolean {
  return method.some(({ kind }) => HOT.has(kind.value));
}
