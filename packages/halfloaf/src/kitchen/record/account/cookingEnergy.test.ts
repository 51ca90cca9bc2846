import { expect, test } from "vitest";
import { dish } from "../frozen/frozen.testing.ts";
import { cookingEnergy } from "./cookingEnergy.ts";

test("minutes at the hob times what it draws, at the kitchen's price", () => {
  // 24 minutes of simmering at half of 1.5 kW.
  expect(cookingEnergy(dish, 4, 30)).toEqual({
    kwh: expect.closeTo(0.3, 9),
    byKit: [{ kit: "ring", minutes: 24, kwh: expect.closeTo(0.3, 9) }],
    costMinor: 9,
  });
});

test("without a price there is no cost, and the kitchen's own kit takes the place of common figures", () => {
  const own = { ring: { watts: 1000, share: 1, fullIn: [] } };
  expect(cookingEnergy(dish, 4, undefined, own)).toMatchObject({ kwh: expect.closeTo(0.4, 9) });
  expect(cookingEnergy(dish, 4)).not.toHaveProperty("costMinor");
});

test("a step that boils draws all the time", () => {
  const method = dish.method.map((step) => ({ ...step, kind: "boil" as const }));
  expect(cookingEnergy({ method }, 4).kwh).toBeCloseTo(0.6, 9);
});

test.each([0, -1, Number.NaN])("%d portions are a defect", (portions) => {
  expect(() => cookingEnergy(dish, portions)).toThrow(RangeError);
});
