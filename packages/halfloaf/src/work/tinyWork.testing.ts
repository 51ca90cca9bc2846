import fc from "fast-check";
import { checkWork, findExcesses } from "./check/index.ts";
import type { WorkMeasures, WorkPlan } from "./plan.ts";
import type { WorkProblem, WorkStep } from "./problem.ts";

const hold = fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined });

function stepArb(id: string, dish: number): fc.Arbitrary<WorkStep> {
  return fc
    .record({
      minutes: fc.integer({ min: 1, max: 2 }),
      hands: fc.constantFrom(0 as const, 1 as const, 2 as const),
      board: fc.constantFrom(undefined, "raw" as const, "ready" as const),
      tempC: fc.constantFrom(undefined, undefined, 40, 60),
      earliest: fc.constantFrom(undefined, undefined, undefined, 1),
      latest: fc.constantFrom(undefined, undefined, undefined, undefined, 3),
    })
    .map(({ minutes, hands, board, tempC, earliest, latest }) => ({
      id,
      dish,
      minutes,
      hands,
      ...(board && hands === 2 ? { board } : {}),
      ...(tempC && hands === 0 ? { oven: { tempC, shelves: 1 } } : {}),
      ...(earliest === undefined ? {} : { earliestMinutes: earliest }),
      ...(latest === undefined ? {} : { latestMinutes: latest }),
    }));
}

/** Meals of three steps in two dishes, with every kind of rule now and then. */
export const tinyWork: fc.Arbitrary<WorkProblem> = fc
  .record({
    cooks: fc.constantFrom(1 as const, 1 as const, 2 as const),
    steps: fc.tuple(stepArb("a", 0), stepArb("b", 0), stepArb("c", 1)),
    wait: fc.record({
      least: fc.integer({ min: 0, max: 1 }),
      most: hold,
      isFirm: fc.boolean(),
      weight: fc.integer({ min: 0, max: 2 }),
    }),
    holds: fc.tuple(hold, hold),
    isFirm: fc.boolean(),
    kit: fc.constantFrom(undefined, 0, 1),
    boards: fc.integer({ min: 1, max: 2 }),
    shelves: fc.integer({ min: 1, max: 2 }),
  })
  .map(({ cooks, steps, wait, holds, isFirm, kit, boards, shelves }) => ({
    cooks,
    steps,
    waits: [
      {
        from: 0,
        to: 1,
        leastMinutes: wait.least,
        weight: wait.weight,
        ...(wait.most === undefined ? {} : { mostMinutes: wait.most + wait.least, isFirm: wait.isFirm }),
      },
    ],
    dishes: [
      { id: "x", last: 1, holdWeight: 1, isFirm, ...(holds[0] === undefined ? {} : { holdMinutes: holds[0] }) },
      { id: "y", last: 2, holdWeight: 2, ...(holds[1] === undefined ? {} : { holdMinutes: holds[1] }) },
    ],
    kit: [{ id: "pan", count: 1, ...(kit === undefined ? {} : { washMinutes: kit }) }],
    uses: [
      { kind: 0, from: 0, to: 1 },
      { kind: 0, from: 2, to: 2 },
    ],
    oven: { shelves, roomC: 20, warmCPerMinute: 40, coolCPerMinute: 20 },
    board: { count: boards, washMinutes: 1, washWeight: 2 },
  }));

/**
 * The best measures, by trying every start and every wash up to a horizon, with the checker as the only judge. Washes are
 * not tried for starts that break without any what washes cannot mend.
 */
export function bestByTrying(problem: WorkProblem, horizon: number): WorkMeasures | undefined {
  let best: WorkMeasures | undefined;
  for (const unwashed of startsWithin(problem, horizon)) {
    const { faults: found } = checkWork(problem, unwashed, findExcesses(problem, unwashed));
    if (found.some(({ code }) => !MENDED_BY_WASHES.has(code))) continue;
    for (const plan of washesOf(problem, unwashed, horizon)) {
      const { faults, measures } = checkWork(problem, plan, findExcesses(problem, plan));
      if (faults.length === 0 && measures && (!best || isBetter(measures, best))) best = measures;
    }
  }
  return best;
}

/** A wash only ever takes hands, time and places from what else there is. */
const MENDED_BY_WASHES: ReadonlySet<string> = new Set(["hygiene", "unwashed"]);

function isBetter(a: WorkMeasures, b: WorkMeasures): boolean {
  const of = (m: WorkMeasures) => [m.excessMinutes, m.serveMinutes, m.keeping, m.turns];
  const [left, right] = [of(a), of(b)];
  const at = left.findIndex((value, k) => value !== right[k]);
  return at >= 0 && (left[at] as number) < (right[at] as number);
}

function* startsWithin(problem: WorkProblem, horizon: number): Generator<WorkPlan> {
  const times = Array.from({ length: horizon + 1 }, (_, t) => t);
  for (const a of times) {
    for (const b of times) {
      for (const c of times) {
        const starts = [a, b, c];
        const serveMinutes = Math.max(...starts.map((start, i) => start + (problem.steps[i]?.minutes as number)));
        if (serveMinutes > horizon || a + (problem.steps[0]?.minutes as number) > b) continue;
        yield { starts, serveMinutes, boardWashes: [], kitWashes: [] };
      }
    }
  }
}

function* washesOf(problem: WorkProblem, unwashed: WorkPlan, horizon: number): Generator<WorkPlan> {
  const times = Array.from({ length: horizon + 1 }, (_, t) => t);
  const isCut =
    problem.steps.some(({ board }) => board === "raw") && problem.steps.some(({ board }) => board === "ready");
  const boardWashes = [[], ...(isCut && problem.board?.count === 1 ? times.map((t) => [t]) : [])];
  const isWashed = problem.kit[0]?.washMinutes !== undefined;
  const kitWashes = isWashed ? [0, 1].flatMap((use) => times.map((startMinutes) => [{ use, startMinutes }])) : [[]];
  for (const board of boardWashes)
    for (const kit of kitWashes) yield { ...unwashed, boardWashes: board, kitWashes: kit };
}
