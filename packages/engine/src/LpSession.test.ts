import fc from "fast-check";
import type { LinearModel } from "halfloaf/menu/linear";
import { describe, expect, test } from "vitest";
import { LpSession } from "./LpSession.ts";
import { loadSolver } from "./loadSolver.ts";

const COLUMNS = 12;
const ROWS = 8;

/** Needs that columns cover at a price, each column at most once. */
const covering: fc.Arbitrary<LinearModel> = fc
  .record({
    costs: fc.array(fc.integer({ min: 1, max: 99 }), { minLength: COLUMNS, maxLength: COLUMNS }),
    times: fc.array(fc.nat(9), { minLength: COLUMNS * ROWS, maxLength: COLUMNS * ROWS }),
    needs: fc.array(fc.integer({ min: 1, max: 20 }), { minLength: ROWS, maxLength: ROWS }),
  })
  .map(({ costs, times, needs }) => ({
    sense: "min",
    columns: costs.map((cost, at) => ({ name: `c${at}`, cost, lower: 0, upper: 1 })),
    rows: needs.map((need, row) => ({
      name: `need ${row}`,
      lower: need,
      upper: Number.POSITIVE_INFINITY,
      entries: costs.map((_, at) => [`c${at}`, times[row * COLUMNS + at] as number] as const),
    })),
  }));

const someColumns = fc.uniqueArray(fc.nat(COLUMNS - 1), { minLength: 1, maxLength: 9 });

describe("a solve from where the last one ended", () => {
  test("comes to what one from nothing comes to, and finds the same models without any point", async () => {
    const highs = await loadSolver();
    let impossible = 0;
    fc.assert(
      fc.property(covering, someColumns, (model, left) => {
        const warm = new LpSession(highs, model);
        const columns = model.columns.map((column, at) => (left.includes(at) ? { ...column, upper: 0 } : column));
        const cold = new LpSession(highs, { ...model, columns });
        try {
          warm.solve();
          warm.keepWarm();
          for (const column of left) warm.setBounds(column, 0, 0);
          const { status, bound } = warm.solve();
          const fresh = cold.solve();
          if (fresh.status === "impossible") impossible++;
          expect(status).toBe(fresh.status);
          if (status === "optimal") expect(bound).toBeCloseTo(fresh.bound, 6);
        } finally {
          warm.dispose();
          cold.dispose();
        }
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(impossible).toBeGreaterThan(0);
  });
});

describe("a solve that may stop once enough is proven", () => {
  test("proves no more than the optimum, and gets there when it goes on from where it stopped", async () => {
    const highs = await loadSolver();
    let stopped = 0;
    fc.assert(
      fc.property(covering, someColumns, fc.double({ min: 0, max: 1, noNaN: true }), (model, left, share) => {
        const session = new LpSession(highs, model);
        try {
          const wide = session.solve();
          session.keepWarm();
          const basis = session.readBasis();
          for (const column of left) session.setBounds(column, 0, 0);
          const whole = session.solve();
          if (wide.status !== "optimal" || whole.status !== "optimal") return;
          session.useBasis(basis);
          const enough = wide.bound + share * (whole.bound - wide.bound);
          const part = session.solve({ enough });
          expect(part.bound).toBeLessThanOrEqual(whole.bound + 1e-6);
          if (part.status === "cut-off") {
            stopped++;
            // What it stopped for is proven, but for the rounding of sums.
            expect(part.bound).toBeGreaterThanOrEqual(enough - 1e-6);
          }
          session.useBasis(session.readBasis());
          expect(session.solve()).toMatchObject({ status: "optimal", bound: expect.closeTo(whole.bound, 6) });
        } finally {
          session.dispose();
        }
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect(stopped).toBeGreaterThan(2);
  });
});
