import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Composition } from "../food/nutrient.ts";
import { type DeclarationLine, declare, declaredEnergy, saltG } from "./declaration.ts";

const gram = fc.double({ min: 0, max: 60, noNaN: true });
const whole = fc.record({
  fatG: gram,
  saturatesG: gram,
  carbohydrateAvailableG: gram,
  sugarsG: gram,
  fibreG: gram,
  proteinG: gram,
  alcoholG: gram,
  sodiumMg: fc.double({ min: 0, max: 5000, noNaN: true }),
});
const ENERGY_PARTS = ["fatG", "carbohydrateAvailableG", "fibreG", "proteinG", "alcoholG"] as const;

function without(composition: Composition, ...names: (keyof Composition)[]): Composition {
  return Object.fromEntries(Object.entries(composition).filter(([name]) => !names.includes(name as keyof Composition)));
}

const unknownItems = (lines: readonly DeclarationLine[]) =>
  lines.filter(({ per100G }) => per100G === undefined).map(({ item }) => item);

describe("laws", () => {
  test("100 g as the portion gives the same figures twice", () => {
    fc.assert(
      fc.property(whole, (composition) => {
        for (const { per100G, perPortion } of declare(composition, { portionMassG: 100 })) {
          expect(perPortion).toEqual(per100G);
        }
      }),
    );
  });

  test("energy grows with each part by its factor", () => {
    fc.assert(
      fc.property(whole, fc.constantFrom(...ENERGY_PARTS), (composition, part) => {
        const before = declaredEnergy(composition);
        const after = declaredEnergy({ ...composition, [part]: composition[part] + 1 });
        const factor = { fatG: 37, carbohydrateAvailableG: 17, fibreG: 8, proteinG: 17, alcoholG: 29 }[part];
        expect((after?.energyKj ?? 0) - (before?.energyKj ?? 0)).toBeCloseTo(factor, 6);
      }),
    );
  });

  test("one unknown part makes the energy unknown and leaves the other lines as they are", () => {
    fc.assert(
      fc.property(whole, fc.constantFrom(...ENERGY_PARTS), (composition, part) => {
        const lines = declare(without(composition, part));
        expect(unknownItems(lines)).toContain("energy");
        expect(unknownItems(lines).length).toBe(part === "alcoholG" ? 1 : 2);
      }),
    );
  });
});

describe("cases", () => {
  const bread: Composition = {
    fatG: 3.3,
    saturatesG: 0.7,
    carbohydrateByDifferenceG: 49.2,
    fibreG: 2.7,
    sugarsG: 5.3,
    proteinG: 8.9,
    alcoholG: 0,
    sodiumMg: 477,
  };

  test("available carbohydrate is that by difference without the fibre", () => {
    const line = declare(bread).find(({ item }) => item === "carbohydrate");
    expect(line?.per100G).toEqual({ unit: "g", figure: { value: 47, text: "47" } });
    expect(unknownItems(declare(without(bread, "fibreG")))).toEqual(["energy", "carbohydrate", "fibre"]);
  });

  test("energy is 3.3 x 37 + 46.5 x 17 + 2.7 x 8 + 8.9 x 17 kJ, the kcal by their own factors", () => {
    expect(declaredEnergy(bread)?.energyKj).toBeCloseTo(1085.5, 9);
    expect(declaredEnergy(bread)?.energyKcal).toBeCloseTo(256.7, 9);
  });

  test("a portion is reckoned before rounding: 36 g hold 390.8 kJ, 1.188 g of fat, 0.4293 g of salt", () => {
    const [energy, fat, , , , , , salt] = declare(bread, { portionMassG: 36 });
    expect(energy?.perPortion).toMatchObject({ kj: { value: 391 }, kcal: { value: 92 } });
    expect(fat?.perPortion).toMatchObject({ figure: { text: "1.2" } });
    expect(salt?.perPortion).toMatchObject({ figure: { text: "0.43" } });
    expect(salt?.per100G).toMatchObject({ figure: { text: "1.2" } });
  });

  test("nothing known: all lines stand, without a figure", () => {
    const lines = declare({}, { portionMassG: 50 });
    expect(lines.map(({ item }) => item)).toEqual(unknownItems(lines));
    expect(lines.every((line) => !("per100G" in line) && !("perPortion" in line))).toBe(true);
    expect(saltG({})).toBeUndefined();
  });

  test("fibre is left out where it is not asked for", () => {
    expect(declare(bread, { withFibre: false }).map(({ item }) => item)).not.toContain("fibre");
  });

  test.each([0, -5, Number.NaN])("a portion of %d g is a defect", (portionMassG) => {
    expect(() => declare(bread, { portionMassG })).toThrow(RangeError);
  });
});
