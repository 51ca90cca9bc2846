import { solveLinear } from "@halfloaf/engine";
import { cheapestDiet, type DietFood } from "halfloaf/menu";
import { describe, expect, test } from "vitest";
import { ALLOWANCES, BY_DOLLARS_WORTH, BY_UNIT_SOLD } from "./stigler1945.ts";

const DAYS_A_YEAR = 365;

/** Dollars a year for each food of the cheapest diet. */
const FOODS: readonly (readonly [food: string, dollarsAYear: number])[] = [
  ["wheat flour, enriched", 10.77446],
  ["beef liver", 0.69078],
  ["cabbage", 4.09327],
  ["spinach", 1.8278],
  ["navy beans, dried", 22.27543],
];

/** What one unit more of an allowance adds to the cost of a day, in dollars. */
const DUALS: readonly (readonly [nutrient: string, dollars: number])[] = [
  ["energy, 1000 kcal", 0.0087651473],
  ["calcium, g", 0.0317377134],
  ["vitamin A, 1000 IU", 0.0004002327],
  ["riboflavin, mg", 0.0163580327],
  ["vitamin C, mg", 0.0001441175],
];

/** Allowances that the cheapest diet more than meets, with what it gives in a day. */
const SLACK: readonly (readonly [nutrient: string, aDay: number])[] = [
  ["protein, g", 147.41],
  ["iron, mg", 60.47],
  ["thiamin, mg", 4.1204],
  ["niacin, mg", 27.316],
];

async function solve(foods: readonly DietFood[]) {
  const outcome = await solveLinear(cheapestDiet(foods, ALLOWANCES));
  if (outcome.status !== "optimal" || outcome.rowDuals === undefined) throw new Error(`the diet is ${outcome.status}`);
  return { cost: outcome.objective, units: outcome.values, duals: outcome.rowDuals };
}

/**
 * **Source**: Stigler 1945, Journal of Farm Economics 27(2), for foods and allowances, and for the 39.93 dollars a year
 * that he reached by trial and error; the optimum of the linear program, its foods and duals as solver textbooks give
 * them. Laderman's optimum of 1947, 39.69 dollars, agrees with it for a year of 365.25 days.
 */
describe("the cheapest diet of 1939", async () => {
  const { cost, units, duals } = await solve(BY_DOLLARS_WORTH);

  test("77 foods and 9 allowances go in", () => {
    const { columns, rows } = cheapestDiet(BY_DOLLARS_WORTH, ALLOWANCES);
    expect(columns).toHaveLength(77);
    expect(rows).toHaveLength(9);
  });

  test("costs 0.108662278 dollars a day, 39.6617315 dollars a year", () => {
    expect(cost).toBeCloseTo(0.108662278, 9);
    expect(cost * DAYS_A_YEAR).toBeCloseTo(39.6617315, 7);
  });

  test("is made of five foods", () => {
    const eaten = [...units].filter(([, dollars]) => dollars > 1e-9);
    expect(eaten.map(([food]) => food)).toEqual(FOODS.map(([food]) => food));
    for (const [food, dollarsAYear] of FOODS) {
      expect((units.get(food) as number) * DAYS_A_YEAR, food).toBeCloseTo(dollarsAYear, 5);
    }
  });

  test("its five binding allowances have the duals known, the others 0", () => {
    for (const [nutrient, dollars] of DUALS) expect(duals.get(nutrient), nutrient).toBeCloseTo(dollars, 10);
    for (const [nutrient] of SLACK) expect(duals.get(nutrient), nutrient).toBeCloseTo(0, 12);
  });

  test("duals times allowances are its cost", () => {
    const worth = ALLOWANCES.reduce((sum, { nutrient, least }) => sum + (duals.get(nutrient) as number) * least, 0);
    expect(worth).toBeCloseTo(cost, 12);
  });

  test("gives more than the allowance of the other four nutrients", () => {
    for (const [nutrient, aDay] of SLACK) {
      const given = BY_DOLLARS_WORTH.reduce(
        (sum, { name, amounts }) => sum + (amounts[nutrient] as number) * (units.get(name) as number),
        0,
      );
      expect(given, nutrient).toBeCloseTo(aDay, 2);
    }
  });

  test("is the same when foods are counted by the unit they were sold in", async () => {
    const sold = await solve(BY_UNIT_SOLD);
    expect(sold.cost).toBeCloseTo(cost, 12);
    for (const { name, pricePerUnit } of BY_UNIT_SOLD) {
      expect((sold.units.get(name) as number) * pricePerUnit, name).toBeCloseTo(units.get(name) as number, 9);
    }
  });
});
