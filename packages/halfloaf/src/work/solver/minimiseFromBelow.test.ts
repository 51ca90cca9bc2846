import fc from "fast-check";
import { expect, test } from "vitest";
import { ConstraintModel } from "./ConstraintModel.ts";
import { minimiseFromBelow } from "./minimiseFromBelow.ts";
import { holds, leastByTrying, randomModel } from "./randomModel.testing.ts";
import { Solver } from "./Solver.ts";

test("from below, too, the least value is that of trying everything", () => {
  fc.assert(
    fc.property(
      randomModel,
      fc.boolean(),
      fc.constantFrom(1, 3, Number.POSITIVE_INFINITY),
      (model, isBackward, patience) => {
        const least = leastByTrying(model, 1);
        fc.pre(least !== undefined);
        const solver = new Solver(model, { schedule: [1, 2, 3], isBackward, shouldStop: () => false });
        let found = (model.highs[1] as number) + 1;
        const onSolution = (values: Int32Array) => {
          expect(holds(model, values)).toBe(true);
          expect(values[1]).toBeLessThan(found);
          found = values[1] as number;
        };
        expect(minimiseFromBelow(solver, 1, { known: found, patience, onSolution })).toBe("solved");
        expect(found).toBe(least);
      },
    ),
    { numRuns: 2000 },
  );
});

/** Jobs of 3 minutes one after the other, and the end of the last. */
function row(jobs: number): { model: ConstraintModel; end: number } {
  const model = new ConstraintModel();
  const end = model.addVariable(0, 100);
  const starts = Array.from({ length: jobs }, () => model.addVariable(0, 100));
  for (const [k, a] of starts.entries()) {
    model.addEdge(a, end, 3);
    for (const b of starts.slice(k + 1)) {
      const isFirst = model.addSwitch();
      model.addEdge(a, b, 3, isFirst);
      model.addEdge(b, a, 3, isFirst ^ 0x1ffff);
    }
  }
  return { model, end };
}

test("a question that takes too many conflicts is left open, and the answer stays the same", () => {
  for (const patience of [1, 5, 40, Number.POSITIVE_INFINITY]) {
    const { model, end } = row(6);
    const solver = new Solver(model, { schedule: [2, 3, 4, 5, 6, 7], shouldStop: () => false });
    let found = 101;
    const onSolution = (values: Int32Array) => {
      found = values[end] as number;
    };
    expect(minimiseFromBelow(solver, end, { known: found, patience, onSolution })).toBe("solved");
    expect(found).toBe(18);
  }
});

test("stopped, the lower bound is what was proven by then", () => {
  const { model, end } = row(7);
  let asked = 0;
  const solver = new Solver(model, { schedule: [2, 3, 4, 5, 6, 7, 8], shouldStop: () => ++asked > 3 });
  const options = { known: 101, patience: Number.POSITIVE_INFINITY, onSolution: () => {} };
  expect(minimiseFromBelow(solver, end, options)).toBe("stopped");
  expect(solver.trail.low(end)).toBeLessThanOrEqual(21);
  expect(solver.trail.low(end)).toBeGreaterThan(0);
});
