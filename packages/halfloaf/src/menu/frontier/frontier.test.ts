import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/checkPlan.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { Choice } from "./Choice.ts";
import { addChoice, frontier } from "./frontier.ts";
import { listSteps } from "./steps.ts";

const better = {
  minutes: (c: Choice) => -c.minutes,
  variety: (c: Choice) => c.distinct,
  intake: (c: Choice) => -c.shortfallMinor,
};

describe("the choices", () => {
  it("are plans the judge passes, each dearer than the one before and better in the other thing", () => {
    let several = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.constantFrom("minutes", "variety", "intake"), (problem, against) => {
        for (const { choices, done, steps } of frontier(problem, against, { judge: checkPlan, moves: 2000 })) {
          expect(done).toBeLessThanOrEqual(steps);
          choices.forEach((choice, at) => {
            const { faults, money } = checkPlan(problem, choice.plan);
            expect(faults).toEqual([]);
            expect(choice.moneyMinor).toBeCloseTo(money.tillMinor + money.tripMinor - money.creditMinor, 6);
            expect([choice.minutes, choice.shortfallMinor]).toEqual([money.minutes, money.shortfallMinor]);
            const before = choices[at - 1];
            if (before === undefined) return;
            several++;
            expect(choice.moneyMinor).toBeGreaterThan(before.moneyMinor);
            expect(better[against](choice)).toBeGreaterThan(better[against](before));
          });
        }
      }),
      { numRuns: 40 },
    );
    expect(several).toBeGreaterThan(0);
  });

  it("keep exactly what no other beats, whatever the order they come in", () => {
    const amount = fc.nat({ max: 6 });
    const choice = fc.record({ moneyMinor: amount, minutes: amount }).map(
      (drawn): Choice => ({
        plan: { batches: [], trips: [], purchases: [], uses: [] },
        distinct: 0,
        shortfallMinor: 0,
        ...drawn,
      }),
    );
    fc.assert(
      fc.property(fc.array(choice), (drawn) => {
        const kept = drawn.reduce<readonly Choice[]>((all, one) => addChoice(all, one, better.minutes), []);
        const isBeaten = (one: Choice): boolean =>
          drawn.some(
            (other) =>
              other.moneyMinor <= one.moneyMinor &&
              other.minutes <= one.minutes &&
              (other.moneyMinor < one.moneyMinor || other.minutes < one.minutes),
          );
        const shown = (list: readonly Choice[]): string[] =>
          [...new Set(list.map(({ moneyMinor, minutes }) => `${moneyMinor} ${minutes}`))].sort();
        expect(shown(kept)).toEqual(shown(drawn.filter((one) => !isBeaten(one))));
        expect(kept.length).toBe(shown(kept).length);
      }),
    );
  });

  it("never loosen a limit on the way", () => {
    fc.assert(
      fc.property(arbitraryWeek(), fc.constantFrom("minutes", "variety", "intake"), (problem, against) => {
        for (const { problem: step } of listSteps(problem, against)) {
          expect({ ...step, worth: problem.worth, limits: { ...step.limits, distinct: 0 } }).toEqual({
            ...problem,
            limits: { ...problem.limits, distinct: 0 },
          });
          expect(step.limits.distinct).toBeGreaterThanOrEqual(problem.limits.distinct);
        }
      }),
      { numRuns: 30 },
    );
  });
});
