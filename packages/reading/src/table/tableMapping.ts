import { NUTRIENT_NAMES, NUTRIENTS, type Nutrient } from "halfloaf/food";
import type { Parsed } from "halfloaf/quantity";
import * as v from "valibot";
import { type ComponentUnit, convertComponent } from "./convertComponent.ts";
import { CsvForm } from "./csvForm.ts";
import { parseMapping } from "./parseMapping.ts";

const text = v.pipe(v.string(), v.nonEmpty());
const positive = v.pipe(v.number(), v.finite(), v.gtValue(0));
const UNITS = ["kcal", "kJ", "g", "mg", "ug"] as const satisfies readonly ComponentUnit[];

/** A column that holds a component of the food table. */
const FigureColumn = v.pipe(
  v.strictObject({
    column: text,
    component: v.picklist(NUTRIENT_NAMES as readonly [Nutrient, ...Nutrient[]]),
    /** The unit of the column's figures. */
    unit: v.picklist(UNITS),
    /** What the column's figures are multiplied with, such as 0.4 to make sodium of salt; absent = 1. */
    factor: v.optional(positive),
  }),
  v.forward(
    v.partialCheck(
      [["component"], ["unit"]],
      ({ component, unit }) => convertComponent(1, unit, NUTRIENTS[component].unit) !== undefined,
      "a unit that the component can be measured in",
    ),
    ["unit"],
  ),
);
export type FigureColumn = v.InferOutput<typeof FigureColumn>;

/** What the figures of the table are for. */
const Basis = v.variant("per", [
  v.strictObject({ per: v.literal("100g") }),
  /** Needs the density: of all foods here, or by food in the column `densityGPerMl`. */
  v.strictObject({ per: v.literal("100mL"), densityGPerMl: v.optional(positive) }),
  /** Needs the mass of the portion: of all foods here, or by food in the column `portionG`. */
  v.strictObject({ per: v.literal("portion"), portionG: v.optional(positive) }),
]);

/**
 * How any composition table in CSV is to be read: a file of its own, written once for a table. Columns are named as in
 * the header of the table; columns that are not named are not read.
 */
export const TableMapping = v.strictObject({
  /** Where an editor finds the schema; not read here. */
  $schema: v.optional(v.string()),
  format: v.literal("halfloaf-table-mapping"),
  version: v.literal(1),
  /** The table as it is to be named wherever a figure of it is shown. */
  title: text,
  /** When the table was published; absent where that is not known or stands in the column `date`. */
  asOf: v.optional(text),
  csv: v.optional(CsvForm, {}),
  columns: v.strictObject({
    id: text,
    name: text,
    date: v.optional(text),
    formerNumber: v.optional(text),
    densityGPerMl: v.optional(text),
    portionG: v.optional(text),
  }),
  basis: v.optional(Basis, { per: "100g" }),
  figures: v.pipe(
    v.array(FigureColumn),
    v.minLength(1),
    v.check(
      (figures) => new Set(figures.map(({ component }) => component)).size === figures.length,
      "each component once",
    ),
  ),
  /** What a cell means that holds no number; an empty one is always unknown, and what is not listed is a fault. */
  words: v.optional(v.array(v.strictObject({ word: text, means: v.picklist(["unknown", "zero"]) })), []),
  /** What "<0.1" means: not known, none, or half of the bound. */
  below: v.optional(v.picklist(["unknown", "zero", "half"]), "unknown"),
  /** Characters that stand around a figure without changing it, such as brackets around an estimated one. */
  marks: v.optional(v.string(), ""),
});
export type TableMapping = v.InferOutput<typeof TableMapping>;

/** Reads the content of a mapping file; on failure gives all faults at once. */
export function parseTableMapping(input: unknown): Parsed<TableMapping> {
  return parseMapping(TableMapping, input);
}
