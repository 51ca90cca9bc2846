import { guessTable } from "@halfloaf/reading";
import { describe, expect, test } from "vitest";
import { type TableSaid, toTableForm } from "./TableSaid.ts";

const GUESS = guessTable("No.;Food;Protein (g);Salt (g);Other\n1;Kelp;1,7;0,58;3\n");
const SAID: TableSaid = { csv: {}, columns: {}, figures: {}, title: "Board", asOf: "", per: "100g", below: "half" };
const figuresOf = (said: Partial<TableSaid>) => toTableForm(GUESS, { ...SAID, ...said }).figures;

describe("what is said of a table goes before what was guessed", () => {
  test("a column of a component, that there is none, its unit, and whether it is salt", () => {
    expect(figuresOf({})).toEqual([
      { column: "Protein (g)", component: "proteinG", unit: "g" },
      { column: "Salt (g)", component: "sodiumMg", unit: "g", factor: 0.4 },
    ]);
    expect(figuresOf({ figures: { proteinG: { column: "" }, sodiumMg: { isSalt: false } } })).toEqual([
      { column: "Salt (g)", component: "sodiumMg", unit: "g" },
    ]);
    const [protein, , iron] = figuresOf({ figures: { proteinG: { unit: "mg" }, ironMg: { column: "Other" } } });
    expect(protein).toEqual({ column: "Protein (g)", component: "proteinG", unit: "mg" });
    expect(iron).toEqual({ column: "Other", component: "ironMg", unit: "mg" });
  });

  test("a column that the file has not, and a measure that is none, are as if nothing were said", () => {
    const { columns, mapping } = toTableForm(GUESS, {
      ...SAID,
      columns: { name: "Gone" },
      per: "100mL",
      densityGPerMl: Number.NaN,
    });
    expect([columns.name, mapping]).toEqual([undefined, undefined]);
    expect(toTableForm(GUESS, { ...SAID, per: "100mL", densityGPerMl: 0 }).mapping?.basis).toEqual({ per: "100mL" });
  });
});
