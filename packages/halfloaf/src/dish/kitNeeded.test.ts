import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeDish, makeStep, methods } from "./dish.testing.ts";
import { isTravelling, kitNeeded, needsHeat, vesselsOf } from "./kitNeeded.ts";
import { orderSteps } from "./stepOrder.ts";

/** Most steps with a pot of which none comes before another, by trying every set of steps. */
function countWidest(method: ReturnType<typeof makeStep>[]): number {
  const { precedes } = orderSteps(method);
  const pots = [...method.keys()].filter((at) => method[at]?.kit.includes("pot"));
  const sets = Array.from({ length: 2 ** pots.length }, (_, bits) => pots.filter((_pot, place) => (bits >> place) & 1));
  const apart = sets.filter((set) => set.every((a) => set.every((b) => !precedes[a]?.[b])));
  return Math.max(...apart.map(({ length }) => length));
}

describe("vessels", () => {
  test("as many pots as the most steps with a pot that have no order between them", () => {
    fc.assert(
      fc.property(methods(8), (drawn) => {
        const method = drawn.map((step, at) => ({
          ...step,
          kit: at % 4 === 3 ? step.kit : (["pot"] as const).slice(),
        }));
        expect(kitNeeded({ method }).pots).toBe(countWidest(method));
      }),
      { numRuns: 200 },
    );
  });

  test("one pot serves steps that follow each other, also through a step without it", () => {
    const method = [
      makeStep("boil", 9, { kit: ["ring", "pot"] }),
      makeStep("cut", 2, { kit: ["board"], after: ["boil"] }),
      makeStep("turn", 1, { kit: ["pot"], after: ["cut"] }),
    ];
    expect(kitNeeded({ method })).toEqual({
      rings: 1,
      pans: 0,
      pots: 1,
      trays: 0,
      bowls: 0,
      boards: 1,
      oven: false,
      microwave: false,
      kettle: false,
      blender: false,
    });
    expect(vesselsOf({ method })).toEqual([
      { vessel: "pot", count: 1 },
      { vessel: "board", count: 1 },
    ]);
  });

  test("steps without an order, and a step that names it twice, need two", () => {
    const beside = [makeStep("rice", 9, { kit: ["pot"] }), makeStep("soup", 9, { kit: ["pot"] })];
    expect(kitNeeded({ method: beside }).pots).toBe(2);
    expect(kitNeeded({ method: [makeStep("pour", 1, { kit: ["bowl", "bowl"] })] }).bowls).toBe(2);
    const boards = [makeStep("a", 1, { kit: ["board"] }), makeStep("b", 1, { kit: ["board"] })];
    expect(kitNeeded({ method: boards }).boards).toBe(1);
  });
});

describe("heat and travel", () => {
  test("a source of heat or a kind of heating needs heat, ahead or not", () => {
    expect(needsHeat({ method: [makeStep("stir", 1, { kit: ["bowl"] })] })).toBe(false);
    expect(needsHeat({ method: [makeStep("boil", 1, { kit: ["kettle"] })] })).toBe(true);
    expect(needsHeat({ method: [makeStep("eggs", 1, { kind: "boil", ahead: true })] })).toBe(true);
  });

  test("a dish travels where it may be carried and eaten cold", () => {
    expect(isTravelling(makeDish({ travels: true, served: ["hot", "cold"] }))).toBe(true);
    expect(isTravelling(makeDish({ travels: true, served: ["hot"] }))).toBe(false);
    expect(isTravelling(makeDish({ travels: false, served: ["cold"] }))).toBe(false);
  });
});
