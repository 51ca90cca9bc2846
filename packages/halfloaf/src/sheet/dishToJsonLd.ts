import { type Dish, type DishNutrients, dietOf, type Step } from "../dish/index.ts";
import type { English, FoodTable } from "../food/index.ts";
import { toDuration } from "./duration.ts";
import { jsonLdNutrition } from "./jsonLdNutrition.ts";
import { jsonLdSupply, toIngredient } from "./jsonLdSupply.ts";
import { type JsonLd, ownProperty } from "./ownProperty.ts";

/** What a dish is written with besides itself. */
export interface JsonLdOptions {
  /** Names the foods; a food that is not in it goes by its id. */
  readonly foods: FoodTable;
  /** The English of names, and whether carbohydrate is told with fibre ("american") or without ("british"). */
  readonly english: English;
  /** The language in which the dish and names of foods are told, as BCP 47 names it; absent = English. */
  readonly language?: string;
  /** Minutes for the dish's own portions, as computed; without it no times are written. */
  readonly minutes?: { readonly total: number; readonly prep?: number; readonly cook?: number };
  /** What a portion holds, as computed; without it no nutrition is written. */
  readonly nutrients?: DishNutrients;
  /** What it costs, as plain text with its currency; without it no cost is written. */
  readonly cost?: string;
}

const DIETS = { vegan: ["VeganDiet", "VegetarianDiet"], vegetarian: ["VegetarianDiet"], fish: [], meat: [] } as const;

/**
 * A dish as an item of schema.org's type Recipe, as JSON-LD.
 *
 * Makings stand twice: as lines for readers (`recipeIngredient`) and with amounts and foods for programs (`supply`). What
 * schema.org has no property for (what a step waits for, how many hands it takes, how it keeps) stands in
 * `additionalProperty`, its `propertyID` beginning with `halfloaf:`; with it the dish is read back the same. Diets are those
 * that follow from the foods as written; nothing is said of what is not known. **Source**: schema.org, Recipe, HowTo (`estimatedCost`), HowToStep,
 * HowToSupply, PropertyValue.
 */
export function dishToJsonLd(dish: Dish, options: JsonLdOptions): JsonLd {
  const { foods, english, language = "en", minutes, nutrients, cost } = options;
  const isEnglish = /^en\b/i.test(language);
  const speech = { english, language };
  const diet = dietOf(dish, foods).asWritten;
  const diets = diet === undefined ? [] : DIETS[diet];
  return {
    "@context": "https://schema.org",
    "@type": "Recipe",
    inLanguage: isEnglish ? (english === "british" ? "en-GB" : "en-US") : language,
    name: dish.title,
    ...(dish.note === undefined ? {} : { description: dish.note }),
    recipeCuisine: dish.cooking,
    recipeYield: `${dish.portions} ${dish.portions === 1 ? "serving" : "servings"}`,
    ...(minutes?.prep === undefined ? {} : { prepTime: toDuration(minutes.prep) }),
    ...(minutes?.cook === undefined ? {} : { cookTime: toDuration(minutes.cook) }),
    ...(minutes === undefined ? {} : { totalTime: toDuration(minutes.total) }),
    ...(cost === undefined ? {} : { estimatedCost: cost }),
    recipeIngredient: dish.makings.map((making) => toIngredient(making, foods, speech)),
    supply: dish.makings.map((making) => jsonLdSupply(making, foods, speech)),
    recipeInstructions: dish.method.map((step, at) => toHowToStep(step, at, dish.portions)),
    ...(nutrients === undefined ? {} : jsonLdNutrition(nutrients, dish, english)),
    ...(diets.length === 0 ? {} : { suitableForDiet: diets.map((name) => `https://schema.org/${name}`) }),
    additionalProperty: dishProperties(dish),
  };
}

/** The text of JSON-LD as it may stand in a script of a page: no "<" in it can end that script or open a comment. */
export function toJsonLdText(jsonLd: JsonLd): string {
  return JSON.stringify(jsonLd, null, 2).replace(/[<>&\u2028\u2029]/g, (sign) => {
    return `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;
  });
}

function toHowToStep(step: Step, at: number, portions: number): JsonLd {
  const minutes = step.minutes.fixed + step.minutes.perPortion * portions;
  return {
    "@type": "HowToStep",
    position: at + 1,
    text: step.text,
    ...(minutes > 0 ? { timeRequired: toDuration(minutes) } : {}),
    additionalProperty: [
      ownProperty("id", step.id),
      ownProperty("kind", step.kind),
      ownProperty("fixed-minutes", step.minutes.fixed),
      ...(step.minutes.perPortion === 0 ? [] : [ownProperty("minutes-per-portion", step.minutes.perPortion)]),
      ownProperty("hands", step.hands),
      ...step.kit.map((part) => ownProperty("kit", part)),
      ...(step.tempC === undefined ? [] : [ownProperty("temp-c", step.tempC)]),
      ...step.after.map((id) => ownProperty("after", id)),
      ...(step.holdMinutes === undefined ? [] : [ownProperty("hold-minutes", step.holdMinutes)]),
      ...(step.ahead ? [ownProperty("ahead", true)] : []),
      ...step.foods.map((food) => ownProperty("food", food)),
    ],
  };
}

function dishProperties(dish: Dish): JsonLd[] {
  const { keeps } = dish;
  return [
    ownProperty("id", dish.id),
    ownProperty("manner", dish.manner),
    ...dish.fits.map((kind) => ownProperty("fits", kind)),
    ownProperty("main", dish.main),
    ownProperty("portions", dish.portions),
    ownProperty("portion-mass-g", dish.portionMassG),
    ...(dish.statedMinutes === undefined ? [] : [ownProperty("stated-minutes", dish.statedMinutes)]),
    ownProperty("fridge-days", keeps.fridgeDays),
    ...(keeps.freezerDays === undefined ? [] : [ownProperty("freezer-days", keeps.freezerDays)]),
    ownProperty("keeps-authority", keeps.authority),
    ownProperty("travels", dish.travels),
    ...dish.served.map((way) => ownProperty("served", way)),
    ...dish.cautions.map((text) => ownProperty("caution", text)),
  ];
}
