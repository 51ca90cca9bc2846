import fc from "fast-check";
import { expect, test } from "vitest";
import { makeStep, methods } from "../../dish/dish.testing.ts";
import { checkWork } from "../../work/check/index.ts";
import { dishOf, makeKit, stateWork, timesOf, timeWork, wishFor } from "./cooking.testing.ts";
import { solveCooking } from "./solveCooking.ts";
import { toWorkProblem } from "./toWorkProblem.ts";

test("steps scale with portions, in whole minutes rounded up, at the pace of the cook", () => {
  const dish = dishOf("one", [makeStep("cut", 0, { kind: "cut", minutes: { fixed: 1, perPortion: 0.75 } })]);
  const minutes = (portions: number, cut = 1) =>
    stateWork(wishFor([{ dish, portions }], { pace: { cut } })).problem.steps[0]?.minutes;
  expect([minutes(1), minutes(2), minutes(4), minutes(2.35)]).toEqual([2, 3, 4, 3]);
  expect([minutes(4, 1.5), minutes(4, 0.5)]).toEqual([6, 2]);
  expect(() => minutes(0)).toThrow(RangeError);
});

test("what the kit lacks is told with the dish", () => {
  const wok = dishOf("wok", [makeStep("fry", 5, { kit: ["ring", "pan"] })]);
  expect(toWorkProblem(wishFor([dishOf("raw", [makeStep("mix", 1)]), wok], { kit: makeKit({ pans: 0 }) }))).toEqual({
    ok: false,
    dish: 1,
    kit: "pan",
  });
  expect(() => toWorkProblem(wishFor([]))).toThrow(RangeError);
});

test("without a kettle a pot on a ring heats the water, in twice the time", () => {
  const tea = dishOf("tea", [makeStep("water", 4, { kind: "heat-water", hands: "none", kit: ["kettle"] })]);
  const { problem, parts } = stateWork(wishFor([tea], { kit: makeKit({ kettle: false }) }));
  expect([problem.steps[0]?.minutes, [...parts].sort()]).toEqual([8, ["pot", "ring"]]);
});

test("what is done ahead is no part of the cooking; a dish that is all done ahead is just served", () => {
  const overnight = dishOf("overnight", [
    makeStep("stir", 3, { kind: "soak" }),
    makeStep("swell", 360, { kind: "chill", hands: "none", after: ["stir"], ahead: true }),
  ]);
  const cooking = stateWork(wishFor([overnight]));
  expect(cooking.ahead.map(({ step, leadsToAhead }) => [step.id, leadsToAhead])).toEqual([
    ["stir", [1]],
    ["swell", []],
  ]);
  expect(timeWork(wishFor([overnight])).plan.serveMinutes).toBe(0);
});

test("a pot is held from the first step with food in it until the step that empties it is done", () => {
  const stew = dishOf("stew", [
    makeStep("fry", 5, { kit: ["ring", "pot"] }),
    makeStep("simmer", 10, { kit: ["ring", "pot"], hands: "none", after: ["fry"] }),
    makeStep("cut", 2),
    makeStep("serve", 1, { after: ["simmer", "cut"] }),
  ]);
  const { problem, parts } = stateWork(wishFor([stew]));
  const uses = problem.uses.map(({ kind, from, to }) => [parts[kind], from, to]);
  expect(uses).toEqual([
    ["ring", 0, 0],
    ["ring", 1, 1],
    ["pot", 0, 3],
  ]);
});

test("an oven is heated up first and keeps one temperature at a time", () => {
  const baked = (id: string, tempC: number) =>
    dishOf(id, [
      makeStep("bake", 20, { kind: "bake", hands: "none", kit: ["oven", "tray"], tempC, foods: ["barley"] }),
    ]);
  const alike = timeWork(wishFor([baked("first", 200), baked("second", 200)]));
  expect([timesOf(alike, 0, "bake").start, alike.plan.serveMinutes]).toEqual([12, 32]);
  const apart = timeWork(wishFor([baked("first", 200), baked("second", 170)]));
  expect(apart.plan.serveMinutes).toBe(10 + 20 + 2 + 20);
});

test("several ends and holds of any method give an order of work that the judge passes", () => {
  const kit = makeKit({ pans: 3, pots: 3, rings: 2 });
  fc.assert(
    fc.property(methods(6), methods(4), fc.constantFrom<1 | 2>(1, 2), fc.nat(12), (first, second, cooks, hold) => {
      const held = first.map((step, at) => (at % 2 === 0 ? { ...step, holdMinutes: hold } : step));
      const stated = toWorkProblem(wishFor([dishOf("first", held), dishOf("second", second)], { kit, cooks }));
      if (!stated.ok) return;
      const outcome = solveCooking(stated.cooking, { shouldStop: () => false });
      if (outcome.kind !== "timed") throw new Error(outcome.kind);
      const { plan, excesses } = outcome.timed;
      expect(checkWork(stated.cooking.problem, plan, excesses).faults).toEqual([]);
    }),
    { numRuns: 40 },
  );
});
