import { loadStarterFoods } from "@halfloaf/data";
import { type EnergyFactors, type Food, parseFoodTable } from "halfloaf/food";
import { describe, expect, test } from "vitest";

/** kcal in a gram of alcohol. **Source**: Merrill and Watt 1973, USDA Agriculture Handbook 74, table 13 (number from memory). */
const ALCOHOL_KCAL_PER_G = 6.93;

/**
 * Rows whose printed energy is not what their printed factors give; the source does not say why. It may have reckoned
 * from parts of the food, or from figures before rounding and revision.
 */
const APART = ["bread-rye", "herring-pickled", "peaches-tinned", "rice-flour", "rice-noodles", "yeast-fresh"];

interface Row {
  readonly food: Food;
  readonly factors: EnergyFactors;
}

const parsed = parseFoodTable(loadStarterFoods());
const foods = parsed.ok ? [...parsed.table.values()] : [];

/** One food for each row of the source that prints factors; a row that stands in for a second food counts once. */
const rows: readonly Row[] = [
  ...new Map(
    foods.flatMap((food): [string, Row][] => {
      const number = /^USDA SR28 NDB (\d{5})/.exec(food.source)?.[1];
      if (number === undefined || food.energyFactors === undefined) return [];
      return [[number, { food, factors: food.energyFactors }]];
    }),
  ).values(),
];

function known(food: Food, component: "energyKcal" | "proteinG" | "fatG" | "carbohydrateByDifferenceG"): number {
  const figure = food.composition[component];
  if (figure === undefined) throw new Error(`${food.id} has factors but its ${component} is unknown`);
  return figure;
}

function missKcal({ food, factors }: Row): number {
  // An unknown alcohol can only make the sum too low, so what is met without it is met.
  const alcoholG = food.composition.alcoholG;
  const reckoned =
    known(food, "proteinG") * factors.proteinKcalPerG +
    known(food, "fatG") * factors.fatKcalPerG +
    known(food, "carbohydrateByDifferenceG") * factors.carbohydrateKcalPerG +
    (alcoholG === undefined ? 0 : alcoholG * ALCOHOL_KCAL_PER_G);
  return Math.abs(reckoned - known(food, "energyKcal"));
}

/** **Source**: Merrill and Watt 1973, USDA Agriculture Handbook 74; figures and factors of USDA SR28 (2016). */
describe("energy of the foods from USDA SR28 that print specific factors", () => {
  test("is protein, fat and carbohydrate by their factors + 6.93 x alcohol within 1 kcal for 98 of 100", () => {
    expect(rows.length).toBeGreaterThanOrEqual(300);
    expect(rows.filter((row) => missKcal(row) <= 1).length / rows.length).toBeGreaterThanOrEqual(0.98);
  });

  test("the rows apart from it are known by name and lie within 3 kcal", () => {
    const apart = rows.filter((row) => missKcal(row) > 1);
    expect(apart.map(({ food }) => food.id).sort()).toEqual(APART);
    for (const row of apart) expect(missKcal(row), row.food.id).toBeLessThanOrEqual(3.1);
  });

  test("alcohol is among what is reckoned", () => {
    const spirits = rows.filter(({ food }) => (food.composition.alcoholG ?? 0) > 1);
    expect(spirits.map(({ food }) => food.id)).toEqual(["vanilla-extract"]);
    expect(missKcal(spirits[0] as Row)).toBeLessThanOrEqual(1);
  });
});
