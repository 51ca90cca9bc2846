import fc from "fast-check";
import { expect, test } from "vitest";
import { isValid, randomProject, shortestByTrying } from "./randomProject.testing.ts";
import { solveProject } from "./solveProject.ts";

const options = { seed: 1, shouldStop: () => false };

for (const isPlain of [true, false]) {
  test(`four jobs, ${isPlain ? "precedence only" : "maximal lags"}: the length is that of trying everything`, () => {
    fc.assert(
      fc.property(randomProject(4, isPlain), (project) => {
        const outcome = solveProject(project, options);
        const length = outcome.kind === "optimal" ? outcome.schedule.length : undefined;
        if (outcome.kind === "optimal") expect(isValid(project, outcome.schedule.start)).toBe(true);
        expect(length).toBe(shortestByTrying(project, 16));
      }),
      { numRuns: 150 },
    );
  });
}

test("stopped early, the bound never exceeds the length, and both hold the shortest between them", () => {
  fc.assert(
    fc.property(randomProject(9, true), fc.nat(6), (project, patience) => {
      let asked = 0;
      const early = solveProject(project, { seed: 1, shouldStop: () => ++asked > patience });
      const full = solveProject(project, options);
      if (full.kind !== "optimal") throw new Error("A plain project has a schedule");
      if (early.kind !== "feasible" && early.kind !== "optimal") throw new Error("There is always a first schedule");
      expect(isValid(project, early.schedule.start)).toBe(true);
      const bound = early.kind === "feasible" ? early.bound : early.schedule.length;
      expect(bound).toBeLessThanOrEqual(full.schedule.length);
      expect(full.schedule.length).toBeLessThanOrEqual(early.schedule.length);
    }),
    { numRuns: 100 },
  );
});

test("the same seed gives the same schedule", () => {
  fc.assert(
    fc.property(randomProject(12, false), (project) => {
      expect(solveProject(project, options)).toEqual(solveProject(project, options));
    }),
    { numRuns: 30 },
  );
});

test("a job that asks for more than there is has no schedule", () => {
  const project = {
    minutes: [0, 2, 0],
    lags: [{ from: 1, to: 2, lag: 2 }],
    resources: [{ capacity: 1, demands: [0, 2, 0] }],
  };
  expect(solveProject(project, options).kind).toBe("impossible");
});
