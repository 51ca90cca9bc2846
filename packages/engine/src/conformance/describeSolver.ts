import type { LinearColumn, LinearModel, LinearOutcome, LinearRow, SolveLinear } from "halfloaf/menu/linear";
import { describe, expect, test } from "vitest";

const NONE = Number.POSITIVE_INFINITY;

function column(name: string, cost: number, lower = 0, upper = NONE, integer = false): LinearColumn {
  return integer ? { name, cost, lower, upper, integer } : { name, cost, lower, upper };
}

function row(name: string, lower: number, upper: number, entries: Record<string, number>): LinearRow {
  return { name, lower, upper, entries: Object.entries(entries) };
}

function model(columns: LinearColumn[], rows: LinearRow[]): LinearModel {
  return { sense: "min", columns, rows };
}

type Optimal = Extract<LinearOutcome, { status: "optimal" }>;

/** What every solver behind the port has to do; each test names the rule. Call it from a test file of the solver. */
export function describeSolver(name: string, solve: SolveLinear): void {
  const solveToOptimum = async (of: LinearModel): Promise<Optimal> => {
    const outcome = await solve(of);
    expect(outcome.status).toBe("optimal");
    return outcome as Optimal;
  };

  describe(`${name} as a solver of linear models`, () => {
    describeContinuous(solve, solveToOptimum);
    describeInteger(solve, solveToOptimum);
  });
}

function describeContinuous(solve: SolveLinear, solveToOptimum: (of: LinearModel) => Promise<Optimal>): void {
  test("finds the cheapest vertex and prices its rows", async () => {
    // 2x + 3y with x + y >= 4 and x + 3y >= 6: both bind at (3, 1), prices 3/2 and 1/2.
    const rows = [row("a", 4, NONE, { x: 1, y: 1 }), row("b", 6, NONE, { x: 1, y: 3 })];
    const { objective, values, rowDuals } = await solveToOptimum(model([column("x", 2), column("y", 3)], rows));
    expect(objective).toBeCloseTo(9, 9);
    expect([values.get("x"), values.get("y")]).toEqual([expect.closeTo(3, 9), expect.closeTo(1, 9)]);
    expect(rowDuals?.get("a")).toBeCloseTo(1.5, 9);
    expect(rowDuals?.get("b")).toBeCloseTo(0.5, 9);
  });

  test("the price of an upper row limit is negative where more room would save money", async () => {
    const { rowDuals } = await solveToOptimum(model([column("x", -5)], [row("room", -NONE, 3, { x: 2 })]));
    expect(rowDuals?.get("room")).toBeCloseTo(-2.5, 9);
  });

  test("columns may have negative, two-sided, fixed and no bounds", async () => {
    const columns = [
      column("low", 1, -3, NONE),
      column("box", -1, 2, 5),
      column("fixed", 7, 4, 4),
      column("free", 0, -NONE, NONE),
    ];
    const { objective, values } = await solveToOptimum(model(columns, [row("tie", 0, 0, { free: 1, box: -1 })]));
    expect(objective).toBeCloseTo(-3 - 5 + 28, 9);
    expect(values.get("free")).toBeCloseTo(5, 9);
  });

  test("two-sided rows hold on both sides", async () => {
    const rows = [row("band", 2, 3, { x: 1 })];
    expect((await solveToOptimum(model([column("x", 1)], rows))).objective).toBeCloseTo(2, 9);
    expect((await solveToOptimum(model([column("x", -1)], rows))).objective).toBeCloseTo(-3, 9);
  });

  test("says that limits contradict each other", async () => {
    const rows = [row("more", 3, NONE, { x: 1 }), row("less", -NONE, 2, { x: 1 })];
    expect(await solve(model([column("x", 1)], rows))).toEqual({ status: "impossible" });
  });

  test("says that an objective has no end", async () => {
    expect(await solve(model([column("x", -1)], [row("r", 1, NONE, { x: 1 })]))).toEqual({ status: "unbounded" });
  });

  test("a column named in no row goes to its cheaper bound", async () => {
    const columns = [column("x", 1, 0, 9), column("idle", -2, 0, 3)];
    expect((await solveToOptimum(model(columns, [row("r", 1, NONE, { x: 1 })]))).objective).toBeCloseTo(-5, 9);
  });
}

function describeInteger(solve: SolveLinear, solveToOptimum: (of: LinearModel) => Promise<Optimal>): void {
  const packs = [column("small", 70, 0, 9, true), column("large", 120, 0, 9, true)];

  test("whole-number columns come back as exact whole numbers, without prices of rows", async () => {
    const outcome = await solveToOptimum(model(packs, [row("need", 1300, NONE, { small: 500, large: 1000 })]));
    expect(Object.fromEntries(outcome.values)).toEqual({ small: 1, large: 1 });
    expect(outcome.objective).toBeCloseTo(190, 9);
    expect(outcome.rowDuals).toBeUndefined();
  });

  test("whole and broken columns mix", async () => {
    const columns = [column("pack", 10, 0, 9, true), column("loose", 3)];
    const { objective, values } = await solveToOptimum(model(columns, [row("need", 9, NONE, { pack: 4, loose: 1 })]));
    expect(objective).toBeCloseTo(23, 9);
    expect(values.get("pack")).toBe(2);
    expect(values.get("loose")).toBeCloseTo(1, 9);
  });

  test("says that no whole number fits", async () => {
    expect(await solve(model([column("x", 1, 0, 9, true)], [row("r", 1, 1, { x: 2 })]))).toEqual({
      status: "impossible",
    });
  });

  test("a faulty model is failed with its reason", async () => {
    const outcome = await solve(model([column("x", 1), column("x", 2)], []));
    expect(outcome).toMatchObject({ status: "failed", reason: expect.stringContaining('"x"') });
  });
}
