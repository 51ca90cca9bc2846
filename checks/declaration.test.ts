import { type DeclarationLine, type DeclaredItem, declare, roundDeclared } from "halfloaf/intake";
import { describe, expect, test } from "vitest";

/** Invented figures of a bean stew per 100 g. */
const STEW = {
  fatG: 0.5,
  saturatesG: 0.1,
  carbohydrateAvailableG: 13.4,
  sugarsG: 2.34,
  fibreG: 4.25,
  proteinG: 6.1,
  alcoholG: 0,
  sodiumMg: 300,
};

function print(lines: readonly DeclarationLine[]): string[] {
  return lines.map(({ item, per100G }) => {
    if (per100G === undefined) return `${item} unknown`;
    return per100G.unit === "g"
      ? `${item} ${per100G.figure.text} g`
      : `${item} ${per100G.kj.text} kJ / ${per100G.kcal.text} kcal`;
  });
}

/** **Source**: Regulation (EU) 1169/2011, Annex XV (order from memory); Annex I: salt = sodium x 2.5. */
describe("order", () => {
  test("energy, fat, saturates, carbohydrate, sugars, fibre, protein, salt", () => {
    expect(print(declare(STEW))).toEqual([
      "energy 384 kJ / 91 kcal",
      "fat 0 g",
      "saturates 0 g",
      "carbohydrate 13 g",
      "sugars 2.3 g",
      "fibre 4.3 g",
      "protein 6.1 g",
      "salt 0.75 g",
    ]);
  });

  test("without the voluntary fibre the others keep their order", () => {
    expect(declare(STEW, { withFibre: false }).map(({ item }) => item)).toEqual([
      "energy",
      "fat",
      "saturates",
      "carbohydrate",
      "sugars",
      "protein",
      "salt",
    ]);
  });

  test("saturates are of the fat, sugars of the carbohydrate", () => {
    expect(declare(STEW).flatMap(({ item, ofWhich }) => (ofWhich ? [item] : []))).toEqual(["saturates", "sugars"]);
  });

  test("salt is 2.5 times the sodium, not 2.54", () => {
    const [salt] = declare({ sodiumMg: 1000 }).slice(-1);
    expect(salt?.per100G).toMatchObject({ figure: { value: 2.5 } });
  });
});

/** **Source**: European Commission, guidance on tolerances for nutrient values declared on a label, December 2012. */
describe("rounding", () => {
  test.each<[DeclaredItem, number, string]>([
    ["energy", 383.5, "384"],
    ["energy", 383.49, "383"],
    ["fat", 10, "10"],
    ["fat", 10.4, "10"],
    ["fat", 9.94, "9.9"],
    ["fat", 0.51, "0.5"],
    ["fat", 0.5, "0"],
    ["carbohydrate", 46.5, "47"],
    ["sugars", 0.5, "0"],
    ["fibre", 0.5, "0"],
    ["protein", 0.5, "0"],
    ["saturates", 0.5, "0.5"],
    ["saturates", 0.11, "0.1"],
    ["saturates", 0.1, "0"],
    ["salt", 1, "1.0"],
    ["salt", 1.04, "1.0"],
    ["salt", 1.05, "1.1"],
    ["salt", 0.75, "0.75"],
    ["salt", 0.013, "0.01"],
    ["salt", 0.0125, "0"],
  ])("%s %d is declared as %s", (item, amount, text) => {
    expect(roundDeclared(item, amount).text).toBe(text);
  });
});
