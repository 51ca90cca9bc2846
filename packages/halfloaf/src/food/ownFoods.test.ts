import { loadStarterFoods } from "@halfloaf/data";
import { describe, expect, test } from "vitest";
import { parseFoodTable } from "./foodTable.ts";
import { checkOwnFoods, formatOwnFoods, NO_OWN_FOODS, type OwnFoods, parseOwnFoods, withOwnFoods } from "./ownFoods.ts";

const parsed = parseFoodTable(loadStarterFoods());
const table = parsed.ok ? parsed.table : new Map();

const kelp = {
  id: "kelp-crackers",
  group: "snack",
  names: { british: ["kelp crackers"], american: ["kelp crackers"] },
  diet: "vegan",
  hygiene: "ready-to-eat",
  allergens: { eu: [], us: [] },
  refusePct: 0,
  keeping: { unopened: { "dry-store": 90 }, opened: { "dry-store": 14 }, authority: "the label" },
  source: "the label",
  composition: { energyKcal: 410, proteinG: 9 },
};
const override = {
  food: "chickpeas-dried",
  from: "a table: chickpeas",
  figures: { proteinG: 19.5 },
  sources: { proteinG: "a table, 12" },
  unknown: ["ironMg"],
};

function file(over: object = {}) {
  return { ...NO_OWN_FOODS, foods: [kelp], overrides: [override], ...over };
}

function readIssues(input: unknown): string[] {
  const read = parseOwnFoods(input);
  return read.ok ? [] : read.issues.map(({ path }) => path.join("/"));
}

function own(over: object = {}): OwnFoods {
  const read = parseOwnFoods(file(over));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

describe("a file of own foods", () => {
  test("is read back as it was written", () => {
    expect(parseOwnFoods(JSON.parse(formatOwnFoods(own())))).toEqual({ ok: true, value: own() });
    expect(readIssues(JSON.parse(formatOwnFoods(NO_OWN_FOODS)))).toEqual([]);
  });

  test.each([
    [{ format: "other" }, "format"],
    [{ version: 2 }, "version"],
    [{ overrides: [{ ...override, figures: { proteinG: -1 } }] }, "overrides/0/figures/proteinG"],
    [{ overrides: [{ ...override, sources: {} }] }, "overrides/0/sources"],
    [{ overrides: [{ ...override, sources: { proteinG: "a", fatG: "b" } }] }, "overrides/0/sources"],
    [{ overrides: [{ ...override, unknown: ["proteinG"] }] }, "overrides/0/unknown"],
    [{ overrides: [{ ...override, figures: { protein: 1 } }] }, "overrides/0/figures/protein"],
    [{ foods: [{ ...kelp, composition: { energyKcal: "1" } }] }, "foods/0/composition/energyKcal"],
    [{ foods: [{ ...kelp, source: "" }] }, "foods/0/source"],
  ])("with %j is refused", (over, path) => {
    expect(readIssues(file(over))).toEqual([path]);
  });

  test("of any length tells no more faults than a person can read, and takes no food that is endless", () => {
    const issues = readIssues(file({ foods: Array.from({ length: 20_000 }, () => ({ id: "x" })) }));
    expect(issues.length).toBeLessThan(600);
    const endless = { ...kelp, names: { british: Array.from({ length: 3000 }, () => "x"), american: ["x"] } };
    expect(readIssues(file({ foods: [kelp, endless] }))).toEqual(["foods/1"]);
  });

  test("a key that is no component cannot reach what all objects share", () => {
    const text =
      '{"format":"halfloaf-foods","version":1,"overrides":[{"food":"x","from":"y","figures":{"__proto__":{"polluted":1}},"sources":{}}]}';
    parseOwnFoods(JSON.parse(text));
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe("a table with own foods", () => {
  test("holds its foods, then the own ones, and overridden figures with their sources", () => {
    const before = structuredClone(table.get("chickpeas-dried"));
    const joined = withOwnFoods(table, own());
    expect([...joined.keys()]).toEqual([...table.keys(), "kelp-crackers"]);
    expect(joined.get("kelp-crackers")?.composition).toEqual({ energyKcal: 410, proteinG: 9 });
    const { ironMg: _iron, ...rest } = before.composition;
    expect(joined.get("chickpeas-dried")?.composition).toEqual({ ...rest, proteinG: 19.5 });
    expect(joined.get("chickpeas-dried")?.figureSources.proteinG).toBe("a table, 12");
    expect(joined.get("lentils-red-dried")).toBe(table.get("lentils-red-dried"));
    expect(table.get("chickpeas-dried")).toEqual(before);
  });

  test("may override an own food", () => {
    const laid = withOwnFoods(table, own({ overrides: [{ ...override, food: "kelp-crackers" }] }));
    expect(laid.get("kelp-crackers")?.composition).toEqual({ energyKcal: 410, proteinG: 19.5 });
  });

  test("is the same where they are laid over it again", () => {
    const once = withOwnFoods(table, own());
    expect(withOwnFoods(once, own())).toEqual(once);
    expect(withOwnFoods(table, NO_OWN_FOODS)).toBe(table);
  });

  test("holds an own food in place of its food of that id, and passes over figures of a food that nobody has", () => {
    const laid = withOwnFoods(
      table,
      own({ foods: [{ ...kelp, id: "onion" }], overrides: [{ ...override, food: "nobodys-food" }] }),
    );
    expect([laid.size, laid.get("onion")?.source]).toEqual([table.size, "the label"]);
  });

  test("tells all at once what does not fit it: an id used, a food that nobody has, a second override", () => {
    const overrides = [override, override, { ...override, food: "nobodys-food" }];
    const foods = [{ ...kelp, id: "chickpeas-dried" }, kelp, kelp];
    const issues = checkOwnFoods(table, own({ foods, overrides }));
    expect(issues.map(({ code, path }) => [code, path.join("/")])).toEqual([
      ["unique", "foods/0/id"],
      ["unique", "foods/2/id"],
      ["unique", "overrides/1/food"],
      ["food-unknown", "overrides/2/food"],
    ]);
  });
});
