import { expect, test } from "vitest";
import type { WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";
import { checkWork } from "./checkWork.ts";

// One dish with raw and ready cuts, a pan used twice, and two bakes at different temperatures.
const problem: WorkProblem = {
  cooks: 1,
  steps: [
    { id: "cut fish", dish: 0, minutes: 3, hands: 2, board: "raw" },
    { id: "cut herbs", dish: 1, minutes: 2, hands: 2, board: "ready" },
    { id: "bake fish", dish: 0, minutes: 10, hands: 0, oven: { tempC: 180, shelves: 1 } },
    { id: "bake roots", dish: 1, minutes: 10, hands: 0, oven: { tempC: 200, shelves: 1 } },
    { id: "fry", dish: 0, minutes: 4, hands: 1, latestMinutes: 40 },
    { id: "warm", dish: 1, minutes: 4, hands: 1, earliestMinutes: 10 },
  ],
  dishes: [
    { id: "fish", last: 2, holdMinutes: 30, holdWeight: 1 },
    { id: "roots", last: 3, holdMinutes: 10, holdWeight: 2, isFirm: true },
  ],
  waits: [{ from: 0, to: 2, leastMinutes: 1, mostMinutes: 20, weight: 1 }],
  kit: [{ id: "pan", count: 1, washMinutes: 2 }],
  uses: [
    { kind: 0, from: 4, to: 4 },
    { kind: 0, from: 5, to: 5 },
  ],
  oven: { shelves: 1, roomC: 20, warmCPerMinute: 20, coolCPerMinute: 10 },
  board: { count: 1, washMinutes: 3, washWeight: 10 },
};

const plan: WorkPlan = {
  starts: [0, 6, 8, 19, 8, 14],
  serveMinutes: 29,
  boardWashes: [3],
  kitWashes: [{ use: 1, startMinutes: 12 }],
};

const codesOf = (changed: Partial<WorkPlan>, more: Partial<WorkProblem> = {}) =>
  checkWork({ ...problem, ...more }, { ...plan, ...changed }).faults.map(({ code }) => code);
const withStart = (step: number, start: number) => ({
  starts: plan.starts.map((own, i) => (i === step ? start : own)),
});

test("a sound order of work has no fault, and its measures are counted from its times", () => {
  const { faults, measures } = checkWork(problem, plan);
  expect(faults).toEqual([]);
  // Keeping: fish waits 11 at 1, roots 0 at 2, the cut fish waits 5 at 1, one wash at 10.
  expect(measures).toEqual({ excessMinutes: 0, serveMinutes: 29, keeping: 26, turns: 1 });
});

test.each([
  ["shape", { starts: [0] }],
  ["shape", withStart(0, 0.5)],
  ["served", { serveMinutes: 28 }],
  ["wait-least", withStart(2, 3)],
  ["hygiene", { boardWashes: [] }],
  ["board", { boardWashes: [2] }],
  ["hands", withStart(4, 4)],
  ["latest", withStart(4, 41)],
  ["earliest", withStart(5, 9)],
  ["unwashed", { kitWashes: [] }],
  ["kit", { kitWashes: [{ use: 1, startMinutes: 10 }] }],
  ["oven", withStart(3, 18)],
  ["oven", withStart(2, 7)],
  ["shelves", withStart(3, 17)],
  ["hold", { serveMinutes: 40 }],
] as const)("the fault %s is found", (code, changed) => {
  expect(codesOf(changed)).toContain(code);
});

test("an excess that is said is no fault; a firm one, a greater one or another one is", () => {
  const late = { ...plan, serveMinutes: 49 };
  const faultsWith = (excesses: { dish: number; minutes: number }[], isFirm: boolean) =>
    checkWork({ ...problem, dishes: problem.dishes.map((dish) => ({ ...dish, isFirm })) }, late, excesses).faults.map(
      ({ path }) => path[1],
    );
  const both = [
    { dish: 0, minutes: 1 },
    { dish: 1, minutes: 10 },
  ];
  expect(faultsWith(both, false)).toEqual([]);
  expect(faultsWith(both, true)).toEqual([0, 1]);
  expect(
    faultsWith(
      [
        { dish: 0, minutes: 1 },
        { dish: 1, minutes: 9 },
      ],
      false,
    ),
  ).toEqual([1]);
});

test("an eye may be kept on two things, but on nothing while both hands are at work; a second cook has hands too", () => {
  const pair = (first: 1 | 2, cooks: 1 | 2): WorkProblem => ({
    cooks,
    steps: [
      { id: "simmer", dish: 0, minutes: 6, hands: 1 },
      { id: "other", dish: 0, minutes: 3, hands: first },
    ],
    dishes: [{ id: "dish", last: 0, holdWeight: 0 }],
    waits: [],
    kit: [],
    uses: [],
  });
  const beside: WorkPlan = { starts: [0, 2], serveMinutes: 6, boardWashes: [], kitWashes: [] };
  const faultsOf = (hands: 1 | 2, cooks: 1 | 2) => checkWork(pair(hands, cooks), beside).faults.map(({ code }) => code);
  expect([faultsOf(1, 1), faultsOf(2, 1), faultsOf(2, 2)]).toEqual([[], ["hands"], []]);
});

test("a bake without an oven is a fault", () => {
  const { oven: _, ...without } = problem;
  expect(checkWork(without, plan).faults.map(({ code }) => code)).toEqual(["oven", "oven"]);
});
