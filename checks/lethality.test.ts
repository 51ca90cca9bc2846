import { equivalentMinutes } from "halfloaf/safety";
import { describe, expect, test } from "vitest";

/** **Source**: UK Food Standards Agency, cooking your food: any one of these heatings of the middle of the food. */
const FSA_MINUTES = [
  [60, 45],
  [65, 10],
  [70, 2],
  [75, 30 / 60],
  [80, 6 / 60],
] as const;

describe("2 minutes at 70 C with z = 7.5 C", () => {
  test.each([
    [60, 43.09],
    [65, 9.28],
    [70, 2],
    [75, 25.9 / 60],
    [80, 5.57 / 60],
  ])("%d C: %d min", (tempC, minutes) => {
    expect(Math.abs(equivalentMinutes(tempC) / minutes - 1)).toBeLessThan(0.002);
  });

  test.each(FSA_MINUTES)(
    "%d C: no longer than the %d min of the list, and short of it by 15 % at most",
    (tempC, listed) => {
      expect(equivalentMinutes(tempC)).toBeLessThanOrEqual(listed);
      expect(equivalentMinutes(tempC)).toBeGreaterThan(listed * 0.85);
    },
  );
});

/** **Source**: ACMSF on E. coli O157 in minced beef: 93 minutes at 60 C, 14 at 65 C (seen on a secondary page). */
test("with z = 6 C it is 93 minutes at 60 C and 14 at 65 C", () => {
  expect(Math.round(equivalentMinutes(60, { zC: 6 }))).toBe(93);
  expect(Math.round(equivalentMinutes(65, { zC: 6 }))).toBe(14);
});
