import fc from "fast-check";
import type { LinearModel, LinearOutcome } from "halfloaf/menu/linear";
import { describe, expect, test } from "vitest";
import { solveLinear } from "./solveLinear.ts";

/** Cheapest bread and beans for 60 g of protein and 8 MJ: 2 x + 3 y with two binding rows. */
const twoFoods: LinearModel = {
  sense: "min",
  columns: [
    { name: "bread", cost: 2, lower: 0, upper: Number.POSITIVE_INFINITY },
    { name: "beans", cost: 3, lower: 0, upper: Number.POSITIVE_INFINITY },
  ],
  rows: [
    {
      name: "protein",
      lower: 60,
      upper: Number.POSITIVE_INFINITY,
      entries: [
        ["bread", 8],
        ["beans", 24],
      ],
    },
    {
      name: "energy",
      lower: 8,
      upper: Number.POSITIVE_INFINITY,
      entries: [
        ["bread", 1],
        ["beans", 0.5],
      ],
    },
  ],
};

function expectOptimal(outcome: LinearOutcome): asserts outcome is Extract<LinearOutcome, { status: "optimal" }> {
  expect(outcome).toMatchObject({ status: "optimal" });
}

describe("a continuous model", () => {
  test("gives values, objective and duals by name; duals times their bounds are the optimum", async () => {
    const outcome = await solveLinear(twoFoods);
    expectOptimal(outcome);
    // By hand: 8x + 24y = 60 and x + y/2 = 8 cross at y = -0.2, so energy alone binds: x = 8, protein 64 > 60.
    expect(outcome.values.get("bread")).toBeCloseTo(8, 9);
    expect(outcome.values.get("beans")).toBeCloseTo(0, 9);
    expect(outcome.objective).toBeCloseTo(16, 9);
    expect(outcome.rowDuals?.get("energy")).toBeCloseTo(2, 9);
    expect(outcome.rowDuals?.get("protein")).toBeCloseTo(0, 9);
  });

  test("limits that cannot all hold are impossible", async () => {
    const rows = [
      ...twoFoods.rows,
      {
        name: "cap",
        lower: 0,
        upper: 1,
        entries: [
          ["bread", 1],
          ["beans", 1],
        ],
      } as const,
    ];
    expect(await solveLinear({ ...twoFoods, rows })).toEqual({ status: "impossible" });
  });

  test("a bound above its upper bound is impossible", async () => {
    const columns = [{ name: "x", cost: 1, lower: 2, upper: 1 }];
    expect(await solveLinear({ sense: "min", columns, rows: [] })).toEqual({ status: "impossible" });
    const row = { name: "r", lower: 2, upper: 1, entries: [["x", 1]] } as const;
    const sound = [{ name: "x", cost: 1, lower: 0, upper: 5 }];
    expect(await solveLinear({ sense: "min", columns: sound, rows: [row] })).toEqual({ status: "impossible" });
  });

  test("an objective without end is unbounded, also where presolve cannot tell", async () => {
    const free = { cost: -1, lower: 0, upper: Number.POSITIVE_INFINITY };
    const columns = [
      { name: "x", ...free },
      { name: "y", ...free },
    ];
    const rows = [
      {
        name: "r",
        lower: -1,
        upper: 1,
        entries: [
          ["x", 1],
          ["y", -1],
        ],
      } as const,
    ];
    expect(await solveLinear({ sense: "min", columns, rows })).toEqual({ status: "unbounded" });
  });
});

describe("a model with whole-number columns", () => {
  test("gives exact whole numbers and no duals", async () => {
    const packs: LinearModel = {
      sense: "min",
      columns: [
        { name: "small", cost: 70, lower: 0, upper: 9, integer: true },
        { name: "large", cost: 120, lower: 0, upper: 9, integer: true },
      ],
      rows: [
        {
          name: "need",
          lower: 1300,
          upper: Number.POSITIVE_INFINITY,
          entries: [
            ["small", 500],
            ["large", 1000],
          ],
        },
      ],
    };
    const outcome = await solveLinear(packs);
    expectOptimal(outcome);
    expect(Object.fromEntries(outcome.values)).toEqual({ small: 1, large: 1 });
    expect(outcome.objective).toBeCloseTo(190, 9);
    expect(outcome.rowDuals).toBeUndefined();
  });

  test("agrees with trying every whole number on tiny models", async () => {
    const small = fc.integer({ min: -4, max: 4 });
    const tiny = fc.record({
      costs: fc.tuple(small, small, small),
      rows: fc.array(
        fc.record({ a: fc.tuple(small, small, small), lower: fc.integer({ min: -6, max: 8 }), span: fc.nat(6) }),
        {
          maxLength: 3,
        },
      ),
    });
    await fc.assert(
      fc.asyncProperty(tiny, async ({ costs, rows }) => {
        const names = ["x", "y", "z"];
        const model: LinearModel = {
          sense: "min",
          columns: names.map((name, at) => ({ name, cost: costs[at] as number, lower: 0, upper: 3, integer: true })),
          rows: rows.map(({ a, lower, span }, at) => ({
            name: `r${at}`,
            lower,
            upper: lower + span,
            entries: names.map((name, i) => [name, a[i] as number] as const),
          })),
        };
        const best = tryEveryPoint(costs, rows);
        const outcome = await solveLinear(model);
        if (best === undefined) {
          expect(outcome.status).toBe("impossible");
        } else {
          expectOptimal(outcome);
          expect(outcome.objective).toBeCloseTo(best, 6);
        }
      }),
      { numRuns: 60 },
    );
  });
});

function tryEveryPoint(costs: number[], rows: { a: number[]; lower: number; span: number }[]): number | undefined {
  let best: number | undefined;
  for (let at = 0; at < 64; at++) {
    const point = [at % 4, Math.floor(at / 4) % 4, Math.floor(at / 16)];
    const dot = (a: number[]) => a.reduce((sum, factor, i) => sum + factor * (point[i] as number), 0);
    const holds = rows.every(({ a, lower, span }) => dot(a) >= lower && dot(a) <= lower + span);
    if (holds && (best === undefined || dot(costs) < best)) best = dot(costs);
  }
  return best;
}

describe("a model that is no model", () => {
  const column = { name: "x", cost: 1, lower: 0, upper: 1 };
  const row = { name: "r", lower: 0, upper: 1, entries: [["x", 1]] } as const;
  test.each<[string, LinearModel, string]>([
    ["two columns of one name", { sense: "min", columns: [column, column], rows: [] }, 'column "x" is stated twice'],
    ["two rows of one name", { sense: "min", columns: [column], rows: [row, row] }, 'row "r" is stated twice'],
    [
      "an unknown column",
      { sense: "min", columns: [], rows: [row] },
      'row "r" names column "x", which the model does not have',
    ],
    [
      "a column twice in a row",
      {
        sense: "min",
        columns: [column],
        rows: [
          {
            ...row,
            entries: [
              ["x", 1],
              ["x", 2],
            ],
          },
        ],
      },
      'row "r" names column "x" twice',
    ],
    [
      "a cost that is no number",
      { sense: "min", columns: [{ ...column, cost: Number.NaN }], rows: [] },
      'column "x" costs NaN',
    ],
    [
      "a bound that is no number",
      { sense: "min", columns: [column], rows: [{ ...row, upper: Number.NaN }] },
      'row "r" has a bound',
    ],
  ])("%s is failed with its reason", async (_, model, reason) => {
    const outcome = await solveLinear(model);
    expect(outcome.status).toBe("failed");
    expect(outcome.status === "failed" && outcome.reason).toContain(reason);
  });

  test("no columns at all: the rows decide", async () => {
    expect(await solveLinear({ sense: "min", columns: [], rows: [] })).toMatchObject({
      status: "optimal",
      objective: 0,
    });
    const rows = [{ name: "r", lower: 1, upper: 2, entries: [] }];
    expect(await solveLinear({ sense: "min", columns: [], rows })).toEqual({ status: "impossible" });
  });
});

test("a thousand solves do not use the memory up", async () => {
  for (let at = 0; at < 1000; at++) expectOptimal(await solveLinear(twoFoods));
});

test("a time limit reached is failed, never a wrong optimum", async () => {
  // Splitting a market evenly over several products is out of reach of branching for this many outlets.
  const weight = (row: number, at: number) => ((at + 2) ** (row + 2) * 31 + at * 17) % 101;
  const columns = Array.from({ length: 40 }, (_, at) => ({
    name: `x${at}`,
    cost: 1,
    lower: 0,
    upper: 1,
    integer: true,
  }));
  const rows = Array.from({ length: 5 }, (_, row) => {
    const entries = columns.map(({ name }, at) => [name, weight(row, at)] as const);
    const half = Math.floor(entries.reduce((sum, [, each]) => sum + each, 0) / 2);
    return { name: `r${row}`, lower: half, upper: half, entries };
  });
  const outcome = await solveLinear({ sense: "min", columns, rows }, { timeS: 0.2 });
  expect(outcome).toEqual({ status: "failed", reason: "the solver stopped with status timeLimit" });
});
