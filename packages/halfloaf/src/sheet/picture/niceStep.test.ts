import fc from "fast-check";
import { expect, test } from "vitest";
import { niceStep } from "./niceTicks.ts";

test("a step is 1, 2 or 5 times a power of ten, no less than asked for and less than 2.5 times that", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e9, noNaN: true }), (atLeast) => {
      const step = niceStep(atLeast);
      const lead = step / 10 ** Math.floor(Math.log10(step * (1 + 1e-9)));
      expect([1, 2, 5].some((each) => Math.abs(lead - each) < 1e-6)).toBe(true);
      expect(step).toBeGreaterThanOrEqual(atLeast * (1 - 1e-9));
      expect(step).toBeLessThanOrEqual(atLeast * 2.5 * (1 + 1e-9));
    }),
  );
});

test.each([
  [0, 1],
  [37, 50],
  [1, 1],
  [200, 200],
  [501, 1000],
])("niceStep(%d) is %d", (atLeast, step) => {
  expect(niceStep(atLeast)).toBeCloseTo(step, 9);
});
