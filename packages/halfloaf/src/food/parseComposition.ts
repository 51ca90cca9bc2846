import type { Issue, Parsed } from "../quantity/issue.ts";
import { parseWith } from "../quantity/issue.ts";
import { type EnergyFactors, type Food, Id } from "./food.ts";
import { NUTRIENT_NAMES, type Nutrient } from "./nutrient.ts";

/** One row of a composition file: figures per 100 g edible portion; what was blank is absent. */
export type CompositionRow = Pick<Food, "id" | "source" | "composition" | "energyFactors">;

/** Energy factors in the order of their columns, each with the component it multiplies. */
const FACTORS = {
  proteinKcalPerG: "proteinG",
  fatKcalPerG: "fatG",
  carbohydrateKcalPerG: "carbohydrateByDifferenceG",
} as const satisfies Record<keyof EnergyFactors, Nutrient>;
const COLUMNS: readonly string[] = ["id", "source", ...Object.keys(FACTORS), ...NUTRIENT_NAMES];
const FIGURE = /^\d+(\.\d+)?$/;

/**
 * Reads a composition file: a header that names exactly the columns in their order, then one line a food, fields
 * parted by commas, nothing quoted. A blank figure is unknown. The three energy factors stand together or not at all, save
 * that the factor of a component the food has none of may be blank.
 * Faults carry the path `[line, column]`, lines counted from 1 with the header.
 */
export function parseComposition(csv: string): Parsed<CompositionRow[]> {
  const lines = csv.replace(/\r?\n$/, "").split(/\r?\n/);
  const headerIssues = checkHeader(lines[0] as string);
  if (headerIssues.length > 0) return { ok: false, issues: headerIssues };
  const value: CompositionRow[] = [];
  const issues: Issue[] = [];
  for (const [at, text] of lines.slice(1).entries()) {
    const row = parseRow(text, at + 2);
    if (row.ok) value.push(row.value);
    else issues.push(...row.issues);
  }
  return issues.length === 0 ? { ok: true, value } : { ok: false, issues };
}

function checkHeader(text: string): Issue[] {
  const names = text.split(",");
  const length = Math.max(names.length, COLUMNS.length);
  const at = Array.from({ length }, (_, index) => index).find((index) => names[index] !== COLUMNS[index]);
  if (at === undefined) return [];
  const [expected, received] = [COLUMNS[at] ?? "no further column", names[at] ?? "no further column"];
  return [{ code: "header", path: [1, at + 1], expected, received }];
}

function parseRow(text: string, line: number): Parsed<CompositionRow> {
  const fields = text.split(",");
  if (text.includes('"') || fields.length !== COLUMNS.length) {
    const received = text.includes('"') ? "a quotation mark" : `${fields.length} fields`;
    return {
      ok: false,
      issues: [{ code: "fields", path: [line], expected: `${COLUMNS.length} unquoted fields`, received }],
    };
  }
  const [id, source] = fields as [string, string];
  const issues: Issue[] = [];
  const idParsed = parseWith(Id, id);
  if (!idParsed.ok) issues.push(...idParsed.issues.map((issue) => ({ ...issue, path: [line, "id"] })));
  if (source.trim() === "")
    issues.push({ code: "source", path: [line, "source"], expected: "a source", received: "nothing" });
  const figures = new Map<string, number>();
  for (const [at, field] of fields.slice(2).entries()) {
    const column = COLUMNS[at + 2] as string;
    if (FIGURE.test(field)) figures.set(column, Number(field));
    else if (field !== "")
      issues.push({
        code: "figure",
        path: [line, column],
        expected: "a decimal number or nothing",
        received: `"${field}"`,
      });
  }
  const factors = pickFactors(figures, line);
  if (!factors.ok) issues.push(...factors.issues);
  if (issues.length > 0 || !factors.ok) return { ok: false, issues };
  return { ok: true, value: { id, source, composition: pickComposition(figures), ...factors.value } };
}

/**
 * Sources leave the factor of a component blank where the food has none of it. There it multiplies nothing and is read
 * as 0; anywhere else a factor missing beside the others is a fault.
 */
function pickFactors(figures: ReadonlyMap<string, number>, line: number): Parsed<{ energyFactors?: EnergyFactors }> {
  const entries = Object.entries(FACTORS) as [keyof EnergyFactors, Nutrient][];
  if (!entries.some(([name]) => figures.has(name))) return { ok: true, value: {} };
  const energyFactors = { proteinKcalPerG: 0, fatKcalPerG: 0, carbohydrateKcalPerG: 0 };
  const issues: Issue[] = [];
  for (const [name, component] of entries) {
    const factor = figures.get(name);
    if (factor !== undefined) energyFactors[name] = factor;
    else if (figures.get(component) !== 0) {
      issues.push({ code: "factors", path: [line, name], expected: "all three factors or none", received: "nothing" });
    }
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: { energyFactors } };
}

function pickComposition(figures: ReadonlyMap<string, number>): Food["composition"] {
  const composition: Partial<Record<Nutrient, number>> = {};
  for (const name of NUTRIENT_NAMES) {
    const figure = figures.get(name);
    if (figure !== undefined) composition[name] = figure;
  }
  return composition;
}
