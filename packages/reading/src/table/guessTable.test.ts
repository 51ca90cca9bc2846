import fc from "fast-check";
import { NUTRIENT_NAMES, NUTRIENTS } from "halfloaf/food";
import { describe, expect, test } from "vitest";
import { sourceOf } from "./FileSource.ts";
import { guessTable, toTableMapping } from "./guessTable.ts";
import { readMappedTable } from "./readMappedTable.ts";
import { parseTableMapping } from "./tableMapping.ts";

const SAID = { title: "Harbour board table", basis: { per: "100g" }, below: "half" } as const;
const TABLE = [
  "Harbour board table of foods;;;;;;;;",
  "No.;Food;kJ;Energy (kcal);Protein (g);Fat, saturated (g);Fat (g);Salt (g);Vitamin B12 [µg]",
  "A1;Kelp, raw;180;43;1,7;0,2;0,6;0,58;tr",
  "A2;Limpets, boiled;400;96;17,5;<0,2;1,3;(0,9);-",
].join("\n");

describe("how a composition table is written is guessed", () => {
  test("by its names and their units; the longer name counts before the shorter one, and of salt its share of sodium", () => {
    const { csv, columns, figures } = guessTable(TABLE);
    expect(csv).toEqual({ delimiter: ";", decimal: ",", headerLine: 2 });
    expect(columns).toEqual({ id: "No.", name: "Food" });
    expect(figures).toEqual([
      { column: "Energy (kcal)", component: "energyKcal", unit: "kcal" },
      { column: "kJ", component: "energyKj", unit: "kJ" },
      { column: "Protein (g)", component: "proteinG", unit: "g" },
      { column: "Fat (g)", component: "fatG", unit: "g" },
      { column: "Fat, saturated (g)", component: "saturatesG", unit: "g" },
      { column: "Salt (g)", component: "sodiumMg", unit: "g", factor: 0.4 },
      { column: "Vitamin B12 [µg]", component: "vitaminB12Ug", unit: "ug" },
    ]);
  });

  test("and read so, traces count as nothing, what is bounded as said, what is marked stays, what is not known stays unknown", async () => {
    const mapping = toTableMapping(guessTable(TABLE), SAID);
    if (mapping === undefined) throw new Error("no mapping");
    const read = await readMappedTable(sourceOf("table", TABLE), mapping);
    if (read.outcome !== "read") throw new Error(read.outcome);
    expect(read.issues).toEqual([]);
    const [kelp, limpets] = [...read.table.foods.values()];
    expect(kelp?.composition).toMatchObject({
      energyKj: 180,
      proteinG: 1.7,
      saturatesG: 0.2,
      sodiumMg: 232,
      vitaminB12Ug: 0,
    });
    expect(limpets?.composition).toMatchObject({ saturatesG: 0.1, sodiumMg: 360 });
    expect(limpets?.composition.vitaminB12Ug).toBe(undefined);
  });

  test("in German, with what figures are for beside the unit", () => {
    const { columns, figures } = guessTable(
      "Lebensmittel\tBrennwert (kJ/100 g)\tEiweiß in g je 100 g\tdavon Zucker (g)\nAlgen\t180\t1,7\t0,1\n",
    );
    expect(columns).toEqual({ id: "Lebensmittel", name: "Lebensmittel" });
    expect(figures.map(({ column, component }) => [column, component])).toEqual([
      ["Brennwert (kJ/100 g)", "energyKj"],
      ["Eiweiß in g je 100 g", "proteinG"],
      ["davon Zucker (g)", "sugarsG"],
    ]);
  });

  test("an energy without its unit, and a component in a unit it can't have, stay open", () => {
    const { figures } = guessTable("Code,Food,Energy,Protein (kcal),Iron (mg)\n1,Kelp,180,3,2.8\n");
    expect(figures.map(({ component }) => component)).toEqual(["ironMg"]);
  });

  test("a table without a name, a figure or a title makes no mapping; one that makes one keeps its schema", () => {
    expect(toTableMapping(guessTable("a;b\n1;2\n"), SAID)).toBe(undefined);
    expect(toTableMapping(guessTable(TABLE), { ...SAID, title: " " })).toBe(undefined);
    expect(parseTableMapping(toTableMapping(guessTable(TABLE), { ...SAID, asOf: "2025" })).ok).toBe(true);
  });

  test("each component is found by its tag and its own unit, whichever stand beside it", () => {
    const components = fc.uniqueArray(fc.constantFrom(...NUTRIENT_NAMES), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(components, (chosen) => {
        const columns = chosen.map((name) => `${NUTRIENTS[name].tag} (${NUTRIENTS[name].unit})`);
        const figures = chosen.map((_, at) => `${at}.5`);
        const text = [
          ["id", "food", ...columns],
          ["1", "kelp", ...figures],
        ]
          .map((row) => row.join(","))
          .join("\n");
        const found = new Map(guessTable(text).figures.map(({ component, column }) => [component, column]));
        expect([...found.entries()].sort()).toEqual(chosen.map((name, at) => [name, columns[at]]).sort());
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test("whatever is pasted", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 120 }), (text) => {
        const { header, columns, figures } = guessTable(text);
        const named = [...Object.values(columns), ...figures.map(({ column }) => column)];
        expect(named.every((name) => header.includes(name))).toBe(true);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });
});
