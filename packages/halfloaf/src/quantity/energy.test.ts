import fc from "fast-check";
import { expect, test } from "vitest";
import { toKcal, toKj } from "./energy.ts";

test("100 kcal are 418.4 kJ", () => {
  expect(toKj(100)).toBeCloseTo(418.4, 10);
  expect(toKcal(418.4)).toBeCloseTo(100, 10);
});

test("there and back gives the same energy", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (energyKcal) => {
      expect(Math.abs(toKcal(toKj(energyKcal)) - energyKcal)).toBeLessThanOrEqual(energyKcal * 1e-15);
    }),
  );
});
