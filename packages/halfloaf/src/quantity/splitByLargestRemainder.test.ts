import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { splitByLargestRemainder } from "./splitByLargestRemainder.ts";

const weight = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 9 }), fc.double({ min: 0, max: 1e9, noNaN: true }));
const weights = fc.array(weight, { minLength: 1, maxLength: 12 });
const total = fc.integer({ min: -1_000_000, max: 1_000_000 });
const add = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

describe("laws", () => {
  test("the parts add up to the total", () => {
    fc.assert(
      fc.property(total, weights, (totalMinor, each) => {
        expect(add(splitByLargestRemainder(totalMinor, each))).toBe(totalMinor);
      }),
    );
  });

  test("each part is its share rounded down or up", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), weights, (totalMinor, each) => {
        fc.pre(add(each) > 1e-6);
        const parts = splitByLargestRemainder(totalMinor, each);
        for (const [at, part] of parts.entries()) {
          const share = (totalMinor * (each[at] as number)) / add(each);
          expect(part).toBeGreaterThan(share - 1 - 1e-6);
          expect(part).toBeLessThan(share + 1 + 1e-6);
        }
      }),
    );
  });

  test("a weight of zero takes nothing while another weighs something", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), weights, (totalMinor, each) => {
        fc.pre(each.some((value) => value > 0));
        const parts = splitByLargestRemainder(totalMinor, each);
        for (const [at, part] of parts.entries()) if (each[at] === 0) expect(part).toBe(0);
      }),
    );
  });

  test("a larger weight never takes less", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), weights, (totalMinor, each) => {
        const parts = splitByLargestRemainder(totalMinor, each);
        const order = each.map((_, at) => at).sort((a, b) => (each[a] as number) - (each[b] as number) || b - a);
        for (const [at, index] of order.slice(1).entries()) {
          expect(parts[index]).toBeGreaterThanOrEqual(parts[order[at] as number] as number);
        }
      }),
    );
  });

  test("the opposite total gives the opposite parts", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), weights, (totalMinor, each) => {
        const opposite = splitByLargestRemainder(-totalMinor, each).map((part) => (part === 0 ? 0 : -part));
        expect(opposite).toEqual(splitByLargestRemainder(totalMinor, each));
      }),
    );
  });
});

describe("cases", () => {
  test("equal remainders go to the earliest", () => {
    expect(splitByLargestRemainder(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(splitByLargestRemainder(2, [1, 1, 1])).toEqual([1, 1, 0]);
  });

  test("the largest remainder comes first wherever it stands", () => {
    expect(splitByLargestRemainder(10, [1, 1, 1.5])).toEqual([3, 3, 4]);
    expect(splitByLargestRemainder(7, [0.1, 0.2, 0.4])).toEqual([1, 2, 4]);
  });

  test("weights of nothing weigh the same", () => {
    expect(splitByLargestRemainder(5, [0, 0])).toEqual([3, 2]);
    expect(splitByLargestRemainder(-5, [0, 0])).toEqual([-3, -2]);
  });

  test("extreme weights lose nothing", () => {
    expect(splitByLargestRemainder(9, [Number.MIN_VALUE, Number.MIN_VALUE, Number.MIN_VALUE])).toEqual([3, 3, 3]);
    expect(splitByLargestRemainder(9, [Number.MAX_VALUE, Number.MIN_VALUE])).toEqual([9, 0]);
    expect(add(splitByLargestRemainder(Number.MAX_SAFE_INTEGER, [1, 2, 4]))).toBe(Number.MAX_SAFE_INTEGER);
  });

  test("nothing into no part is nothing", () => {
    expect(splitByLargestRemainder(0, [])).toEqual([]);
  });

  test.each([
    [1, []],
    [0.5, [1]],
    [1, [-1]],
    [1, [Number.NaN]],
    [1, [Number.POSITIVE_INFINITY]],
  ])("%d into %j is a defect", (totalMinor, each) => {
    expect(() => splitByLargestRemainder(totalMinor, each)).toThrow(RangeError);
  });
});
