import fc from "fast-check";
import type { LinearModel, LinearRow } from "halfloaf/menu/linear";
import { describe, expect, test } from "vitest";
import { ImpliedHolds } from "./ImpliedHolds.ts";

const COLUMNS = 4;
const MOST = 2;

function modelOf(rows: readonly LinearRow[]): LinearModel {
  const columns = Array.from({ length: COLUMNS }, (_, at) => ({
    name: `c${at}`,
    cost: 1,
    lower: 0,
    upper: MOST,
    integer: true,
  }));
  return { sense: "min", columns, rows };
}

/** All whole-number points between the bounds that keep the rows. */
function listPoints(rows: readonly LinearRow[], lower: Float64Array, upper: Float64Array): number[][] {
  let points: number[][] = [[]];
  for (let column = 0; column < COLUMNS; column++)
    points = points.flatMap((point) =>
      Array.from({ length: MOST + 1 }, (_, value) => value)
        .filter((value) => value >= (lower[column] as number) && value <= (upper[column] as number))
        .map((value) => [...point, value]),
    );
  return points.filter((point) =>
    rows.every(({ lower: least, upper: most, entries }) => {
      const sum = entries.reduce((so, [name, times]) => so + times * (point[Number(name.slice(1))] as number), 0);
      return sum >= least && sum <= most;
    }),
  );
}

const rowBetween: fc.Arbitrary<LinearRow> = fc
  .record({
    one: fc.nat(COLUMNS - 1),
    step: fc.integer({ min: 1, max: COLUMNS - 1 }),
    times: fc.constantFrom([1, -1], [-1, 1], [2, -2], [1, -2], [1, 1], [-1, -1]),
    lower: fc.constantFrom(0, 0, 0, 1, -1),
  })
  .map(({ one, step, times, lower }) => ({
    name: "row",
    lower,
    upper: Number.POSITIVE_INFINITY,
    entries: [
      [`c${one}`, times[0] as number],
      [`c${(one + step) % COLUMNS}`, times[1] as number],
    ],
  }));

describe("what follows from a hold", () => {
  test("rules out no whole-number point that keeps the rows and the hold", () => {
    let ruledOut = 0;
    fc.assert(
      fc.property(
        fc.array(rowBetween, { minLength: 1, maxLength: 5 }),
        fc.nat(COLUMNS - 1),
        fc.array(fc.tuple(fc.nat(MOST), fc.nat(MOST)), { minLength: COLUMNS, maxLength: COLUMNS }),
        fc.nat(MOST),
        fc.boolean(),
        (rows, column, bounds, value, up) => {
          const lower = Float64Array.from(bounds, ([a, b]) => Math.min(a, b));
          const upper = Float64Array.from(bounds, ([a, b]) => Math.max(a, b));
          const [least, most] = [lower[column] as number, upper[column] as number];
          const at = Math.min(most, Math.max(least, value));
          const hold = { column, lower: up ? at : least, upper: up ? most : at };
          const holds = new ImpliedHolds(modelOf(rows.slice(1)), rows.slice(0, 1)).follow(hold, lower, upper);
          const kept = listPoints(rows, lower, upper).filter(
            (point) => (point[column] as number) >= hold.lower && (point[column] as number) <= hold.upper,
          );
          if (holds === undefined) {
            ruledOut++;
            expect(kept).toEqual([]);
          }
          for (const one of holds ?? [])
            for (const point of kept) {
              expect(point[one.column]).toBeGreaterThanOrEqual(one.lower);
              expect(point[one.column]).toBeLessThanOrEqual(one.upper);
            }
        },
      ),
      { numRuns: 500, endOnFailure: true },
    );
    expect(ruledOut).toBeGreaterThan(0);
  });

  test("a food not bought leaves none of its dishes, a dish served buys all its foods", () => {
    const [food, other, dish, side] = [0, 1, 2, 3];
    const needs = [
      [food, dish],
      [food, side],
      [other, dish],
    ].map(
      ([above, below]): LinearRow => ({
        name: `need ${above} ${below}`,
        lower: 0,
        upper: Number.POSITIVE_INFINITY,
        entries: [
          [`c${above}`, 1],
          [`c${below}`, -1],
        ],
      }),
    );
    const implied = new ImpliedHolds(modelOf([]), needs);
    const [lower, upper] = [new Float64Array(COLUMNS), new Float64Array(COLUMNS).fill(1)];
    const follow = (column: number, least: number, most: number): unknown =>
      implied.follow({ column, lower: least, upper: most }, lower, upper);
    expect(follow(food, 0, 0)).toEqual(
      expect.arrayContaining([food, dish, side].map((column) => ({ column, lower: 0, upper: 0 }))),
    );
    expect(follow(dish, 1, 1)).toEqual(
      expect.arrayContaining([food, other, dish].map((column) => ({ column, lower: 1, upper: 1 }))),
    );
    upper[other] = 0;
    expect(follow(dish, 1, 1)).toBeUndefined();
  });
});
