import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { STEP_KINDS } from "../../dish/index.ts";
import { learnPace, type ObservedStep, stepMinutes, toPace } from "./pace.ts";

const observed = fc.array(
  fc.record({
    kind: fc.constantFrom(...STEP_KINDS),
    statedMinutes: fc.integer({ min: 0, max: 60 }),
    observedMinutes: fc.integer({ min: 0, max: 240 }),
  }),
  { maxLength: 30 },
);
const cuts = (...ratios: number[]): ObservedStep[] =>
  ratios.map((ratio) => ({ kind: "cut", statedMinutes: 10, observedMinutes: 10 * ratio }));

describe("laws", () => {
  test("the order of the cookings is of no matter, and every factor stays within bounds", () => {
    fc.assert(
      fc.property(observed, (steps) => {
        const learned = learnPace(steps);
        expect(learnPace(steps.toReversed())).toEqual(learned);
        for (const { factor, count } of learned) {
          expect(factor).toBeGreaterThanOrEqual(0.5);
          expect(factor).toBeLessThanOrEqual(2.5);
          expect(count).toBeGreaterThan(0);
        }
      }),
    );
  });

  test("a factor lies between what was said and what was seen", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.6, max: 2.4, noNaN: true }), { minLength: 1, maxLength: 9 }),
        (ratios) => {
          const [learned] = learnPace(cuts(...ratios));
          const median = learned?.median ?? 0;
          expect(learned?.factor).toBeGreaterThanOrEqual(Math.min(1, median) - 1e-9);
          expect(learned?.factor).toBeLessThanOrEqual(Math.max(1, median) + 1e-9);
        },
      ),
    );
  });

  test("a slower cook never gets fewer minutes, and what the fire does is never hurried", () => {
    const step = fc.record({
      kind: fc.constantFrom(...STEP_KINDS),
      minutes: fc.record({ fixed: fc.nat(20), perPortion: fc.constantFrom(0, 0.5, 1.25) }),
    });
    const factor = fc.double({ min: 0.5, max: 2.5, noNaN: true });
    fc.assert(
      fc.property(step, factor, factor, (of, a, b) => {
        const at = (pace: number) => stepMinutes(of, 3, { [of.kind]: pace });
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
        if (["simmer", "bake", "soak", "fry"].includes(of.kind)) expect(at(a)).toBeGreaterThanOrEqual(at(1));
      }),
    );
  });
});

describe("cases", () => {
  test("nothing seen is no pace at all, which is how it is reset", () => {
    expect(learnPace([])).toEqual([]);
    expect(toPace([])).toEqual({});
    expect(learnPace([{ kind: "cut", statedMinutes: 0, observedMinutes: 5 }])).toEqual([]);
  });

  test("it takes several cookings to count, and one odd one hardly does", () => {
    expect(learnPace(cuts(1.5))).toEqual([{ kind: "cut", count: 1, median: 1.5, factor: 1.1 }]);
    expect(learnPace(cuts(1.5, 1.5, 1.5, 1.5))[0]?.factor).toBeCloseTo(1.25);
    expect(learnPace(cuts(1.5, 1.5, 1.5, 1.5, 24))[0]?.factor).toBeLessThan(1.3);
    expect(toPace(learnPace(cuts(1.5)))).toEqual({ cut: 1.1 });
  });

  test("minutes that can't be are a defect of the caller", () => {
    expect(() => learnPace([{ kind: "cut", statedMinutes: 5, observedMinutes: -1 }])).toThrow(RangeError);
    expect(() => learnPace([{ kind: "cut", statedMinutes: Number.NaN, observedMinutes: 1 }])).toThrow(RangeError);
  });
});
