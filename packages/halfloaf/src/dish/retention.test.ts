import { readFileSync } from "node:fs";
import { loadStarterDishes } from "@halfloaf/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Composition, NUTRIENT_NAMES, type Nutrient } from "../food/nutrient.ts";
import { applyRetention, parseRetentionTable, type RetentionTable } from "./retention.ts";

const file = JSON.parse(readFileSync(new URL("../../../../data/retention.json", import.meta.url), "utf8"));
const parsed = parseRetentionTable(file);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
const table: RetentionTable = parsed.value;

const composition = fc
  .dictionary(fc.constantFrom(...NUTRIENT_NAMES), fc.double({ min: 0, max: 1000, noNaN: true }))
  .map((record): Composition => ({ ...record }));
const code = fc.constantFrom(...table.rows.keys());

describe("laws", () => {
  test("cooking adds nothing, and the unknown stays unknown", () => {
    fc.assert(
      fc.property(composition, code, (raw, of) => {
        const left = applyRetention(raw, of, table);
        expect(Object.keys(left).sort()).toEqual(Object.keys(raw).sort());
        for (const [name, amount] of Object.entries(left)) {
          expect(amount).toBeLessThanOrEqual(raw[name as Nutrient] as number);
        }
      }),
    );
  });

  test("twice the food keeps twice as much", () => {
    fc.assert(
      fc.property(composition, code, (raw, of) => {
        const double = Object.fromEntries(Object.entries(raw).map(([name, amount]) => [name, amount * 2]));
        const [once, twice] = [applyRetention(raw, of, table), applyRetention(double, of, table)];
        for (const name of Object.keys(raw) as Nutrient[]) {
          expect(twice[name]).toBeCloseTo((once[name] as number) * 2, 6);
        }
      }),
    );
  });

  test("what has no factor is kept whole: water, protein, fat, fibre, vitamins D, E and K, selenium, energy", () => {
    const kept = [
      "waterG",
      "proteinG",
      "fatG",
      "fibreG",
      "vitaminDUg",
      "vitaminEMg",
      "vitaminKUg",
      "seleniumUg",
    ] as const;
    fc.assert(
      fc.property(code, (of) => {
        const raw = Object.fromEntries([...kept, "energyKj"].map((name) => [name, 7]));
        expect(applyRetention(raw, of, table)).toEqual(raw);
      }),
    );
  });

  test("of a code the table does not hold, only what cooking cannot take from is known", () => {
    const raw: Composition = { vitaminCMg: 10, potassiumMg: 200, proteinG: 3, fibreG: 2 };
    expect(applyRetention(raw, "9999", table)).toEqual({ proteinG: 3, fibreG: 2 });
  });
});

describe("the table", () => {
  test("holds every code that a starter dish names", () => {
    const dishes = loadStarterDishes().flatMap(({ content }) => content as { makings: { retention?: string }[] }[]);
    const codes = new Set(dishes.flatMap(({ makings }) => makings.map(({ retention }) => retention ?? "0550")));
    expect(codes.size).toBeGreaterThan(20);
    expect([...codes].filter((each) => !table.rows.has(each))).toEqual([]);
  });

  test("re-heating keeps 85 % or more, save the choline of poultry", () => {
    const reheated = [...table.rows.values()].filter(({ description }) => description.includes("re-heated"));
    expect(reheated.length).toBeGreaterThan(15);
    for (const { description, percent } of reheated) {
      const others = Object.entries(percent).filter(
        ([name]) => name !== "cholineMg" || !/Chicken|Turkey/.test(description),
      );
      expect([description, Math.min(...others.map(([, each]) => each)) >= 85]).toEqual([description, true]);
    }
  });

  test("a row says its source with its code", () => {
    expect(table.rows.get("3455")?.source).toBe(
      "USDA Table of Nutrient Retention Factors, Release 6 (2007), code 3455",
    );
  });

  test("all faults come at once", () => {
    const [first, second] = file.rows;
    const result = parseRetentionTable({
      ...file,
      columns: [...file.columns.slice(0, -1), ["calciumMg"]],
      rows: [{ ...first, percent: [100] }, second, second],
    });
    expect(result.ok ? [] : result.issues.map(({ code: of, path }) => `${of} ${path.join(".")}`)).toEqual([
      "unique columns.16.0",
      "width rows.0.percent",
      "unique rows.2.code",
    ]);
  });

  test.each([
    [101, "max_value"],
    [-1, "min_value"],
    ["90", "number"],
  ])("a factor of %j is refused", (factor, of) => {
    const percent = [factor, ...file.rows[0].percent.slice(1)];
    const result = parseRetentionTable({ ...file, rows: [{ ...file.rows[0], percent }] });
    expect(result).toMatchObject({ ok: false, issues: [{ code: of, path: ["rows", 0, "percent", 0] }] });
  });
});
