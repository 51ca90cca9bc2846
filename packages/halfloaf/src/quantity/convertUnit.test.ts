import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromMassG, fromVolumeMl, toMassG, toVolumeMl } from "./convertUnit.ts";
import { UNIT_CODES, UNITS } from "./unit.ts";

describe("every unit", () => {
  test.each(UNIT_CODES)("%s converts there and back within its own kind and is unknown in the other", (unit) => {
    const isMass = UNITS[unit].kind === "mass";
    const [to, from] = isMass ? [toMassG, fromMassG] : [toVolumeMl, fromVolumeMl];
    const [otherTo, otherFrom] = isMass ? [toVolumeMl, fromVolumeMl] : [toMassG, fromMassG];
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (value) => {
        const back = from(to(value, unit) as number, unit) as number;
        expect(Math.abs(back - value)).toBeLessThanOrEqual(value * 1e-15 * 2);
        expect(otherTo(value, unit)).toBeUndefined();
        expect(otherFrom(value, unit)).toBeUndefined();
      }),
    );
  });
});

test("sizes that standards print", () => {
  expect(toMassG(1, "[lb_av]")).toBe(453.59237);
  expect(toMassG(16, "[oz_av]")).toBe(453.59237);
  expect(toVolumeMl(16, "[tbs_us]")).toBeCloseTo(236.5882365, 10);
  expect(toVolumeMl(3, "[tsp_us]")).toBeCloseTo(14.78676478125, 12);
  expect(toVolumeMl(128, "[foz_us]")).toBeCloseTo(3785.411784, 9);
  expect(toVolumeMl(20, "[foz_br]")).toBeCloseTo(568.26125, 10);
  expect(toVolumeMl(8, "[pt_br]")).toBeCloseTo(4546.09, 10);
});

test("a piece has neither mass nor volume of its own", () => {
  expect(toMassG(1, "piece")).toBeUndefined();
  expect(toVolumeMl(1, "piece")).toBeUndefined();
});
