import fc from "fast-check";
import { buildWeeklyModel } from "halfloaf/menu/bound";
import { arbitraryWeek } from "halfloaf/menu/bound/testing";
import type { LinearModel, LinearOutcome } from "halfloaf/menu/linear";
import { describe, expect, test } from "vitest";
import { solveLinear } from "../solveLinear.ts";
import { describeSolver } from "./describeSolver.ts";
import { solveWithGlpk } from "./solveWithGlpk.testing.ts";

describeSolver("HiGHS", (model) => solveLinear(model));
describeSolver("GLPK", (model) => solveWithGlpk(model));

function relax(model: LinearModel): LinearModel {
  return { ...model, columns: model.columns.map(({ integer: _, ...column }) => column) };
}

function expectSame(one: LinearOutcome, other: LinearOutcome): void {
  expect(other.status).toBe(one.status);
  if (one.status !== "optimal" || other.status !== "optimal") return;
  expect(Math.abs(one.objective - other.objective)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(one.objective)));
}

describe("two solvers agree", () => {
  test("on the weekly model of random small weeks, relaxed to fractions", async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryWeek(), async (problem) => {
        const { model, lazyRows } = buildWeeklyModel(problem);
        const relaxed = relax({ ...model, rows: [...model.rows, ...lazyRows] });
        expectSame(await solveLinear(relaxed), await solveWithGlpk(relaxed));
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test("on the weekly model of random small weeks, in whole numbers", async () => {
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(arbitraryWeek(), async (problem) => {
        const { model } = buildWeeklyModel(problem);
        const [one, other] = [await solveLinear(model, { timeS: 10 }), await solveWithGlpk(model, 10)];
        // A week without any menu gives no model to solve; and the second solver aborts on some.
        if (one.status === "failed" || other.status === "failed") return;
        compared++;
        expectSame(one, other);
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect(compared).toBeGreaterThanOrEqual(4);
  });
});
