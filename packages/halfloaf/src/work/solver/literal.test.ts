import fc from "fast-check";
import { expect, test } from "vitest";
import { atLeast, atMost, FALSE, MOST_VALUE, negate, TRUE } from "./literal.ts";

const variable = fc.integer({ min: 0, max: 7999 });
const value = fc.integer({ min: -MOST_VALUE + 1, max: MOST_VALUE - 1 });

test("not at least t is at most t - 1, and twice not is the literal", () => {
  fc.assert(
    fc.property(variable, value, (v, t) => {
      expect(negate(atLeast(v, t))).toBe(atMost(v, t - 1));
      expect(negate(negate(atLeast(v, t)))).toBe(atLeast(v, t));
    }),
  );
});

test("literals of one bound are ordered from weak to strong", () => {
  fc.assert(
    fc.property(variable, value, value, (v, s, t) => {
      expect(atLeast(v, s) < atLeast(v, t)).toBe(s < t);
      expect(atMost(v, s) < atMost(v, t)).toBe(s > t);
    }),
  );
});

test("literals of the greatest model stay small integers on every engine", () => {
  expect(atMost(7999, -MOST_VALUE)).toBeLessThan(2 ** 30);
  expect(negate(TRUE)).toBe(FALSE);
});
