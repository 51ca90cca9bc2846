import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import { checkWork, findExcesses } from "../../work/check/index.ts";
import { dishOf, makeKit, readDemoKitchens, readStarterTables, timeWork, wishFor } from "./cooking.testing.ts";
import type { Happening } from "./Happening.ts";
import { happenedAsPlanned } from "./happenedAsPlanned.ts";
import { retime } from "./retime.ts";
import type { TimedCooking } from "./solveCooking.ts";

const tables = readStarterTables();
const kit = readDemoKitchens()[1]?.kit ?? makeKit();
const never = () => false;

/** Pairs of starter dishes with their order of work. */
const meals = [3, 31, 58, 77, 102].map((first) => {
  const dishes = [first, first + 19].flatMap((at) => tables.dishes[at] ?? []);
  return timeWork({
    dishes: dishes.map((dish) => ({ dish, portions: 2 })),
    kit,
    cooks: 1,
    tables,
    authority: "strictest",
  });
});

describe("laws", () => {
  test("nothing changes where all went as planned", () => {
    for (const timed of meals) {
      for (let now = 0; now <= timed.plan.serveMinutes; now += 3) {
        const again = retime(timed, happenedAsPlanned(timed, now), now, never);
        expect(again.kind).toBe("same");
        expect(again.timed).toBe(timed);
      }
    }
  });

  test("what has begun stays as it was, the rest begins now or later and is served no sooner than it can be", () => {
    const late = fc.record({
      at: fc.nat(meals.length - 1),
      share: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      by: fc.integer({ min: 1, max: 15 }),
    });
    fc.assert(
      fc.property(late, ({ at, share, by }) => {
        const meal = meals[at] as TimedCooking;
        const now = Math.round(meal.plan.serveMinutes * share);
        const happened = happenedAsPlanned(meal, now).map((each): Happening => {
          if (each.kind !== "step" || each.doneMinutes !== undefined) return each;
          const end = each.begunMinutes + (meal.cooking.problem.steps[each.step]?.minutes as number);
          return { ...each, leftMinutes: end - now + by };
        });
        const { timed, kind } = retime(meal, happened, now, never);
        const begun = happened.filter((each) => each.kind === "step");
        for (const { step, begunMinutes } of begun) expect(timed.plan.starts[step]).toBe(begunMinutes);
        const begunSteps = new Set(begun.map(({ step }) => step));
        for (const [i, start] of timed.plan.starts.entries())
          if (!begunSteps.has(i) && timed.cooking.steps[i]?.step) expect(start).toBeGreaterThanOrEqual(now);
        expect(timed.plan.serveMinutes).toBeGreaterThanOrEqual(meal.plan.serveMinutes);
        // Putting off all the rest is one way to go on; where it keeps the holds, none that is later is taken.
        const starts = meal.plan.starts.map((start, i) => (begunSteps.has(i) ? start : start + by));
        const putOff = { ...meal.plan, starts, serveMinutes: meal.plan.serveMinutes + by };
        const isKept = findExcesses(timed.cooking.problem, putOff).length === 0;
        if (isKept) expect(timed.plan.serveMinutes).toBeLessThanOrEqual(putOff.serveMinutes + 1);
        if (kind === "timed") expect(judge(timed)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test("a stop at once puts everything off as it was, and still keeps hands, board and kit", () => {
    for (const meal of meals) {
      const now = Math.round(meal.plan.serveMinutes / 3);
      const open = happenedAsPlanned(meal, now).map(
        (each): Happening =>
          each.kind === "step" && each.doneMinutes === undefined ? { ...each, leftMinutes: 90 } : each,
      );
      const { timed } = retime(meal, open, now, () => true);
      const faults = judge(timed).filter(({ code }) => code !== "hold");
      expect(faults).toEqual([]);
    }
  });
});

/** Faults of a re-timed order, except holds that the past has broken already. */
function judge({ cooking, plan, excesses }: TimedCooking) {
  return checkWork(cooking.problem, plan, excesses).faults.filter(({ code }) => code !== "hold");
}

describe("cases", () => {
  const chicken = dishOf("chicken", [
    makeStep("joint", 4, { kind: "cut", kit: ["board"], foods: ["chicken"] }),
    makeStep("fry", 12, { kind: "fry", hands: "eye", kit: ["ring", "pan"], after: ["joint"], foods: ["chicken"] }),
  ]);
  const salad = dishOf("salad", [makeStep("shred", 5, { kind: "cut", kit: ["board"], foods: ["lettuce"] })]);
  const plan = timeWork(wishFor([chicken, salad]));

  test("a step that is done sooner brings the meal forward", () => {
    const alone = timeWork(wishFor([chicken]));
    expect(alone.plan.serveMinutes).toBe(4 + 12);
    const quick = retime(alone, [{ kind: "step", step: 0, begunMinutes: 0, doneMinutes: 2 }], 2, never);
    expect(quick.timed.plan.serveMinutes).toBe(2 + 12);
    expect(quick.timed.cooking.problem.steps[0]?.minutes).toBe(2);
  });

  test("a board that raw food was on is washed before the salad, unless the wash was marked", () => {
    const done: Happening[] = [{ kind: "step", step: 0, begunMinutes: 0, doneMinutes: 6 }];
    const soiled = retime(plan, done, 6, never).timed.plan;
    const shred = soiled.starts[2] as number;
    expect(soiled.boardWashes.some((wash) => wash >= 6 && wash + 3 <= shred)).toBe(true);
    const washed = retime(plan, [...done, { kind: "board-wash", startMinutes: 6 }], 9, never).timed.plan;
    expect(washed.boardWashes).toEqual([6]);
  });

  test("a pan that stands dirty is washed before it is used again", () => {
    const fry = (id: string) =>
      dishOf(id, [makeStep("fry", 6, { kind: "fry", hands: "eye", kit: ["ring", "pan"], foods: ["barley"] })]);
    const timed = timeWork(wishFor([fry("first"), fry("second")]));
    const first = timed.plan.starts.indexOf(0);
    const { plan: later, cooking } = retime(
      timed,
      [{ kind: "step", step: first, begunMinutes: 0, doneMinutes: 8 }],
      8,
      never,
    ).timed;
    expect(later.kitWashes).toMatchObject([{ startMinutes: expect.any(Number) }]);
    expect(later.serveMinutes).toBe(8 + 1 + 3 + 6);
    expect(checkWork(cooking.problem, later, []).faults.filter(({ code }) => code !== "hold")).toEqual([]);
  });

  test("an oven that is on stays on", () => {
    const bake = dishOf("bake", [
      makeStep("bake", 20, { kind: "bake", hands: "none", kit: ["oven"], tempC: 200, foods: ["barley"] }),
    ]);
    const timed = timeWork(wishFor([bake]));
    const { plan: going } = retime(
      timed,
      [{ kind: "step", step: 0, begunMinutes: 12, leftMinutes: 15 }],
      20,
      never,
    ).timed;
    expect([going.starts, going.serveMinutes]).toEqual([[12], 35]);
    const { plan: late } = retime(timed, [], 14, never).timed;
    expect(late.serveMinutes).toBe(34);
  });

  test("what can't have happened is a defect of the caller", () => {
    expect(() => retime(plan, [{ kind: "step", step: 0, begunMinutes: 5 }], 2, never)).toThrow(RangeError);
    expect(() => retime(plan, [{ kind: "step", step: 0, begunMinutes: 2, doneMinutes: 1 }], 3, never)).toThrow(
      RangeError,
    );
    expect(() => retime(plan, [{ kind: "step", step: 99, begunMinutes: 2 }], 3, never)).toThrow(RangeError);
  });
});
