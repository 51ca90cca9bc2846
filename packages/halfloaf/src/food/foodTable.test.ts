import { describe, expect, test } from "vitest";
import { parseFoodTable } from "./foodTable.ts";
import { NUTRIENT_NAMES } from "./nutrient.ts";

const HEADER = ["id", "source", "proteinKcalPerG", "fatKcalPerG", "carbohydrateKcalPerG", ...NUTRIENT_NAMES];

function toCsv(...rows: Record<string, string>[]): string {
  return `${[HEADER.join(","), ...rows.map((row) => HEADER.map((name) => row[name] ?? "").join(","))].join("\n")}\n`;
}

const bread = { id: "bread", source: "a table", energyKcal: "250", proteinG: "9.5", ironMg: "0" };
const facts = (id: string) => ({
  id,
  group: "bread",
  names: { british: ["bread"], american: ["bread"] },
  diet: "vegan",
  hygiene: "ready-to-eat",
  allergens: { eu: ["gluten"], us: ["wheat"] },
  refusePct: 0,
  keeping: { unopened: { "dry-store": 3 }, opened: { "dry-store": 2 }, authority: "common practice, no source" },
});

function readIssues(...files: { name: string; csv: string; facts: unknown }[]) {
  const parsed = parseFoodTable(files);
  return parsed.ok ? [] : parsed.issues.map(({ path, expected, received }) => [path.join("/"), expected, received]);
}

describe("a sound table", () => {
  const files = [
    { name: "a", csv: toCsv(bread), facts: [facts("bread")] },
    {
      name: "b",
      csv: toCsv({ ...bread, id: "roll", proteinKcalPerG: "4.05", fatKcalPerG: "8.37", carbohydrateKcalPerG: "4.12" }),
      facts: [facts("roll")],
    },
  ];
  const parsed = parseFoodTable(files);
  const table = parsed.ok ? parsed.table : new Map();

  test("joins figures and facts of every file by id", () => {
    expect([...table.keys()]).toEqual(["bread", "roll"]);
    expect(table.get("bread")).toMatchObject({
      source: "a table",
      group: "bread",
      pieces: [],
      vegetableOrFruit: false,
    });
  });

  test("a blank figure is absent, a zero is zero", () => {
    expect(table.get("bread").composition).toEqual({ energyKcal: 250, proteinG: 9.5, ironMg: 0 });
    expect("energyFactors" in table.get("bread")).toBe(false);
  });

  test("energy factors stand together", () => {
    expect(table.get("roll").energyFactors).toEqual({
      proteinKcalPerG: 4.05,
      fatKcalPerG: 8.37,
      carbohydrateKcalPerG: 4.12,
    });
  });

  test("the factor of a component the food has none of may be blank, since it multiplies nothing", () => {
    const oil = {
      id: "oil",
      source: "a table",
      proteinG: "0",
      fatG: "100",
      carbohydrateByDifferenceG: "0",
      fatKcalPerG: "8.84",
    };
    const read = parseFoodTable([{ name: "a", csv: toCsv(oil), facts: [facts("oil")] }]);
    const factors = { proteinKcalPerG: 0, fatKcalPerG: 8.84, carbohydrateKcalPerG: 0 };
    expect(read.ok && read.table.get("oil")?.energyFactors).toEqual(factors);
    const unknown = toCsv({ ...oil, proteinG: "" });
    expect(readIssues({ name: "a", csv: unknown, facts: [facts("oil")] })).toEqual([
      ["a.csv/2/proteinKcalPerG", "all three factors or none", "nothing"],
    ]);
  });

  test("lines may end the Windows way", () => {
    expect(
      parseFoodTable([{ name: "a", csv: toCsv(bread).replaceAll("\n", "\r\n"), facts: [facts("bread")] }]).ok,
    ).toBe(true);
  });
});

describe("faults", () => {
  test("all of all files come at once with file, line and column", () => {
    const csv = toCsv(
      { ...bread, proteinG: "trace" },
      { ...bread, id: "Bad Id", source: " ", ironMg: "-1", zincMg: "1e3", fatKcalPerG: "9" },
    );
    expect(readIssues({ name: "a", csv, facts: [{ ...facts("bread"), refusePct: 100, colour: "brown" }, 7] })).toEqual([
      ["a.csv/2/proteinG", "a decimal number or nothing", '"trace"'],
      ["a.csv/3/id", "/^[a-z0-9]+(-[a-z0-9]+)*$/", '"Bad Id"'],
      ["a.csv/3/source", "a source", "nothing"],
      ["a.csv/3/ironMg", "a decimal number or nothing", '"-1"'],
      ["a.csv/3/zincMg", "a decimal number or nothing", '"1e3"'],
      ["a.csv/3/proteinKcalPerG", "all three factors or none", "nothing"],
      ["a.csv/3/carbohydrateKcalPerG", "all three factors or none", "nothing"],
      ["a.json/0/refusePct", "<100", "100"],
      ["a.json/0/colour", "never", '"colour"'],
      ["a.json/1", "Object", "7"],
    ]);
  });

  test("a header that differs is named at its first difference", () => {
    const csv = toCsv(bread).replace("energyKj", "energyKJ");
    expect(readIssues({ name: "a", csv, facts: [] })).toEqual([["a.csv/1/7", "energyKj", "energyKJ"]]);
    expect(readIssues({ name: "a", csv: "id,source", facts: [] })).toEqual([
      ["a.csv/1/3", "proteinKcalPerG", "no further column"],
    ]);
  });

  test("a row with too few fields, a quotation mark or nothing at all is refused", () => {
    const csv = `${toCsv({ ...bread, source: '"quoted"' })}bread,short\n\n`;
    expect(readIssues({ name: "a", csv, facts: [] }).map(([path, , received]) => [path, received])).toEqual([
      ["a.csv/2", "a quotation mark"],
      ["a.csv/3", "2 fields"],
      ["a.csv/4", "1 fields"],
    ]);
  });

  test("facts must be the same foods in the same order", () => {
    const csv = toCsv(bread, { ...bread, id: "roll" });
    expect(readIssues({ name: "a", csv, facts: [facts("roll"), facts("bread")] })).toEqual([
      ["a.json/0/id", "bread", "roll"],
    ]);
    expect(readIssues({ name: "a", csv, facts: [facts("bread")] })).toEqual([
      ["a.json/1/id", "roll", "no further food"],
    ]);
  });

  test("an id stands once in all files", () => {
    const file = { csv: toCsv(bread), facts: [facts("bread")] };
    expect(readIssues({ name: "a", ...file }, { name: "b", ...file })).toEqual([
      ["b.csv/2/id", "an id not used before", "bread"],
    ]);
  });

  test("facts that are no list are refused", () => {
    expect(readIssues({ name: "a", csv: toCsv(), facts: {} })).toEqual([["a.json", "Array", "Object"]]);
  });
});
