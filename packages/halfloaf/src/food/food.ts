import * as v from "valibot";
import type { Composition } from "./nutrient.ts";

/** Lower-case words joined by hyphens; identifiers never change once published. */
export const Id = v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case words joined by hyphens"));

export const FOOD_GROUPS = [
  "grain",
  "flour",
  "bread",
  "pasta",
  "pulse",
  "soya",
  "nut",
  "fat",
  "sauce",
  "vegetable",
  "herb",
  "spice",
  "fruit",
  "dairy",
  "egg",
  "poultry",
  "meat",
  "fish",
  "sweet",
  "leavening",
  "snack",
  "drink",
] as const;

/** The 14 allergens of Regulation (EU) 1169/2011, Annex II, in its order. */
export const EU_ALLERGENS = [
  "gluten",
  "crustaceans",
  "eggs",
  "fish",
  "peanuts",
  "soybeans",
  "milk",
  "nuts",
  "celery",
  "mustard",
  "sesame",
  "sulphites",
  "lupin",
  "molluscs",
] as const;
export type EuAllergen = (typeof EU_ALLERGENS)[number];

/** The 9 major allergens of US law (FALCPA 2004, FASTER Act 2021). */
export const US_ALLERGENS = [
  "milk",
  "eggs",
  "fish",
  "crustacean-shellfish",
  "tree-nuts",
  "peanuts",
  "wheat",
  "soybeans",
  "sesame",
] as const;
export type UsAllergen = (typeof US_ALLERGENS)[number];

/** How a food must be handled before it is cooked; decides the order of work on one board. */
export const HYGIENE_CLASSES = ["raw-meat", "raw-fish", "raw-egg", "unwashed-root", "ready-to-eat", "cooked"] as const;

/** The strictest way of eating that still takes the food. */
export const DIETS = ["vegan", "vegetarian", "fish", "meat"] as const;

export const PLACES = ["dry-store", "fridge", "freezer"] as const;
export type Place = (typeof PLACES)[number];

const positive = v.pipe(v.number(), v.gtValue(0));
const days = v.pipe(v.number(), v.integer(), v.minValue(0));
const text = v.pipe(v.string(), v.nonEmpty());

/** Whole days a food keeps in each place; an absent place means it is not kept there. */
const KeepingDays = v.strictObject({
  "dry-store": v.optional(days),
  fridge: v.optional(days),
  freezer: v.optional(days),
});

/**
 * One food without its composition: names, measures, refuse, keeping, allergens, hygiene class.
 * Masses in g, volumes in mL, times in whole days. Absent optional keys are unknown.
 */
export const FoodFacts = v.strictObject({
  id: Id,
  group: v.picklist(FOOD_GROUPS),
  /** First of each list is the name shown (`foodName`); the others are found by search. */
  names: v.strictObject({
    british: v.pipe(v.array(text), v.minLength(1)),
    american: v.pipe(v.array(text), v.minLength(1)),
    /** Also those of Austria and Switzerland. Absent where nobody told them: a kitchen's own food has one name in all languages. */
    german: v.optional(v.pipe(v.array(text), v.minLength(1))),
  }),
  diet: v.picklist(DIETS),
  /** True where the food counts towards the 400 g of vegetables and fruit (not starchy roots). */
  vegetableOrFruit: v.optional(v.boolean(), false),
  hygiene: v.picklist(HYGIENE_CLASSES),
  allergens: v.strictObject({ eu: v.array(v.picklist(EU_ALLERGENS)), us: v.array(v.picklist(US_ALLERGENS)) }),
  /** Percent of the mass as purchased that is not eaten: peel, bone, the liquid of a tin. */
  refusePct: v.pipe(v.number(), v.minValue(0), v.ltValue(100)),
  refuseNote: v.optional(text),
  refuseSource: v.optional(text),
  densityGPerMl: v.optional(positive),
  densitySource: v.optional(text),
  /** Edible mass of one piece, by size; the first is the size meant when none is named. */
  pieces: v.optional(v.array(v.strictObject({ size: text, massG: positive, source: text })), []),
  keeping: v.strictObject({ unopened: KeepingDays, opened: KeepingDays, authority: text }),
  /** Figures of the composition row that come from elsewhere than the row's own source. */
  figureSources: v.optional(v.record(v.string(), text), {}),
  note: v.optional(text),
});
export type FoodFacts = v.InferOutput<typeof FoodFacts>;

/** Atwater factors specific to the food, kcal per g. */
export interface EnergyFactors {
  readonly proteinKcalPerG: number;
  readonly fatKcalPerG: number;
  readonly carbohydrateKcalPerG: number;
}

/** One row of the food table: facts, composition per 100 g edible portion, and the source of the figures. */
export interface Food extends FoodFacts {
  readonly source: string;
  readonly composition: Composition;
  /** Absent where the source prints none. */
  readonly energyFactors?: EnergyFactors;
}
