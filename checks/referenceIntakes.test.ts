import { parseReferenceTables, type ReferenceComponent, referencesFor } from "halfloaf/intake";
import { describe, expect, test } from "vitest";
import { readDataFile } from "./readDataFile.ts";

const parsed = parseReferenceTables({
  nasem: readDataFile("references/nasem.json"),
  efsa: readDataFile("references/efsa.json"),
  who: readDataFile("references/who.json"),
});
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
const tables = parsed.value;

type Six = readonly [number, number, number, number, number, number];
const AGES = [25, 40, 60] as const;
const NEED_KJ = 9000;

/** A day's amounts for men of 19-30, 31-50, 51-70, then women of the same ages; undefined where there is none. */
function amounts(authority: "nasem" | "efsa", component: ReferenceComponent, basis: string): (number | undefined)[] {
  return (["male", "female"] as const).flatMap((sex) =>
    AGES.map((ageYears) => {
      const eater = { sex, ageYears, heightCm: 170, massKg: 65, activity: "active", phytateMg: 300 } as const;
      const found = referencesFor(eater, authority, tables, NEED_KJ);
      if (found.kind !== "references") throw new Error(found.reason);
      return found.references.find(
        (each) => each.component === component && each.basis === basis && each.authority === authority,
      )?.amountPerDay;
    }),
  );
}

/**
 * **Source**: National Academies, Dietary Reference Intakes tables: IOM 1998 (B12, folate), 2000 (vitamin C),
 * 2001 (iron, zinc, retinol), 2011 (calcium, vitamin D), NASEM 2019 (sodium, potassium: from memory).
 */
describe("NASEM, men then women of 19-30, 31-50, 51-70 years", () => {
  test.each<[ReferenceComponent, string, Six]>([
    ["ironMg", "RDA", [8, 8, 8, 18, 18, 8]],
    ["ironMg", "UL", [45, 45, 45, 45, 45, 45]],
    ["calciumMg", "RDA", [1000, 1000, 1000, 1000, 1000, 1200]],
    ["calciumMg", "UL", [2500, 2500, 2000, 2500, 2500, 2000]],
    ["zincMg", "RDA", [11, 11, 11, 8, 8, 8]],
    ["zincMg", "UL", [40, 40, 40, 40, 40, 40]],
    ["vitaminCMg", "RDA", [90, 90, 90, 75, 75, 75]],
    ["vitaminCMg", "UL", [2000, 2000, 2000, 2000, 2000, 2000]],
    ["vitaminDUg", "RDA", [15, 15, 15, 15, 15, 15]],
    ["vitaminDUg", "UL", [100, 100, 100, 100, 100, 100]],
    ["vitaminB12Ug", "RDA", [2.4, 2.4, 2.4, 2.4, 2.4, 2.4]],
    ["folateDfeUg", "RDA", [400, 400, 400, 400, 400, 400]],
    ["folicAcidUg", "UL", [1000, 1000, 1000, 1000, 1000, 1000]],
    ["retinolUg", "UL", [3000, 3000, 3000, 3000, 3000, 3000]],
    ["sodiumMg", "AI", [1500, 1500, 1500, 1500, 1500, 1500]],
    ["sodiumMg", "CDRR", [2300, 2300, 2300, 2300, 2300, 2300]],
    ["potassiumMg", "AI", [3400, 3400, 3400, 2600, 2600, 2600]],
  ])("%s %s: %j", (component, basis, expected) => {
    expect(amounts("nasem", component, basis)).toEqual(expected);
  });

  test.each<[ReferenceComponent]>([["vitaminB12Ug"], ["folateDfeUg"], ["magnesiumMg"], ["sodiumMg"], ["potassiumMg"]])(
    "%s in food has no UL",
    (component) => {
      expect(amounts("nasem", component, "UL")).toEqual(Array(6).fill(undefined));
    },
  );
});

/**
 * **Source**: EFSA, dietary reference values, summary tables of 2019; upper levels of EFSA from memory. Zinc at 300 mg
 * of phytate a day; iron of women by the menopause, here taken from age.
 */
describe("EFSA, men then women of 19-30, 31-50, 51-70 years", () => {
  test.each<[ReferenceComponent, string, Six]>([
    ["ironMg", "PRI", [11, 11, 11, 16, 16, 11]],
    ["calciumMg", "PRI", [950, 950, 950, 950, 950, 950]],
    ["calciumMg", "UL", [2500, 2500, 2500, 2500, 2500, 2500]],
    ["zincMg", "PRI", [9.4, 9.4, 9.4, 7.5, 7.5, 7.5]],
    ["zincMg", "UL", [25, 25, 25, 25, 25, 25]],
    ["vitaminCMg", "PRI", [110, 110, 110, 95, 95, 95]],
    ["vitaminDUg", "AI", [15, 15, 15, 15, 15, 15]],
    ["vitaminDUg", "UL", [100, 100, 100, 100, 100, 100]],
    ["vitaminB12Ug", "AI", [4, 4, 4, 4, 4, 4]],
    ["folateDfeUg", "PRI", [330, 330, 330, 330, 330, 330]],
    ["folicAcidUg", "UL", [1000, 1000, 1000, 1000, 1000, 1000]],
  ])("%s %s: %j", (component, basis, expected) => {
    expect(amounts("efsa", component, basis)).toEqual(expected);
  });

  test("vitamin C and B12 have no UL", () => {
    expect(amounts("efsa", "vitaminCMg", "UL")).toEqual(Array(6).fill(undefined));
    expect(amounts("efsa", "vitaminB12Ug", "UL")).toEqual(Array(6).fill(undefined));
  });
});

/** **Source**: IOM 2001, iron: for vegetarians 1.8 times, as iron is taken up less. */
test("without meat and fish IOM asks for 14.4 mg of iron (men) and 32.4 mg (women of 19 to 50)", () => {
  for (const [sex, expected] of [
    ["male", 14.4],
    ["female", 32.4],
  ] as const) {
    const eater = { sex, ageYears: 25, heightCm: 170, massKg: 65, activity: "active", diet: "vegetarian" } as const;
    const found = referencesFor(eater, "nasem", tables, NEED_KJ);
    const iron =
      found.kind === "references" ? found.references.find(({ component }) => component === "ironMg") : undefined;
    expect(iron?.amountPerDay).toBeCloseTo(expected, 9);
  }
});
