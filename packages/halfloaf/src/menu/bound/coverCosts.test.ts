import fc from "fast-check";
import { expect, test } from "vitest";
import { coverCosts } from "./coverCosts.ts";
import type { Supply } from "./listSupplies.ts";

function supply(massG: number, tillMinor: number, most: number): Supply {
  return {
    food: 0,
    massG,
    unitMinor: tillMinor,
    leftMinorPerG: 0,
    tillMinor,
    most,
    given: false,
    mustUseG: 0,
    pack: 0,
    packs: 1,
    trips: [0],
  };
}

/** Cheapest number of each unit by trying them all. */
function tryAll(units: readonly Supply[], needG: number): number {
  let best = needG <= 0 ? 0 : Number.POSITIVE_INFINITY;
  const go = (at: number, massG: number, cost: number): void => {
    if (massG >= needG) best = Math.min(best, cost);
    const unit = units[at];
    if (unit === undefined || massG >= needG) return;
    for (let n = 0; n <= Math.min(unit.most, 12); n++) go(at + 1, massG + n * unit.massG, cost + n * unit.tillMinor);
  };
  go(0, 0, 0);
  return best;
}

const unit = fc.record({
  massG: fc.integer({ min: 100, max: 900 }),
  price: fc.nat(300),
  most: fc.constantFrom(1, 2, 99),
});

test("the cost of a cover is never above the cheapest one, and the cheapest for needs a little less", () => {
  fc.assert(
    fc.property(
      fc.array(unit, { minLength: 1, maxLength: 3 }),
      fc.integer({ min: 1, max: 1000 }),
      fc.nat(200),
      (drawn, needG, givenG) => {
        const units = drawn.map(({ massG, price, most }) => supply(massG, price, most));
        const given: Supply = { ...supply(givenG, 0, 1), given: true };
        const least = coverCosts([given, ...units], ({ tillMinor }) => tillMinor, 1000);
        expect(least(needG)).toBeLessThanOrEqual(tryAll(units, needG - givenG));
        expect(least(needG)).toBeGreaterThanOrEqual(tryAll(units, needG - givenG - 3));
      },
    ),
    { numRuns: 300 },
  );
});

test("what no units reach costs without end, and what is given costs nothing", () => {
  const least = coverCosts([supply(100, 50, 2)], ({ tillMinor }) => tillMinor, 500);
  expect([least(0), least(100), least(150), least(250)]).toEqual([0, 50, 100, Number.POSITIVE_INFINITY]);
});
