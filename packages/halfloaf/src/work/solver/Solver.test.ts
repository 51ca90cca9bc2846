import fc from "fast-check";
import { expect, test } from "vitest";
import { ConstraintModel } from "./ConstraintModel.ts";
import { holds, leastByTrying, randomModel } from "./randomModel.testing.ts";
import { Solver } from "./Solver.ts";

const never = () => false;

test("the least value is that of trying everything, and the solution keeps every rule", () => {
  fc.assert(
    fc.property(randomModel, fc.boolean(), (model, isBackward) => {
      const solver = new Solver(model, { schedule: [1, 2, 3], isBackward, shouldStop: never });
      let found: number | undefined;
      const end = solver.minimise(1, (values) => {
        expect(holds(model, values)).toBe(true);
        found = values[1];
      });
      expect(found).toBe(leastByTrying(model, 1));
      expect(end).toBe(found === undefined ? "infeasible" : "solved");
    }),
    { numRuns: 2000 },
  );
});

/** n pigeons on n - 1 perches, for which clauses alone need very many conflicts. */
function pigeons(n: number, isEnergetic: boolean): ConstraintModel {
  const model = new ConstraintModel();
  const starts = Array.from({ length: n }, () => model.addVariable(0, 3 * (n - 1) - 3));
  for (const [k, a] of starts.entries()) {
    for (const b of starts.slice(k + 1)) {
      const isFirst = model.addSwitch();
      model.addEdge(a, b, 3, isFirst);
      model.addEdge(b, a, 3, isFirst ^ 0x1ffff);
    }
  }
  if (isEnergetic)
    model.addEnergyLimit(
      1,
      starts.map((start) => ({ start, minutes: 3, demand: 1, when: 32767 })),
    );
  return model;
}

test("a window asked for too much is seen without search", () => {
  const solver = new Solver(pigeons(8, true), { schedule: [], shouldStop: never });
  expect(solver.search()).toBe("infeasible");
  expect(solver.conflicts).toBeLessThanOrEqual(1);
});

test("many conflicts, restarts and forgotten clauses end in the same proof", () => {
  const solver = new Solver(pigeons(7, false), { schedule: [1, 2, 3, 4, 5, 6, 7], shouldStop: never });
  expect(solver.search()).toBe("infeasible");
  expect(solver.conflicts).toBeGreaterThan(500);
});

test("a stopped search says so and can be taken up again", () => {
  let isStopped = true;
  const solver = new Solver(pigeons(7, false), { schedule: [], shouldStop: () => isStopped });
  expect(solver.search()).toBe("stopped");
  isStopped = false;
  expect(solver.search()).toBe("infeasible");
});
