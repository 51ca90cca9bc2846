import { describe, expect, test } from "vitest";
import { sourceOf } from "./FileSource.ts";
import { sourceOfFigure, type TableReading } from "./OfficialTable.ts";
import { readMappedTable } from "./readMappedTable.ts";
import { parseTableMapping } from "./tableMapping.ts";

const MAPPING = {
  format: "halfloaf-table-mapping",
  version: 1,
  title: "Table of the Outer Isles",
  asOf: "2021",
  csv: { encoding: "windows-1252", delimiter: ";", decimal: ",", thousands: "." },
  columns: { id: "Code", name: "Name" },
  figures: [
    { column: "kJ", component: "energyKj", unit: "kJ" },
    { column: "Carbohydrate", component: "carbohydrateAvailableG", unit: "g" },
    { column: "Fibre", component: "fibreG", unit: "g" },
    { column: "Salt", component: "sodiumMg", unit: "g", factor: 0.4 },
    { column: "Iron", component: "ironMg", unit: "ug" },
  ],
  words: [
    { word: "N", means: "unknown" },
    { word: "Tr", means: "zero" },
  ],
  below: "half",
  marks: "()*",
};

async function read(text: string, over: object = {}): Promise<TableReading> {
  const mapping = parseTableMapping({ ...MAPPING, ...over });
  if (!mapping.ok) throw new Error(JSON.stringify(mapping.issues));
  const bytes = Uint8Array.from(text, (character) => (character === "€" ? 0x80 : character.charCodeAt(0)));
  return readMappedTable(sourceOf("isles.csv", bytes), mapping.value);
}

const HEADER = "Code;Name;kJ;Carbohydrate;Fibre;Salt;Iron\r\n";

async function firstFood(row: string, over: object = {}, header = HEADER) {
  const reading = await read(header + row, over);
  if (reading.outcome !== "read") throw new Error(JSON.stringify(reading.issues));
  return { food: [...reading.table.foods.values()][0], issues: reading.issues };
}

describe("a table of any form", () => {
  test("is read by its mapping: encoding, decimal comma, units, factor", async () => {
    const { food, issues } = await firstFood("A1;Crème €;1.046;20,5;1,5;0,5;1.250\r\n");
    expect(issues).toEqual([]);
    expect(food).toMatchObject({ id: "A1", name: "Crème €", source: "Table of the Outer Isles, A1, as of 2021" });
    expect(food?.composition).toEqual({
      energyKj: 1046,
      energyKcal: 1046 / 4.184,
      carbohydrateAvailableG: 20.5,
      fibreG: 1.5,
      carbohydrateByDifferenceG: 22,
      sodiumMg: 200,
      ironMg: 1.25,
    });
  });

  test("an empty cell and a word for unknown are unknown; a trace and a bound say what they were taken as", async () => {
    const { food, issues } = await firstFood("A1;Broth;;n;Tr;<0,2;(12)\r\n");
    expect(issues).toEqual([]);
    expect(food?.composition).toEqual({ fibreG: 0, sodiumMg: 40, ironMg: 0.012 });
    expect(food && sourceOfFigure(food, "fibreG")).toBe('Table of the Outer Isles, A1, as of 2021: "Tr" taken as 0');
    expect(food && sourceOfFigure(food, "sodiumMg")).toMatch(/"<0,2" taken as 0.1$/);
    expect(food && sourceOfFigure(food, "energyKj")).toBeUndefined();
  });

  test.each([
    ["unknown", undefined],
    ["zero", 0],
    ["half", 40],
  ])("what is below a bound is %s as stated", async (below, expected) => {
    const { food } = await firstFood("A1;Broth;1;1;1;<0,2;1\r\n", { below });
    expect(food?.composition.sodiumMg).toBe(expected);
  });

  test("a cell that means nothing, a food twice and one without a name are told by line and column", async () => {
    const reading = await read(
      `${HEADER}A1;Broth;1.5;?;120;;\r\nA1;Again;1;1;1;1;1\r\nA2;;1;1;1;1;1\r\n;x;1;1;1;1;1\r\nA3;Many;1;1;1;1;1;1\r\n`,
    );
    expect(reading.issues.map(({ code, path, received }) => [code, path.join("/"), received])).toEqual([
      ["figure", "isles.csv/2/kJ", '"1.5"'],
      ["figure", "isles.csv/2/Carbohydrate", '"?"'],
      ["range", "isles.csv/2/Fibre", "120 g"],
      ["unique", "isles.csv/3/Code", '"A1"'],
      ["name", "isles.csv/4/Name", '""'],
      ["id", "isles.csv/5/Code", '""'],
      ["cells", "isles.csv/6", "8 cells"],
    ]);
  });

  test("figures for 100 mL go by the density, of the food before that of all", async () => {
    const header = "Code;Name;kJ;Carbohydrate;Fibre;Salt;Iron;Density\r\n";
    const over = {
      basis: { per: "100mL", densityGPerMl: 1.25 },
      columns: { ...MAPPING.columns, densityGPerMl: "Density" },
    };
    expect((await firstFood("A1;Syrup;1.000;;;;;2\r\n", over, header)).food?.composition.energyKj).toBe(500);
    expect((await firstFood("A1;Syrup;1.000;;;;;\r\n", over, header)).food?.composition.energyKj).toBe(800);
    const unknown = await firstFood("A1;Syrup;1.000;;;;;\r\n", { ...over, basis: { per: "100mL" } }, header);
    expect(unknown.food?.composition).toEqual({});
    expect(unknown.issues.map(({ code, path }) => [code, path.join("/")])).toEqual([["basis", "isles.csv/2/Density"]]);
  });

  test("figures for a portion go by its mass", async () => {
    const { food } = await firstFood("A1;Bar;400;10;1;0,1;1\r\n", { basis: { per: "portion", portionG: 40 } });
    expect(food?.composition).toMatchObject({ energyKj: 1000, carbohydrateAvailableG: 25, fibreG: 2.5 });
  });

  test("a wrong encoding shows", async () => {
    const reading = await read(`${HEADER}A1;Crème;1;1;1;1;1\r\n`, { csv: { ...MAPPING.csv, encoding: "utf-8" } });
    expect(reading.issues.map(({ code, received }) => [code, received])).toEqual([
      ["encoding", "1 bytes that mean nothing in it"],
    ]);
  });
});

test.each([
  [{ figures: [{ column: "kJ", component: "energyKj", unit: "g" }] }, "figures/0/unit"],
  [{ figures: [MAPPING.figures[0], MAPPING.figures[0]] }, "figures"],
  [{ figures: [{ column: "x", component: "__proto__", unit: "g" }] }, "figures/0/component"],
  [{ csv: { delimiter: "a" } }, "csv/delimiter"],
  [{ words: [{ word: "N", means: "nothing" }] }, "words/0/means"],
  [{ colour: 1 }, "colour"],
])("a mapping with %j is refused", (over, path) => {
  const parsed = parseTableMapping({ ...MAPPING, ...over });
  expect(parsed.ok ? [] : parsed.issues.map((issue) => issue.path.join("/"))).toEqual([path]);
});
