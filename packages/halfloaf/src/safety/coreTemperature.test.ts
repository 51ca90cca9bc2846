import { loadStarterFoods } from "@halfloaf/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseFoodTable } from "../food/foodTable.ts";
import { CORE_KINDS, coreKindOf, coreRule, parseCoreTemperatures } from "./coreTemperature.ts";
import { equivalentMinutes } from "./lethality.ts";
import { readSafetyFile, readSafetyTables } from "./safetyTables.testing.ts";

const { coreTemperatures: table } = readSafetyTables();
const kind = fc.constantFrom(...CORE_KINDS);

describe("the strictest rule", () => {
  test("meets the rule of each authority: at least as hot, as lethal and as long at rest", () => {
    fc.assert(
      fc.property(kind, fc.constantFrom("us" as const, "uk" as const), (of, one) => {
        const [strictest, chosen] = [coreRule(table, of, "strictest"), coreRule(table, of, one)];
        if (strictest === undefined || chosen === undefined) throw new Error(of);
        expect(strictest.tempC).toBeGreaterThanOrEqual(chosen.tempC);
        expect(strictest.restMinutes).toBeGreaterThanOrEqual(chosen.restMinutes);
        const reference = { referenceC: chosen.tempC, minutes: Math.max(chosen.holdMinutes, 1e-12) };
        const needed = equivalentMinutes(strictest.tempC, reference);
        expect(strictest.holdMinutes).toBeGreaterThanOrEqual(needed - 1e-9);
      }),
    );
  });

  test("names every authority it meets", () => {
    expect(coreRule(table, "poultry", "strictest")?.authority).toBe("US FSIS and UK FSA");
  });
});

describe("cases", () => {
  test.each([
    ["poultry", "us", 73.9, 0, 0],
    ["minced-meat", "us", 71.1, 0, 0],
    ["whole-meat", "us", 62.8, 0, 3],
    ["fish", "us", 62.8, 0, 0],
    ["egg", "us", 71.1, 0, 0],
    ["leftover", "us", 73.9, 0, 0],
    ["cooked-ham", "us", 60, 0, 0],
    ["poultry", "uk", 70, 2, 0],
    ["fish", "uk", 70, 2, 0],
    ["whole-meat", "strictest", 70, 2, 3],
    ["fish", "strictest", 70, 2, 0],
  ] as const)("%s, %s: %d C, held %d min, rest %d min", (of, choice, tempC, holdMinutes, restMinutes) => {
    expect(coreRule(table, of, choice)).toMatchObject({ tempC, holdMinutes, restMinutes });
  });

  test("poultry to the strictest: 73.9 C held for 2 x 10^(-3.9 / 7.5) min", () => {
    expect(coreRule(table, "poultry", "strictest")?.holdMinutes).toBeCloseTo(0.604, 3);
  });

  test("a choice that has no row takes what the others say", () => {
    const [us] = table.filter((row) => row.kind === "poultry");
    expect(coreRule(us ? [us] : [], "poultry", "uk")).toMatchObject({ tempC: 73.9, authority: "US FSIS" });
    expect(coreRule([], "poultry", "uk")).toBeUndefined();
  });
});

describe("the kind of a starter food", () => {
  const parsed = parseFoodTable(loadStarterFoods());
  const foods = parsed.ok ? parsed.table : new Map();

  test.each([
    ["chicken-thigh-boned", "poultry"],
    ["chicken-liver", "poultry"],
    ["turkey-mince", "poultry"],
    ["beef-mince-lean", "minced-meat"],
    ["sausages-pork", "minced-meat"],
    ["beef-liver", "minced-meat"],
    ["pork-chop", "whole-meat"],
    ["beef-stewing", "whole-meat"],
    ["bacon-streaky", "whole-meat"],
    ["cod-fillet", "fish"],
    ["prawns-frozen", "fish"],
    ["egg", "egg"],
    ["ham-cooked", undefined],
    ["carrot", undefined],
    ["tuna-tinned-water", undefined],
  ])("%s: %s", (id, of) => {
    expect(foods.has(id)).toBe(true);
    expect(coreKindOf(foods.get(id))).toBe(of);
  });

  test("every raw meat, fish and egg has one", () => {
    const raw = [...foods.values()].filter(({ hygiene }) => hygiene.startsWith("raw-"));
    expect(raw.length).toBeGreaterThan(40);
    expect(raw.filter((food) => coreKindOf(food) === undefined)).toEqual([]);
  });

  test("meat of an unknown cut counts as minced", () => {
    const names = { british: ["venison"], american: ["venison"] };
    expect(coreKindOf({ group: "meat", hygiene: "raw-meat", names })).toBe("minced-meat");
  });

  test("a cut that is minced counts as minced", () => {
    const names = { british: ["shoulder mince"], american: ["ground shoulder"] };
    expect(coreKindOf({ group: "meat", hygiene: "raw-meat", names })).toBe("minced-meat");
  });
});

describe("reading", () => {
  test("all faults come at once", () => {
    const { title, rows } = readSafetyFile("core-temperatures");
    const result = parseCoreTemperatures({
      title,
      rows: [{ ...rows[0], tempC: 20 }, { ...rows[1], authority: "" }, { kind: "soup" }],
    });
    const paths = result.ok ? [] : result.issues.map(({ path }) => path.join("."));
    expect(paths).toEqual(expect.arrayContaining(["rows.0.tempC", "rows.1.authority", "rows.2.kind", "rows.2.source"]));
  });
});
