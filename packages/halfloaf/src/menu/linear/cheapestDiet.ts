import type { LinearColumn, LinearModel, LinearRow } from "./LinearModel.ts";

/** One food of a diet: what a unit of it costs and holds. The unit is free (100 g, a pack, a dollar's worth). */
export interface DietFood {
  /** Unique among the foods of its diet. */
  readonly name: string;
  readonly pricePerUnit: number;
  /** Amount of each nutrient in one unit, in the unit of its allowance; an absent key is an unknown amount. */
  readonly amounts: Readonly<Record<string, number>>;
}

/** The least of a nutrient that a diet must give. */
export interface DietAllowance {
  /** Unique among the allowances of its diet. */
  readonly nutrient: string;
  readonly least: number;
}

/**
 * The diet problem: units of each food, none negative, that give every allowance at the least cost.
 *
 * One column a food, one row an allowance, in the order given; the objective is in the money of the prices. An unknown
 * amount is not counted towards its allowance, so that what is found surely meets it and may cost more than it must.
 * Nothing is refused here: a name that stands twice is a fault of the model, which the solver answers.
 * **Source**: Stigler 1945, Journal of Farm Economics 27(2), 303-314; as a linear program, Dantzig 1990, Interfaces
 * 20(4), 43-47.
 */
export function cheapestDiet(foods: readonly DietFood[], allowances: readonly DietAllowance[]): LinearModel {
  return {
    sense: "min",
    columns: foods.map(
      ({ name, pricePerUnit }): LinearColumn => ({
        name,
        cost: pricePerUnit,
        lower: 0,
        upper: Number.POSITIVE_INFINITY,
      }),
    ),
    rows: allowances.map(
      ({ nutrient, least }): LinearRow => ({
        name: nutrient,
        lower: least,
        upper: Number.POSITIVE_INFINITY,
        entries: foods.flatMap(({ name, amounts }) => {
          const amount = Object.hasOwn(amounts, nutrient) ? amounts[nutrient] : undefined;
          return amount === undefined ? [] : [[name, amount] as const];
        }),
      }),
    ),
  };
}
