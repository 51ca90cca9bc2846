import { loadStarterFoods } from "@halfloaf/data";
import { parseFoodTable } from "halfloaf/food";
import { availableCarbohydrateG, declaredEnergy } from "halfloaf/intake";
import { expect, test } from "vitest";

/** **Source**: USDA SR28, NDB 09003, apples, raw, with skin, per 100 g. */
const APPLE = { proteinG: 0.26, fatG: 0.17, carbohydrateByDifferenceG: 13.81, fibreG: 2.4, alcoholG: 0 };

/** **Source**: Regulation (EU) 1169/2011, Annex XIV: kcal and kJ each by their own factors. */
test("an apple has 53.01 kcal and 223.88 kJ in the sense of the Regulation", () => {
  expect(availableCarbohydrateG(APPLE)).toBeCloseTo(11.41, 9);
  const energy = declaredEnergy(APPLE);
  expect(energy?.energyKcal).toBeCloseTo(53.01, 9);
  expect(energy?.energyKj).toBeCloseTo(223.88, 9);
});

test("the kJ are not the kcal converted: 53.01 x 4.184 is 221.79", () => {
  expect(Math.abs((declaredEnergy(APPLE)?.energyKj ?? 0) - 53.01 * 4.184)).toBeGreaterThan(2);
});

/**
 * SR28 prints 52 kcal and 218 kJ, since it reckons otherwise: factors of the food itself (protein 3.36, fat 8.37,
 * carbohydrate 3.60 kcal a gram) on carbohydrate with its fibre, and kJ as kcal x 4.184.
 * **Source**: Merrill and Watt 1973, USDA Agriculture Handbook 74; factors of USDA SR28, NDB 09003.
 */
test("the food table keeps the 52 kcal and 218 kJ that its source prints, for the reason above", () => {
  const parsed = parseFoodTable(loadStarterFoods());
  const apple = parsed.ok ? parsed.table.get("apple") : undefined;
  expect(apple?.source).toContain("09003");
  expect(apple?.composition).toMatchObject({ ...APPLE, energyKcal: 52, energyKj: 218 });
  const specificKcal = 0.26 * 3.36 + 0.17 * 8.37 + 13.81 * 3.6;
  expect(Math.round(specificKcal)).toBe(52);
  expect(Math.round(52 * 4.184)).toBe(218);
  expect(declaredEnergy(apple?.composition ?? {})?.energyKcal).toBeCloseTo(53.01, 9);
});
