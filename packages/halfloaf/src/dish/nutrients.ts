import { type Composition, type Food, type FoodTable, NUTRIENT_NAMES, type Nutrient } from "../food/index.ts";
import {
  asWritten,
  type Choose,
  isKnown,
  isUnknown,
  type KnownAmount,
  makingsOf,
  type UnknownAmount,
} from "./amounts.ts";
import type { Dish } from "./dish.ts";

/**
 * Composition after cooking, from the raw composition and the code of the retention table; amounts keep their base. It
 * leaves out what it cannot tell.
 */
export type Retain = (raw: Composition, code: string) => Composition;

/** What one portion holds of a component. */
export interface NutrientAmount {
  /** The known part, in the unit of the component's name; undefined where no part is known. */
  readonly amount: number | undefined;
  /** Share of the known edible mass whose figure is known, 0 to 1. */
  readonly knownShare: number;
}

/** What one portion of a dish holds. */
export interface DishNutrients {
  readonly perPortion: Readonly<Record<Nutrient, NutrientAmount>>;
  /** Edible g of vegetables and fruit, weighed raw. */
  readonly vegetablesFruitG: number;
  /** Edible g of all makings whose amount is known, weighed raw. */
  readonly edibleG: number;
  /** Makings whose amount is not known; they are in no sum and in no share. */
  readonly unknown: readonly UnknownAmount[];
  /** True where the losses of cooking were taken off; false means that every figure is that of the raw makings. */
  readonly retained: boolean;
}

/**
 * What one portion of a dish holds: the sum over its makings of edible grams, composition and retention. An amount given as
 * a range counts with its middle. An unknown figure adds nothing to the amount and lowers the known share by the mass of
 * its making. An alternative loses in cooking what the making it stands for loses, since the table's codes are coarse.
 */
export function nutrientsOfDish(
  dish: Pick<Dish, "makings" | "portions">,
  foods: FoodTable,
  retain: Retain | undefined,
  choose: Choose = asWritten,
): DishNutrients {
  const amounts = makingsOf(dish, foods, choose);
  const parts = amounts.filter(isKnown).map((amount) => toPart(amount, foods, retain));
  const edibleG = sum(parts.map(({ massG }) => massG));
  const perPortion: Partial<Record<Nutrient, NutrientAmount>> = {};
  for (const name of NUTRIENT_NAMES) perPortion[name] = addUp(parts, edibleG, name);
  return {
    perPortion: perPortion as Record<Nutrient, NutrientAmount>,
    vegetablesFruitG: sum(parts.filter(({ food }) => food.vegetableOrFruit).map(({ massG }) => massG)),
    edibleG,
    unknown: amounts.filter(isUnknown),
    retained: retain !== undefined,
  };
}

/** One making on the plate: its food, its edible g and what 100 raw g of it bring. */
interface Part {
  readonly food: Food;
  readonly massG: number;
  readonly per100g: Composition;
}

function toPart({ food: id, making, edibleG }: KnownAmount, foods: FoodTable, retain: Retain | undefined): Part {
  const food = foods.get(id) as Food;
  const isCooked = retain !== undefined && making.retention !== undefined;
  const per100g = isCooked ? retain(food.composition, making.retention as string) : food.composition;
  return { food, massG: edibleG.middle, per100g };
}

function addUp(parts: readonly Part[], edibleG: number, name: Nutrient): NutrientAmount {
  let [amount, knownG, isKnownAtAll] = [0, 0, false];
  for (const { massG, per100g } of parts) {
    const figure = per100g[name];
    if (figure === undefined) continue;
    amount += (massG * figure) / 100;
    knownG += massG;
    isKnownAtAll = true;
  }
  return isKnownAtAll ? { amount, knownShare: knownG / edibleG } : { amount: undefined, knownShare: 0 };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
