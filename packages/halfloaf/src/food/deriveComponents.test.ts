import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { componentsDerivedFrom, deriveComponents } from "./deriveComponents.ts";
import { type Composition, NUTRIENT_NAMES } from "./nutrient.ts";

const compositions = fc
  .dictionary(fc.constantFrom(...NUTRIENT_NAMES), fc.integer({ min: 0, max: 900 }))
  .map((composition): Composition => ({ ...composition }));

describe("what follows from a composition", () => {
  test("leaves every figure that is given as it is", () => {
    fc.assert(
      fc.property(compositions, (given) => {
        const { composition, derived } = deriveComponents(given);
        expect(composition).toMatchObject(given);
        expect(Object.keys(composition).sort()).toEqual([...Object.keys(given), ...Object.keys(derived)].sort());
      }),
    );
  });

  test("is reckoned only where all it is reckoned from is known", () => {
    fc.assert(
      fc.property(compositions, ({ fibreG: _fibre, ...given }) => {
        const { carbohydrateAvailableG, ...rest } = given;
        expect(deriveComponents(rest).composition.carbohydrateAvailableG).toBeUndefined();
      }),
    );
  });

  test.each<[Composition, Composition]>([
    [{ carbohydrateByDifferenceG: 60, fibreG: 15 }, { carbohydrateAvailableG: 45 }],
    [{ carbohydrateByDifferenceG: 1, fibreG: 2 }, { carbohydrateAvailableG: 0 }],
    [{ carbohydrateAvailableG: 45, fibreG: 15 }, { carbohydrateByDifferenceG: 60 }],
    [{ energyKcal: 100 }, { energyKj: 418.4 }],
    [{ energyKj: 418.4 }, { energyKcal: 100 }],
    [{ sugarsG: 0 }, { freeSugarsG: 0 }],
    [{ sugarsG: 0.1 }, {}],
    [{ retinolUg: 10, betaCaroteneUg: 24, alphaCaroteneUg: 12, betaCryptoxanthinUg: 12 }, { vitaminARaeUg: 13 }],
    [{ folateFoodUg: 10, folicAcidUg: 10 }, { folateDfeUg: 27 }],
  ])("of %j is %j", (given, expected) => {
    const { composition } = deriveComponents(given);
    for (const [name, figure] of Object.entries(expected)) {
      expect(composition[name as keyof Composition]).toBeCloseTo(figure, 9);
    }
    expect(Object.keys(composition).sort()).toEqual([...Object.keys(given), ...Object.keys(expected)].sort());
  });

  test("is named by what it is reckoned from", () => {
    expect(componentsDerivedFrom("fibreG")).toEqual(["carbohydrateAvailableG", "carbohydrateByDifferenceG"]);
    expect(componentsDerivedFrom("ironMg")).toEqual([]);
  });
});
