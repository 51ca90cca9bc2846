import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ACTIVITIES, type Eater, PHYTATE_LEVELS_MG } from "./eater.ts";
import { type ReferenceIntake, type References, referencesFor } from "./referenceIntake.ts";
import { AUTHORITIES, parseReferenceTables, type ReferenceTables } from "./referenceTable.ts";

const files = Object.fromEntries(
  AUTHORITIES.map((name) => [
    name,
    JSON.parse(readFileSync(new URL(`../../../../data/references/${name}.json`, import.meta.url), "utf8")),
  ]),
) as Record<(typeof AUTHORITIES)[number], { rows: Record<string, unknown>[] }>;
const parsed = parseReferenceTables(files);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
const tables: ReferenceTables = parsed.value;

const NEED_KJ = 10_000;
const woman: Eater = { sex: "female", ageYears: 30, heightCm: 165, massKg: 60, activity: "active" };
const man: Eater = { ...woman, sex: "male", heightCm: 178, massKg: 72 };
const adult: fc.Arbitrary<Eater> = fc.record(
  {
    sex: fc.constantFrom("female" as const, "male" as const),
    ageYears: fc.double({ min: 19, max: 120, noNaN: true }),
    heightCm: fc.double({ min: 140, max: 200, noNaN: true }),
    massKg: fc.double({ min: 45, max: 110, noNaN: true }),
    activity: fc.constantFrom(...ACTIVITIES),
    diet: fc.constantFrom("vegan" as const, "vegetarian" as const, "fish" as const, "meat" as const),
    menopause: fc.constantFrom("before" as const, "after" as const),
    phytateMg: fc.constantFrom(...PHYTATE_LEVELS_MG),
  },
  { requiredKeys: ["sex", "ageYears", "heightCm", "massKg", "activity"] },
);
const authority = fc.constantFrom("nasem" as const, "efsa" as const);

type Known = Extract<References, { kind: "references" }>;

function known(eater: Eater, from: "nasem" | "efsa", energyKj = NEED_KJ): Known {
  const result = referencesFor(eater, from, tables, energyKj);
  if (result.kind !== "references") throw new Error(result.kind);
  return result;
}

function find(eater: Eater, from: "nasem" | "efsa", component: string, basis: string): ReferenceIntake | undefined {
  return known(eater, from).references.find((each) => each.component === component && each.basis === basis);
}

describe("laws", () => {
  test("every adult has positive amounts with a source, each component, kind and basis once", () => {
    fc.assert(
      fc.property(adult, authority, (eater, from) => {
        const { references } = known(eater, from);
        const keys = references.map(({ component, kind, basis, authority: by }) => [component, kind, basis, by].join());
        expect(new Set(keys).size).toBe(keys.length);
        expect(references.every(({ amountPerDay, source }) => amountPerDay > 0 && source !== "")).toBe(true);
        for (const component of ["calciumMg", "ironMg", "zincMg", "vitaminCMg", "proteinG", "vegetablesFruitG"]) {
          expect(references.filter((each) => each.component === component && each.kind === "at-least").length).toBe(1);
        }
      }),
    );
  });

  test("what is wanted at least stays below what is wanted at most", () => {
    fc.assert(
      fc.property(adult, authority, fc.double({ min: 7000, max: 15_000, noNaN: true }), (eater, from, energyKj) => {
        const { references } = known(eater, from, energyKj);
        for (const least of references.filter(({ kind }) => kind === "at-least")) {
          for (const most of references.filter((each) => each.kind === "at-most")) {
            if (least.component === most.component) expect(least.amountPerDay).toBeLessThanOrEqual(most.amountPerDay);
          }
        }
      }),
    );
  });

  test("food is never held against the upper limits of supplements and added forms", () => {
    fc.assert(
      fc.property(adult, authority, (eater, from) => {
        const { references, supplementLimits } = known(eater, from);
        const limited = references.filter(({ basis }) => basis === "UL").map(({ component }) => component);
        for (const component of ["magnesiumMg", "niacinMg", "folateDfeUg", "folateFoodUg", "vitaminARaeUg"] as const) {
          expect(limited).not.toContain(component);
        }
        expect(limited).toEqual(expect.arrayContaining(["retinolUg", "folicAcidUg"]));
        expect(supplementLimits.map(({ component }) => component)).toContain("magnesiumMg");
      }),
    );
  });

  test("figures by energy grow in proportion to it, all others stay", () => {
    fc.assert(
      fc.property(adult, authority, fc.double({ min: 1, max: 3, noNaN: true }), (eater, from, times) => {
        const [once, more] = [known(eater, from).references, known(eater, from, NEED_KJ * times).references];
        for (const [at, { amountPerDay, component }] of once.entries()) {
          const ratio = (more[at] as ReferenceIntake).amountPerDay / amountPerDay;
          expect([component, Math.min(Math.abs(ratio - 1), Math.abs(ratio - times)) < 1e-9]).toEqual([component, true]);
        }
      }),
    );
  });
});

describe("no figures", () => {
  test.each([
    [{ ...woman, stage: "pregnancy" as const }, "pregnancy"],
    [{ ...woman, stage: "lactation" as const }, "lactation"],
    [{ ...woman, ageYears: 18 }, "under-19"],
  ])("%j is referred to care: %s", (eater, reason) => {
    expect(referencesFor(eater, "nasem", tables, NEED_KJ)).toEqual({ kind: "refer", reason });
    expect(referencesFor(eater, "efsa", tables, NEED_KJ)).toEqual({ kind: "refer", reason });
  });
});

describe("cases", () => {
  test.each([
    [30.9, 310, 18],
    [31, 320, 18],
    [50.9, 320, 18],
    [51, 320, 8],
  ])("a woman of %d years: magnesium %d mg, iron %d mg", (ageYears, magnesiumMg, ironMg) => {
    expect(find({ ...woman, ageYears }, "nasem", "magnesiumMg", "RDA")?.amountPerDay).toBe(magnesiumMg);
    expect(find({ ...woman, ageYears }, "nasem", "ironMg", "RDA")?.amountPerDay).toBe(ironMg);
  });

  test.each(["vegan", "vegetarian"] as const)("a %s diet asks for 1.8 times the iron of IOM, and says so", (diet) => {
    const iron = find({ ...woman, diet }, "nasem", "ironMg", "RDA");
    expect(iron?.amountPerDay).toBeCloseTo(32.4, 9);
    expect(iron?.note).toContain("1.8");
    expect(find({ ...woman, diet }, "nasem", "ironMg", "UL")?.amountPerDay).toBe(45);
    expect(find({ ...woman, diet }, "efsa", "ironMg", "PRI")?.amountPerDay).toBe(16);
  });

  test("a diet with fish keeps the iron as it is", () => {
    expect(find({ ...man, diet: "fish" }, "nasem", "ironMg", "RDA")?.amountPerDay).toBe(8);
  });

  test("EFSA's iron goes by the menopause, and an assumed one is said", () => {
    expect(find({ ...woman, menopause: "after" }, "efsa", "ironMg", "PRI")?.amountPerDay).toBe(11);
    expect(find({ ...woman, ageYears: 55, menopause: "before" }, "efsa", "ironMg", "PRI")?.amountPerDay).toBe(16);
    expect(find({ ...woman, ageYears: 55 }, "efsa", "ironMg", "PRI")?.amountPerDay).toBe(11);
    expect(find(woman, "efsa", "ironMg", "PRI")?.note).toContain("not stated");
    expect(find({ ...woman, menopause: "before" }, "efsa", "ironMg", "PRI")?.note).not.toContain("not stated");
    expect(find(man, "efsa", "ironMg", "PRI")?.note).not.toContain("not stated");
  });

  test("EFSA's zinc goes by the phytate, the highest level where none is stated", () => {
    const zinc = (phytateMg?: Eater["phytateMg"]) => find({ ...man, phytateMg }, "efsa", "zincMg", "PRI");
    expect(PHYTATE_LEVELS_MG.map((level) => zinc(level)?.amountPerDay)).toEqual([9.4, 11.7, 14, 16.3]);
    expect(zinc()?.amountPerDay).toBe(16.3);
    expect(zinc()?.note).toContain("not stated");
    expect(zinc(600)?.note).not.toContain("not stated");
  });

  test("10 MJ: EFSA's thiamin 1 mg and niacin 16 mg; WHO's free sugars 1000 kJ of 17 kJ a gram", () => {
    expect(find(man, "efsa", "thiaminMg", "PRI")?.amountPerDay).toBeCloseTo(1, 9);
    expect(find(man, "efsa", "niacinMg", "PRI")?.amountPerDay).toBeCloseTo(16, 9);
    expect(find(man, "efsa", "freeSugarsG", "WHO")?.amountPerDay).toBeCloseTo(1000 / 17, 9);
    expect(find(man, "nasem", "freeSugarsG", "WHO-conditional")?.amountPerDay).toBeCloseTo(500 / 17, 9);
    expect(find(man, "nasem", "saturatesG", "WHO")?.amountPerDay).toBeCloseTo(1000 / 37, 9);
  });

  test("protein goes by body mass", () => {
    expect(find(man, "nasem", "proteinG", "RDA")?.amountPerDay).toBeCloseTo(57.6, 9);
    expect(find(man, "efsa", "proteinG", "PRI")?.amountPerDay).toBeCloseTo(59.76, 9);
  });

  test("EFSA's calcium changes at 25 years", () => {
    expect(find({ ...man, ageYears: 24.9 }, "efsa", "calciumMg", "PRI")?.amountPerDay).toBe(1000);
    expect(find({ ...man, ageYears: 25 }, "efsa", "calciumMg", "PRI")?.amountPerDay).toBe(950);
  });
});

describe("reading", () => {
  const row = { component: "ironMg", kind: "at-least", basis: "RDA", male: [1], female: [1], source: "a table" };
  const table = (name: string, ...rows: unknown[]) => ({ authority: name, title: "A title", fromAges: [19], rows });
  const sound = { nasem: table("nasem", row), efsa: table("efsa", row), who: table("who", row) };
  const paths = (input: Record<keyof typeof sound, unknown>) => {
    const result = parseReferenceTables(input);
    return result.ok ? [] : result.issues.map(({ code, path }) => `${code} ${path.join(".")}`);
  };

  test("a sound table has no faults", () => {
    expect(paths(sound)).toEqual([]);
  });

  test("all faults of all tables come at once", () => {
    const faulty = {
      nasem: table("efsa", { ...row, male: [1, 2] }, row),
      efsa: table("efsa", { ...row, per: "percent-energy" }, { ...row, male: undefined, female: undefined }),
      who: table("who", { ...row, source: "", component: "gold" }),
    };
    expect(paths(faulty)).toEqual([
      "authority nasem.authority",
      "bands nasem.rows.0.male",
      "unique nasem.rows.1.female",
      "unique nasem.rows.1.male",
      "energy efsa.rows.0.per",
      "amounts efsa.rows.1",
      "picklist who.rows.0.component",
      "non_empty who.rows.0.source",
    ]);
  });

  test("an amount of zero or an unknown key is refused", () => {
    expect(paths({ ...sound, who: table("who", { ...row, male: [0] }) })).toEqual(["gt_value who.rows.0.male.0"]);
    expect(paths({ ...sound, who: table("who", { ...row, unit: "mg" }) })).toEqual(["strict_object who.rows.0.unit"]);
  });
});
