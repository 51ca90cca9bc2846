import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeStep, methods } from "./dish.testing.ts";
import type { Step } from "./dish.ts";
import { linearMinutes, minutesOf } from "./minutes.ts";

const portionsDrawn = fc.integer({ min: 1, max: 12 });
const kits = fc.record({ rings: fc.integer({ min: 1, max: 3 }), cooks: fc.integer({ min: 1, max: 2 }) });
const lengthOf = ({ minutes }: Step, portions: number) => minutes.fixed + minutes.perPortion * portions;
const BUSY = { full: 1, eye: 0.5, none: 0 };

/** Minutes of the longest run of steps that wait for each other. */
function longestChain(method: readonly Step[], portions: number): number {
  const end = (step: Step): number =>
    lengthOf(step, portions) +
    Math.max(0, ...method.filter(({ id }) => step.after.includes(id)).map((before) => end(before)));
  return Math.max(...method.map(end));
}

/** The least whole minutes by one cook with one ring, by going through every moment at which steps may be started. */
function findLeast(method: readonly Step[], portions: number): number {
  let best = Number.POSITIVE_INFINITY;
  const parts = ["ring", "oven", "kettle"] as const;
  const visit = (minute: number, ends: ReadonlyMap<string, number>) => {
    const last = Math.max(minute, ...ends.values());
    if (last >= best) return;
    if (ends.size === method.length) {
      best = last;
      return;
    }
    const running = method.filter(({ id }) => (ends.get(id) ?? -1) > minute);
    for (const step of method) {
      if (ends.has(step.id) || !step.after.every((id) => (ends.get(id) ?? Number.POSITIVE_INFINITY) <= minute))
        continue;
      const beside = lengthOf(step, portions) > 0 ? [...running, step] : [];
      const hands = beside.reduce((sum, { hands: each }) => sum + BUSY[each], 0);
      const clashes = parts.some((part) => beside.filter(({ kit }) => kit.includes(part)).length > 1);
      if (hands <= 1 && !clashes) visit(minute, new Map([...ends, [step.id, minute + lengthOf(step, portions)]]));
    }
    const next = Math.min(...[...ends.values()].filter((end) => end > minute));
    if (Number.isFinite(next)) visit(next, ends);
  };
  visit(0, new Map());
  return best;
}

describe("laws of the minutes", () => {
  test("elapsed is no less than the longest chain and the hands' work, no more than all one by one", () => {
    fc.assert(
      fc.property(methods(8), portionsDrawn, kits, (method, portions, kit) => {
        const { elapsed, handsOn } = minutesOf({ method }, portions, kit);
        const work = method.reduce((sum, step) => sum + lengthOf(step, portions) * BUSY[step.hands], 0);
        const ring = method.filter((step) => step.kit.includes("ring"));
        expect(handsOn).toBeCloseTo(work, 9);
        expect(elapsed).toBeGreaterThanOrEqual(longestChain(method, portions));
        expect(elapsed).toBeGreaterThanOrEqual(work / kit.cooks - 1e-9);
        expect(elapsed * kit.rings).toBeGreaterThanOrEqual(
          ring.reduce((sum, step) => sum + lengthOf(step, portions), 0),
        );
        expect(elapsed).toBeLessThanOrEqual(method.reduce((sum, step) => sum + lengthOf(step, portions), 0));
      }),
    );
  });

  test("elapsed is never below the least by brute force, and mostly meets it", () => {
    let [met, tried] = [0, 0];
    fc.assert(
      fc.property(methods(5), fc.integer({ min: 1, max: 3 }), (method, portions) => {
        const [least, elapsed] = [findLeast(method, portions), minutesOf({ method }, portions).elapsed];
        expect(elapsed).toBeGreaterThanOrEqual(least);
        tried++;
        if (elapsed === least) met++;
      }),
      { numRuns: 150, seed: 5 },
    );
    expect(met / tried).toBeGreaterThan(0.9);
  });

  test("more portions never take less time", () => {
    fc.assert(
      fc.property(methods(8), portionsDrawn, portionsDrawn, kits, (method, a, b, kit) => {
        const [few, many] = [Math.min(a, b), Math.max(a, b)].map((each) => minutesOf({ method }, each, kit));
        expect(many?.elapsed).toBeGreaterThanOrEqual(few?.elapsed as number);
        expect(many?.handsOn).toBeGreaterThanOrEqual(few?.handsOn as number);
      }),
    );
  });

  test("more rings or cooks never take more", () => {
    fc.assert(
      fc.property(methods(8), portionsDrawn, kits, kits, (method, portions, a, b) => {
        const more = { rings: Math.max(a.rings, b.rings), cooks: Math.max(a.cooks, b.cooks) };
        expect(minutesOf({ method }, portions, more).elapsed).toBeLessThanOrEqual(
          minutesOf({ method }, portions, a).elapsed,
        );
      }),
    );
  });

  test("one pair of hands is never busy for longer than ahead and elapsed together", () => {
    fc.assert(
      fc.property(methods(8), fc.nat(7), portionsDrawn, (drawn, mark, portions) => {
        const method = drawn.map((step, at) => ({ ...step, ahead: at === mark }));
        const { handsOn, elapsed, ahead } = minutesOf({ method }, portions);
        expect(handsOn).toBeLessThanOrEqual(elapsed + ahead + 1e-9);
      }),
    );
  });
});

describe("laws of the linear minutes", () => {
  test("hands-on is exact, elapsed is never below, for whole and for parts of portions up to 8", () => {
    const portionsUpTo8 = fc.oneof(fc.integer({ min: 1, max: 8 }), fc.double({ min: 0.1, max: 8, noNaN: true }));
    fc.assert(
      fc.property(methods(8), portionsUpTo8, kits, (method, portions, kit) => {
        const lines = linearMinutes({ method }, kit);
        const told = minutesOf({ method }, portions, kit);
        expect(lines.handsOn.fixed + lines.handsOn.perPortion * portions).toBeCloseTo(told.handsOn, 9);
        expect(lines.elapsed.fixed + lines.elapsed.perPortion * portions).toBeGreaterThanOrEqual(told.elapsed - 1e-9);
        expect(Math.min(lines.elapsed.fixed, lines.elapsed.perPortion)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("a method of one chain has its own line", () => {
    const method = [
      makeStep("cut", 0, { minutes: { fixed: 2, perPortion: 1.5 } }),
      makeStep("fry", 0, { minutes: { fixed: 6, perPortion: 0.5 }, hands: "eye", after: ["cut"] }),
    ];
    expect(linearMinutes({ method })).toEqual({
      handsOn: { fixed: 5, perPortion: 1.75 },
      elapsed: { fixed: 8, perPortion: 2 },
    });
  });
});

describe("cases", () => {
  const kettle = makeStep("kettle", 4, { hands: "none", kit: ["kettle"] });
  const cut = makeStep("cut", 3, { minutes: { fixed: 1, perPortion: 1 }, kit: ["board"] });
  const rice = makeStep("rice", 10, { hands: "eye", kit: ["ring", "pot"], after: ["kettle"] });
  const fry = makeStep("fry", 5, { hands: "eye", kit: ["ring", "pan"], after: ["cut"] });
  const serve = makeStep("serve", 1, { after: ["rice", "fry"] });
  const method = [kettle, cut, rice, fry, serve];

  test("the hands cut while the kettle boils; one ring fries before or after, a second ring beside the rice", () => {
    expect(minutesOf({ method }, 2)).toEqual({
      handsOn: 3 + 5 + 2.5 + 1,
      // By one ring: cut till 3, fry till 8, rice till 18, serve till 19.
      elapsed: 19,
      ahead: 0,
      vessels: [
        { vessel: "pan", count: 1 },
        { vessel: "pot", count: 1 },
        { vessel: "board", count: 1 },
      ],
    });
    expect(minutesOf({ method }, 2, { rings: 2, cooks: 1 }).elapsed).toBe(15);
  });

  test("both hands at one thing cannot keep an eye on another, a second cook can", () => {
    const beside = [makeStep("knead", 8), makeStep("stir", 6, { hands: "eye", kit: ["ring", "pot"] })];
    expect(minutesOf({ method: beside }, 1).elapsed).toBe(14);
    expect(minutesOf({ method: beside }, 1, { rings: 1, cooks: 2 }).elapsed).toBe(8);
    const eyes = beside.map((step) => ({ ...step, hands: "eye" as const }));
    expect(minutesOf({ method: eyes }, 1).elapsed).toBe(8);
  });

  test("a second ring that would mislead the lists is left cold", () => {
    const misled = [
      makeStep("rice", 3, { hands: "none", kit: ["ring"] }),
      makeStep("soup", 3, { hands: "none", kit: ["ring"] }),
      makeStep("watch", 8, { hands: "eye", after: ["soup"] }),
      makeStep("turn", 1, { after: ["rice"] }),
      makeStep("mind", 6, { hands: "eye", after: ["turn"] }),
    ];
    // Lists that light both rings at once take 18 minutes.
    expect(minutesOf({ method: misled }, 1).elapsed).toBe(14);
    expect(minutesOf({ method: misled }, 1, { rings: 2, cooks: 1 }).elapsed).toBeLessThanOrEqual(14);
  });

  test("what is done ahead, and what that waits for, is outside the elapsed minutes but not outside the hands", () => {
    const soaked = [
      makeStep("mix", 2),
      makeStep("soak", 480, { hands: "none", ahead: true, after: ["mix"] }),
      makeStep("serve", 1, { after: ["soak"] }),
    ];
    expect(minutesOf({ method: soaked }, 1)).toMatchObject({ handsOn: 3, elapsed: 1, ahead: 482 });
  });

  test.each([
    ["no portions", () => minutesOf({ method }, 0)],
    ["no ring", () => minutesOf({ method }, 1, { rings: 0, cooks: 1 })],
    ["no cook", () => linearMinutes({ method }, { rings: 1, cooks: 0 })],
    ["a ring of steps", () => minutesOf({ method: [makeStep("a", 1, { after: ["a"] })] }, 1)],
  ])("%s is a defect", (_name, call) => {
    expect(call).toThrow(RangeError);
  });
});
