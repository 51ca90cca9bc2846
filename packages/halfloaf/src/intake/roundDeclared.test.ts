import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DECLARED_ITEMS, roundDeclared } from "./roundDeclared.ts";

const item = fc.constantFrom(...DECLARED_ITEMS);
const amount = fc.double({ min: 0, max: 4000, noNaN: true });

describe("laws", () => {
  test("what is printed reads as the value", () => {
    fc.assert(
      fc.property(item, amount, (name, given) => {
        const { value, text } = roundDeclared(name, given);
        expect(Number(text)).toBe(value);
      }),
    );
  });

  test("a larger amount is never declared as less", () => {
    fc.assert(
      fc.property(item, amount, amount, (name, a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(roundDeclared(name, low).value).toBeLessThanOrEqual(roundDeclared(name, high).value);
      }),
    );
  });

  test("a figure that is not zero is off by half of its last digit at most", () => {
    fc.assert(
      fc.property(item, amount, (name, given) => {
        const { value, text } = roundDeclared(name, given);
        if (value === 0) return;
        const decimals = text.split(".")[1]?.length ?? 0;
        expect(Math.abs(value - given)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
      }),
    );
  });
});

describe("both sides of each bound", () => {
  test.each([
    ["energy", 223.879, "224"],
    ["energy", 0.4, "0"],
    ["energy", 0.5, "1"],
    ["fat", 0.5, "0"],
    ["fat", 0.51, "0.5"],
    ["fat", 9.94, "9.9"],
    ["fat", 9.97, "10"],
    ["fat", 10, "10"],
    ["fat", 10.5, "11"],
    ["fat", 3, "3.0"],
    ["saturates", 0.1, "0"],
    ["saturates", 0.11, "0.1"],
    ["carbohydrate", 11.41, "11"],
    ["sugars", 0.5, "0"],
    ["fibre", 2.45, "2.5"],
    ["protein", 0.26, "0"],
    ["salt", 0.0125, "0"],
    ["salt", 0.0126, "0.01"],
    ["salt", 0.994, "0.99"],
    ["salt", 0.996, "1.0"],
    ["salt", 1.25, "1.3"],
    ["salt", 1.005, "1.0"],
    ["salt", 0.145, "0.15"],
  ] as const)("%s %d is printed as %s", (name, given, text) => {
    expect(roundDeclared(name, given).text).toBe(text);
  });

  test.each([-0.01, Number.NaN, Number.POSITIVE_INFINITY])("%d is a defect", (given) => {
    expect(() => roundDeclared("fat", given)).toThrow(RangeError);
  });
});
