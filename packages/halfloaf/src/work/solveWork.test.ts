import fc from "fast-check";
import { expect, test } from "vitest";
import { checkWork } from "./check/index.ts";
import type { WorkProblem } from "./problem.ts";
import { solveWork } from "./solveWork.ts";
import { bestByTrying, tinyWork } from "./tinyWork.testing.ts";

const options = { shouldStop: () => false };

test("a tiny meal is as good in every stage as trying everything makes it", () => {
  fc.assert(
    fc.property(tinyWork, (problem) => {
      const outcome = solveWork(problem, options);
      const best = bestByTrying(problem, 11);
      if (outcome.kind !== "optimal") {
        expect(outcome.kind).toBe("impossible");
        expect(best).toBeUndefined();
        return;
      }
      const { faults, measures } = checkWork(problem, outcome.plan, outcome.excesses);
      expect(faults).toEqual([]);
      expect(outcome.measures).toEqual(measures);
      expect(outcome.measures).toEqual(best);
    }),
    { numRuns: 60 },
  );
});

/** Two dishes that both need the cook at the end, for so many minutes, and can hardly wait. */
function colliding(isFirm: boolean): WorkProblem {
  return {
    cooks: 1,
    steps: [
      { id: "fry", dish: 0, minutes: 5, hands: 2 },
      { id: "slice", dish: 1, minutes: 7, hands: 2 },
    ],
    dishes: [
      { id: "fritters", last: 0, holdMinutes: 2, holdWeight: 1, isFirm },
      { id: "greens", last: 1, holdMinutes: 1, holdWeight: 1, isFirm },
    ],
    waits: [],
    kit: [],
    uses: [],
  };
}

test("holds that collide are gone beyond as little as can be, and the dish is named", () => {
  const outcome = solveWork(colliding(false), options);
  expect(outcome).toMatchObject({ kind: "optimal", measures: { excessMinutes: 4, serveMinutes: 12 } });
  expect(outcome.kind === "optimal" && outcome.excesses).toEqual([{ dish: 1, minutes: 4 }]);
});

test("firm holds that collide are impossible, and only the rules that matter are named", () => {
  const problem = colliding(true);
  const idle = { id: "soup", last: 2, holdMinutes: 5, holdWeight: 1, isFirm: true };
  const larger = {
    ...problem,
    steps: [...problem.steps, { id: "simmer", dish: 2, minutes: 9, hands: 0 as const }],
    dishes: [...problem.dishes, idle],
  };
  const outcome = solveWork(larger, options);
  expect(outcome).toEqual({ kind: "impossible", conflict: { rules: ["hands", "dish 0", "dish 1"], isLeast: true } });
});

test("two things under an eye go on beside each other; work with both hands waits for an eye to be free", () => {
  const serveOf = (hands: 1 | 2, cooks: 1 | 2) => {
    const problem: WorkProblem = {
      cooks,
      steps: [
        { id: "simmer", dish: 0, minutes: 6, hands: 1 },
        { id: "other", dish: 1, minutes: 4, hands },
      ],
      dishes: [
        { id: "stew", last: 0, holdWeight: 1 },
        { id: "side", last: 1, holdWeight: 1 },
      ],
      waits: [],
      kit: [],
      uses: [],
    };
    const outcome = solveWork(problem, options);
    return outcome.kind === "optimal" ? outcome.measures.serveMinutes : undefined;
  };
  expect([serveOf(1, 1), serveOf(2, 1), serveOf(2, 2)]).toEqual([6, 10, 6]);
});

test("with a second cook the same holds are kept", () => {
  const outcome = solveWork({ ...colliding(false), cooks: 2 }, options);
  expect(outcome).toMatchObject({ kind: "optimal", measures: { excessMinutes: 0, serveMinutes: 7, turns: 0 } });
});

test("a step that has begun keeps its start, and the rest is timed around it", () => {
  const problem = colliding(false);
  const [fry, slice] = problem.steps as [WorkProblem["steps"][number], WorkProblem["steps"][number]];
  const begun = { ...slice, earliestMinutes: 3, latestMinutes: 3 };
  const outcome = solveWork({ ...problem, steps: [fry, begun] }, options);
  expect(outcome.kind === "optimal" && outcome.plan.starts[1]).toBe(3);
});

test("stopped at any moment, what is given keeps the rules and its bound is not above its value", () => {
  fc.assert(
    fc.property(tinyWork, fc.nat(4), (problem, patience) => {
      let asked = 0;
      const outcome = solveWork(problem, { shouldStop: () => ++asked > patience });
      if (outcome.kind !== "feasible") return;
      const { faults, measures } = checkWork(problem, outcome.plan, outcome.excesses);
      expect(faults).toEqual([]);
      const { stage, value } = outcome.open;
      const measured = { excess: "excessMinutes", serve: "serveMinutes", keeping: "keeping", turns: "turns" } as const;
      expect(value).toBe(measures?.[measured[stage]]);
      expect(outcome.open.bound).toBeLessThanOrEqual(outcome.open.value);
    }),
    { numRuns: 300 },
  );
});

test("until a stage, what comes before the open one is as good as all stages make it", () => {
  const stages = ["excess", "serve", "keeping"] as const;
  fc.assert(
    fc.property(tinyWork, fc.constantFrom(...stages), (problem, until) => {
      const whole = solveWork(problem, options);
      const part = solveWork(problem, { ...options, until });
      if (whole.kind !== "optimal") {
        expect(part).toEqual(whole);
        return;
      }
      const open = part.kind === "feasible" ? part.open : undefined;
      const isStrict = whole.measures.excessMinutes === 0;
      const next = { excess: isStrict ? "keeping" : "serve", serve: "keeping", keeping: "turns" }[until];
      expect(open).toMatchObject({ stage: next, bound: 0 });
      const { measures } = checkWork(problem, part.kind === "feasible" ? part.plan : whole.plan);
      const order = ["excessMinutes", "serveMinutes", "keeping", "turns"] as const;
      const settled = order.slice(0, ["excess", "serve", "keeping", "turns"].indexOf(next));
      for (const measure of settled) expect(measures?.[measure]).toBe(whole.measures[measure]);
    }),
    { numRuns: 100 },
  );
});

test("the last stage as the limit is no limit", () => {
  const outcome = solveWork(colliding(false), { ...options, until: "turns" });
  expect(outcome).toEqual(solveWork(colliding(false), options));
});

test("the same meal gives the same order of work", () => {
  fc.assert(
    fc.property(tinyWork, (problem) => {
      expect(solveWork(problem, options)).toEqual(solveWork(problem, options));
    }),
    { numRuns: 50 },
  );
});
