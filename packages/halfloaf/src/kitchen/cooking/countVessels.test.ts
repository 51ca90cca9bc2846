import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import type { Dish, KitPart } from "../../dish/index.ts";
import { dishOf, makeKit, readDemoKitchens, readStarterTables, timeWork, wishFor } from "./cooking.testing.ts";
import { countVessels } from "./countVessels.ts";

const tables = readStarterTables();
const kit = fc.record({
  pans: fc.integer({ min: 1, max: 4 }),
  pots: fc.integer({ min: 1, max: 4 }),
  boards: fc.integer({ min: 1, max: 2 }),
});
const dishes = fc.array(fc.constantFrom(...tables.dishes), { minLength: 1, maxLength: 4 });

function fried(id: string, kitParts: KitPart[]): Dish {
  return dishOf(id, [makeStep("fry", 6, { kind: "fry", hands: "eye", kit: kitParts, foods: ["barley"] })]);
}

describe("what is washed up after dishes that are cooked at once", () => {
  test("is no less than after any one of them and no more than after all of them by themselves, in whatever order", () => {
    fc.assert(
      fc.property(dishes, kit, (some, over) => {
        const own = makeKit(over);
        const all = countVessels(some, own);
        const alone = some.map((dish) => countVessels([dish], own));
        expect(all).toBeGreaterThanOrEqual(Math.max(...alone));
        expect(all).toBeLessThanOrEqual(alone.reduce((sum, count) => sum + count, 0));
        expect(countVessels(some.toReversed(), own)).toBe(all);
      }),
      { endOnFailure: true },
    );
  });

  test("is all of it where the kitchen has enough of every vessel and no board and blender is shared", () => {
    const parts = fc.array(fc.constantFrom<KitPart>("pan", "pot", "tray", "bowl"), { maxLength: 3 });
    fc.assert(
      fc.property(fc.array(parts, { maxLength: 4 }), (kits) => {
        const some = kits.map((own, at) => fried(`dish-${at}`, own));
        expect(countVessels(some, makeKit({ pans: 12, pots: 12 }))).toBe(kits.flat().length);
      }),
      { endOnFailure: true },
    );
  });

  test("is of pans and pots what the order of work takes clean: what is washed between is not washed up again", () => {
    const { kit: own } = readDemoKitchens()[0] as ReturnType<typeof readDemoKitchens>[number];
    for (const [pans, pots] of [
      [1, 1],
      [2, 1],
    ] as const) {
      const some = [fried("first", ["ring", "pan"]), fried("second", ["ring", "pan"]), fried("third", ["ring", "pot"])];
      const { plan, cooking } = timeWork(wishFor(some, { kit: makeKit({ ...own, pans, pots }) }));
      const soiled = cooking.problem.uses.filter(({ kind }) => cooking.parts[kind] !== "ring").length;
      expect(countVessels(some, { ...own, pans, pots })).toBe(soiled - plan.kitWashes.length);
    }
  });
});
