import { loadStarterFoods } from "@halfloaf/data";
import { edibleFromPurchased, type Food, massOfAmount, parseFoodTable, purchasedFromEdible } from "halfloaf/food";
import type { Amount } from "halfloaf/quantity";
import { describe, expect, test } from "vitest";

const parsed = parseFoodTable(loadStarterFoods());

function readFood(id: string): Food {
  const food = parsed.ok ? parsed.table.get(id) : undefined;
  if (food === undefined) throw new Error(`${id} is not in the food table`);
  return food;
}

/** What an amount of a food gives of a component, through its measures and refuse. */
function amountOf(food: Food, component: "vitaminCMg" | "fatG", amount: Amount, as?: "purchased"): number {
  const mass = massOfAmount(food, amount, as);
  const per100G = food.composition[component];
  if (!mass.ok || per100G === undefined) throw new Error(`${food.id}: ${component} of the amount is unknown`);
  expect(mass.edibleG.low).toBe(mass.edibleG.high);
  return (per100G * mass.edibleG.low) / 100;
}

/**
 * **Source**: USDA National Nutrient Database for Standard Reference, Release 28, documentation (2016), pages 5 and 6:
 * the formulas N = V x W / 100 and, as purchased, N = V x W / 100 x (100 - R) / 100, each with its example.
 */
describe("the examples of the SR28 documentation", () => {
  const carrot = readFood("carrot");
  const butter = readFood("butter-salted");

  test("a pound of carrots as purchased holds 23.8185 mg of vitamin C", () => {
    expect(carrot.composition.vitaminCMg).toBe(5.9);
    expect(carrot.refusePct).toBe(11);
    expect(amountOf(carrot, "vitaminCMg", { value: 453.6, unit: "g" }, "purchased")).toBeCloseTo(23.8185, 4);
    // The documentation takes a pound as 453.6 g; the exact pound gives 0.0004 mg less.
    const exactPound = amountOf(carrot, "vitaminCMg", { value: 1, unit: "[lb_av]" }, "purchased");
    expect(exactPound).toBeCloseTo(23.8185 * (453.59237 / 453.6), 4);
  });

  test("a tablespoon of butter, 14.2 g, holds 11.5176 g of fat", () => {
    expect(butter.composition.fatG).toBe(81.11);
    expect(amountOf(butter, "fatG", { value: 14.2, unit: "g" })).toBeCloseTo(11.5176, 4);
    const spoon = massOfAmount(butter, { value: 1, unit: "[tbs_us]" });
    expect(spoon).toMatchObject({ ok: true });
    if (spoon.ok) expect(spoon.edibleG.low).toBeCloseTo(14.2, 1);
  });

  test("what is bought for the edible part of a pound of carrots is the pound", () => {
    expect(purchasedFromEdible(carrot, edibleFromPurchased(carrot, 453.6))).toBeCloseTo(453.6, 9);
  });
});
