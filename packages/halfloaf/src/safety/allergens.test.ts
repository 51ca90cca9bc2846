import { describe, expect, test } from "vitest";
import { EU_ALLERGENS, US_ALLERGENS } from "../food/food.ts";
import { EU_ALLERGEN_NAMES, US_ALLERGEN_NAMES } from "./allergens.ts";

describe.each([
  ["EU", EU_ALLERGENS, EU_ALLERGEN_NAMES, 14],
  ["US", US_ALLERGENS, US_ALLERGEN_NAMES, 9],
] as const)("the %s list", (_, codes, names, count) => {
  test(`numbers its ${count} allergens in the order of the law`, () => {
    const all = Object.entries(names);
    expect(all.map(([code]) => code)).toEqual([...codes]);
    expect(all.map(([, { number }]) => number)).toEqual(Array.from({ length: count }, (__, at) => at + 1));
    expect(new Set(all.map(([, { name }]) => name)).size).toBe(count);
  });
});

test("molluscs and cereals other than wheat are on the EU list alone", () => {
  expect(Object.keys(US_ALLERGEN_NAMES)).not.toContain("molluscs");
  expect(US_ALLERGEN_NAMES.wheat.detail).toContain("not barley, rye or oats");
  expect(EU_ALLERGEN_NAMES.gluten.detail).toContain("barley");
});
