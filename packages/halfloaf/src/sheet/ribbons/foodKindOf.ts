import type { Food } from "../../food/index.ts";

/** Kinds of food that a ribbon's pattern tells apart. */
export const FOOD_KINDS = ["dry", "fresh", "dairy", "protein", "fat", "other"] as const;
export type FoodKind = (typeof FOOD_KINDS)[number];

const KIND_OF_GROUP: Readonly<Record<Food["group"], FoodKind>> = {
  grain: "dry",
  flour: "dry",
  bread: "dry",
  pasta: "dry",
  pulse: "protein",
  soya: "protein",
  nut: "protein",
  fat: "fat",
  sauce: "other",
  vegetable: "fresh",
  herb: "fresh",
  spice: "other",
  fruit: "fresh",
  dairy: "dairy",
  egg: "protein",
  poultry: "protein",
  meat: "protein",
  fish: "protein",
  sweet: "other",
  leavening: "other",
  snack: "other",
  drink: "other",
};

/** The kind of a food in the picture of ribbons. */
export function foodKindOf({ group }: Pick<Food, "group">): FoodKind {
  return KIND_OF_GROUP[group];
}
