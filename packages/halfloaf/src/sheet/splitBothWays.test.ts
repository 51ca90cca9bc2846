import fc from "fast-check";
import { expect, test } from "vitest";
import { splitByLargestRemainder } from "../quantity/index.ts";
import { splitBothWays } from "./splitBothWays.ts";

const add = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
const weights = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 7 });

test("every row and every column adds up, and every cell is its share rounded down or up", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 3000 }), weights, weights, (total, a, b) => {
      const rows = splitByLargestRemainder(total, a);
      const columns = splitByLargestRemainder(total, b);
      const cells = splitBothWays(rows, columns);
      expect(cells.map(add)).toEqual(rows);
      expect(columns.map((_, at) => add(cells.map((row) => row[at] as number)))).toEqual(columns);
      for (const [i, row] of cells.entries()) {
        for (const [j, cell] of row.entries()) {
          const share = total === 0 ? 0 : ((rows[i] as number) * (columns[j] as number)) / total;
          expect(Math.abs(cell - share)).toBeLessThan(1);
        }
      }
    }),
    { endOnFailure: true },
  );
});

test("sums that differ are refused", () => {
  expect(() => splitBothWays([1, 2], [4])).toThrow(RangeError);
});
