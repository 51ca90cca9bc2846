import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { equivalentMinutes } from "./lethality.ts";

const tempC = fc.double({ min: 50, max: 100, noNaN: true });
const zC = fc.double({ min: 4, max: 12, noNaN: true });

describe("laws", () => {
  test("z degrees more take a tenth of the time", () => {
    fc.assert(
      fc.property(tempC, zC, (temp, z) => {
        const ratio = equivalentMinutes(temp, { zC: z }) / equivalentMinutes(temp + z, { zC: z });
        expect(ratio).toBeCloseTo(10, 6);
      }),
    );
  });

  test("hotter is never slower", () => {
    fc.assert(
      fc.property(tempC, tempC, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(equivalentMinutes(high)).toBeLessThanOrEqual(equivalentMinutes(low));
      }),
    );
  });

  test("an equal heating taken as the reference leaves the curve as it is", () => {
    fc.assert(
      fc.property(tempC, tempC, (referenceC, temp) => {
        const minutes = equivalentMinutes(referenceC);
        const again = equivalentMinutes(temp, { referenceC, minutes });
        expect(again / equivalentMinutes(temp)).toBeCloseTo(1, 6);
      }),
    );
  });
});

test("at the reference it takes the minutes of the reference", () => {
  expect(equivalentMinutes(70)).toBe(2);
  expect(equivalentMinutes(65, { referenceC: 65, minutes: 10 })).toBe(10);
});

test.each([
  [Number.NaN, {}],
  [70, { zC: 0 }],
  [70, { minutes: -1 }],
  [70, { referenceC: Number.POSITIVE_INFINITY }],
])("%d C by %j is a defect", (temp, reference) => {
  expect(() => equivalentMinutes(temp, reference)).toThrow(RangeError);
});
