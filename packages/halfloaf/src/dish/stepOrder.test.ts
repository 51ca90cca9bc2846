import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeStep, methods } from "./dish.testing.ts";
import { markAhead, orderSteps } from "./stepOrder.ts";

/** Ids of all steps that must be finished before one, by walking back. */
function walkBack(method: ReturnType<typeof makeStep>[], id: string): Set<string> {
  const found = new Set<string>();
  const walk = (at: string) => {
    for (const before of method.find((step) => step.id === at)?.after ?? []) {
      if (found.has(before)) continue;
      found.add(before);
      walk(before);
    }
  };
  walk(id);
  return found;
}

describe("laws", () => {
  test("a step comes before another where walking back from the other meets it", () => {
    fc.assert(
      fc.property(methods(9), (method) => {
        const { precedes } = orderSteps(method);
        for (const [to, step] of method.entries()) {
          const before = walkBack(method, step.id);
          for (const [from, other] of method.entries()) expect(precedes[from]?.[to]).toBe(before.has(other.id));
        }
      }),
    );
  });

  test("the sequence holds each step once and puts none before one it waits for", () => {
    fc.assert(
      fc.property(methods(9), (method) => {
        const { sequence, cyclic } = orderSteps(method);
        expect(cyclic).toEqual([]);
        expect([...sequence].sort((a, b) => a - b)).toEqual([...method.keys()]);
        for (const [turn, at] of sequence.entries()) {
          for (const id of method[at]?.after ?? []) {
            expect(sequence.indexOf(method.findIndex((step) => step.id === id))).toBeLessThan(turn);
          }
        }
      }),
    );
  });

  test("a step is ahead where it or anything that hangs on it is marked so", () => {
    fc.assert(
      fc.property(methods(8), fc.nat(7), (drawn, mark) => {
        const method = drawn.map((step, at) => ({ ...step, ahead: at === mark }));
        const needed = mark < method.length ? walkBack(method, (method[mark] as { id: string }).id) : new Set();
        const expected = method.map(({ id, ahead }) => ahead || needed.has(id));
        expect(markAhead(method, orderSteps(method))).toEqual(expected);
      }),
    );
  });
});

describe("cases", () => {
  test("a method in its right order stays as it is", () => {
    const method = [makeStep("cut", 1), makeStep("fry", 1, { after: ["cut"] }), makeStep("boil", 1)];
    expect(orderSteps(method).sequence).toEqual([0, 1, 2]);
  });

  test("steps in a ring are named, those that only wait for it are not", () => {
    const method = [
      makeStep("a", 1, { after: ["b"] }),
      makeStep("b", 1, { after: ["a"] }),
      makeStep("c", 1, { after: ["b"] }),
      makeStep("d", 1, { after: ["d"] }),
      makeStep("e", 1),
    ];
    const { cyclic, sequence } = orderSteps(method);
    expect(cyclic).toEqual([0, 1, 3]);
    expect([...sequence].sort()).toEqual([0, 1, 2, 3, 4]);
  });

  test("an id that names no step is passed over", () => {
    expect(orderSteps([makeStep("a", 1, { after: ["nothing"] })])).toEqual({
      precedes: [[false]],
      sequence: [0],
      cyclic: [],
    });
  });
});
