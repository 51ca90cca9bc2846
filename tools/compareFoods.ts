/**
 * Compares the starter foods with the official table their figures were typed from: `compareFoods.ts PATH/foods.csv`.
 *
 * The official table stays outside this repository and is given by its path. Columns are named as in COLUMNS below;
 * further columns do not matter. Exit code 0 where every difference has a source of its own, 1 where one has none,
 * 2 where the comparison could not be made.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { loadStarterFoods } from "@halfloaf/data";
import { type Food, NUTRIENT_NAMES, type Nutrient, parseFoodTable } from "halfloaf/food";

type Component = Nutrient | "proteinKcalPerG" | "fatKcalPerG" | "carbohydrateKcalPerG" | "refusePct";

/** How a component follows from the official columns; all are per 100 g edible portion, in the unit of its name. */
type Rule =
  | { readonly from: string }
  /** Where the first column is blank the second may stand in, but need not: it counts only against a figure of ours. */
  | { readonly standInOf: readonly [string, string] }
  | { readonly sumOf: readonly [string, string] }
  /** The first less the second, not below zero. */
  | { readonly lessOf: readonly [string, string] };

/** Components without an entry (free sugars, iodine) have no official figure and are not compared. */
const COLUMNS: Readonly<Partial<Record<Component, Rule>>> = {
  refusePct: { from: "refuse_pct" },
  proteinKcalPerG: { from: "protein_factor" },
  fatKcalPerG: { from: "fat_factor" },
  carbohydrateKcalPerG: { from: "carb_factor" },
  energyKcal: { from: "energy_kcal" },
  energyKj: { from: "energy_kj" },
  waterG: { from: "water_g" },
  proteinG: { from: "protein_g" },
  fatG: { from: "fat_g" },
  saturatesG: { from: "sat_fat_g" },
  monounsaturatesG: { from: "mono_fat_g" },
  polyunsaturatesG: { from: "poly_fat_g" },
  carbohydrateByDifferenceG: { from: "carbohydrate_by_diff_g" },
  carbohydrateAvailableG: { lessOf: ["carbohydrate_by_diff_g", "fibre_g"] },
  fibreG: { from: "fibre_g" },
  sugarsG: { from: "sugars_g" },
  alcoholG: { from: "alcohol_g" },
  ashG: { from: "ash_g" },
  sodiumMg: { from: "sodium_mg" },
  potassiumMg: { from: "potassium_mg" },
  calciumMg: { from: "calcium_mg" },
  ironMg: { from: "iron_mg" },
  magnesiumMg: { from: "magnesium_mg" },
  zincMg: { from: "zinc_mg" },
  phosphorusMg: { from: "phosphorus_mg" },
  seleniumUg: { from: "selenium_ug" },
  vitaminARaeUg: { from: "vitamin_a_rae_ug" },
  retinolUg: { from: "retinol_ug" },
  betaCaroteneUg: { from: "beta_carotene_ug" },
  alphaCaroteneUg: { from: "alpha_carotene_ug" },
  betaCryptoxanthinUg: { from: "beta_cryptoxanthin_ug" },
  vitaminCMg: { from: "vitamin_c_mg" },
  vitaminDUg: { from: "vitamin_d_ug" },
  vitaminEMg: { from: "vitamin_e_mg" },
  vitaminKUg: { from: "vitamin_k_ug" },
  thiaminMg: { from: "thiamin_mg" },
  riboflavinMg: { from: "riboflavin_mg" },
  niacinMg: { from: "niacin_mg" },
  vitaminB6Mg: { from: "vitamin_b6_mg" },
  folateFoodUg: { from: "food_folate_ug" },
  folicAcidUg: { from: "folic_acid_ug" },
  folateDfeUg: { from: "folate_dfe_ug" },
  vitaminB12Ug: { from: "vitamin_b12_ug" },
  cholineMg: { from: "choline_mg" },
  lysineG: { from: "lysine_g" },
  alaG: { standInOf: ["ala_18_3_n3_g", "fa_18_3_undiff_g"] },
  epaDhaG: { sumOf: ["epa_g", "dha_g"] },
};

const RULES = Object.entries(COLUMNS) as [Component, Rule][];
const NEEDED = ["ndb_no", ...new Set(RULES.flatMap(([, rule]) => columnsOf(rule)))];

/** A printed figure and half of its last decimal place, which is what rounding may hide; undefined where blank. */
type Figure = { readonly value: number; readonly halfPlace: number } | undefined;

/** One official food: its figures as printed, by column. */
type OfficialRow = ReadonlyMap<string, string>;

interface Difference {
  readonly food: string;
  readonly component: Component;
  readonly ours: number | undefined;
  readonly theirs: number | undefined;
  /** The source our figure names for itself; undefined where the row's own source should stand. */
  readonly documented: string | undefined;
}

class OddInput extends Error {}

/** What an official row says of a component. A blank part of a sum or difference leaves the whole unknown. */
function readFigure(row: OfficialRow, rule: Rule, isOursKnown: boolean): Figure {
  const [a, b] = columnsOf(rule).map((column) => toFigure(row.get(column) as string));
  if ("from" in rule) return a;
  if ("standInOf" in rule) return a ?? (isOursKnown ? b : undefined);
  if (a === undefined || b === undefined) return undefined;
  const value = "sumOf" in rule ? a.value + b.value : Math.max(0, a.value - b.value);
  return { value, halfPlace: Math.min(a.halfPlace, b.halfPlace) };
}

function columnsOf(rule: Rule): readonly string[] {
  if ("from" in rule) return [rule.from];
  if ("standInOf" in rule) return rule.standInOf;
  return "sumOf" in rule ? rule.sumOf : rule.lessOf;
}

function toFigure(text: string): Figure {
  if (text === "") return undefined;
  const decimals = text.split(".")[1]?.length ?? 0;
  return { value: Number(text), halfPlace: 0.5 * 10 ** -decimals };
}

function ourFigure(food: Food, component: Component): number | undefined {
  if (component === "refusePct") return food.refusePct;
  if (component === "proteinKcalPerG" || component === "fatKcalPerG" || component === "carbohydrateKcalPerG")
    return food.energyFactors?.[component];
  return food.composition[component];
}

/** All differences beyond rounding between a food and its official row, in column order. */
function compareFood(food: Food, row: OfficialRow): Difference[] {
  return RULES.flatMap(([component, rule]) => {
    // Refuse is compared only where it claims to be the table's own; pack sizes and boned cuts have other sources.
    if (component === "refusePct" && food.refuseSource !== "USDA SR28") return [];
    const ours = ourFigure(food, component);
    const theirs = readFigure(row, rule, ours !== undefined);
    if (ours === undefined && theirs === undefined) return [];
    // A factor multiplies nothing where the food has none of its component; the table leaves it blank, we read 0.
    if (component.endsWith("KcalPerG") && ours === 0 && theirs === undefined) return [];
    if (ours !== undefined && theirs !== undefined && Math.abs(ours - theirs.value) <= theirs.halfPlace + 1e-9)
      return [];
    return [{ food: food.id, component, ours, theirs: theirs?.value, documented: food.figureSources[component] }];
  });
}

/** Splits one line of comma-separated text; a field in quotation marks may hold commas and doubled quotation marks. */
function splitLine(text: string): string[] {
  const fields = [...text.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))(?=,|$)/g)];
  if (fields.reduce((length, [field]) => length + field.length, 0) !== text.length)
    throw new OddInput("a quotation mark stands where none may stand");
  return fields.map(([, quoted, plain]) => (quoted === undefined ? (plain as string) : quoted.replaceAll('""', '"')));
}

/** Reads the official table by its NDB numbers; throws OddInput with the line and what is odd there. */
function readOfficialTable(path: string): Map<string, OfficialRow> {
  const text = readFileSync(path, "utf8").replace(/^\uFEFF/, "");
  const table = new Map<string, OfficialRow>();
  let header: string[] | undefined;
  for (const [index, line] of text.trimEnd().split(/\r?\n/).entries()) {
    try {
      if (header === undefined) header = readHeader(line);
      else addRow(table, header, splitLine(line));
    } catch (error) {
      throw error instanceof OddInput ? new OddInput(`${path}, line ${index + 1}: ${error.message}`) : error;
    }
  }
  if (table.size === 0) throw new OddInput(`${path} holds a header but no food`);
  return table;
}

function readHeader(line: string): string[] {
  const header = splitLine(line);
  const missing = NEEDED.filter((column) => !header.includes(column));
  if (missing.length > 0) throw new OddInput(`the header lacks the columns ${missing.join(", ")}`);
  return header;
}

function addRow(table: Map<string, OfficialRow>, header: readonly string[], fields: readonly string[]): void {
  if (fields.length !== header.length)
    throw new OddInput(`${fields.length} fields stand under ${header.length} columns`);
  const row = new Map(header.map((column, field) => [column, fields[field] as string]));
  const number = row.get("ndb_no") as string;
  if (!/^\d{5}$/.test(number)) throw new OddInput(`"${number}" is no NDB number of five digits`);
  if (table.has(number)) throw new OddInput(`NDB ${number} stands twice`);
  const odd = NEEDED.find((column) => !/^(\d+(\.\d+)?)?$/.test(row.get(column) as string));
  if (odd !== undefined) throw new OddInput(`${odd} is "${row.get(odd)}", not a decimal number or nothing`);
  table.set(number, row);
}

function readStarterFoods(): Food[] {
  const parsed = parseFoodTable(loadStarterFoods());
  if (parsed.ok) return [...parsed.table.values()];
  const told = parsed.issues.map(({ path, expected, received }) => `  ${path.join("/")}: ${expected}, not ${received}`);
  throw new OddInput(`the starter foods cannot be read:\n${told.join("\n")}`);
}

function printDifferences(differences: readonly Difference[]): void {
  const figure = (value: number | undefined) => (value === undefined ? "unknown" : String(Number(value.toFixed(6))));
  const lines = [
    ["food", "component", "ours", "theirs", "documented as"],
    ...differences.map(({ food, component, ours, theirs, documented }) => [
      food,
      component,
      figure(ours),
      figure(theirs),
      documented ?? "NOT DOCUMENTED",
    ]),
  ];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...lines.map((line) => (line[column] as string).length)));
  for (const line of lines) console.log(line.map((field, column) => field.padEnd(widths[column] ?? 0)).join("  "));
}

/** Compares all foods that name one NDB number, prints what differs and gives the exit code. */
function compareAll(path: string): 0 | 1 {
  const table = readOfficialTable(path);
  const foods = readStarterFoods();
  // A calculated row names the numbers of its parts, so it is no copy of any one row.
  const numbered = foods.flatMap((food) => {
    const number = /^USDA SR(?:28)? NDB (\d{5})\b/.exec(food.source)?.[1];
    return number === undefined ? [] : [{ food, number }];
  });
  const absent = numbered.filter(({ number }) => !table.has(number));
  const compared = numbered.filter(({ number }) => table.has(number));
  if (compared.length === 0) throw new OddInput(`${path} has a row for none of our foods' NDB numbers`);
  const differences = compared.flatMap(({ food, number }) => compareFood(food, table.get(number) as OfficialRow));
  const undocumented = differences.filter(({ documented }) => documented === undefined);
  if (differences.length > 0) printDifferences(differences);
  const uncompared = NUTRIENT_NAMES.filter((name) => COLUMNS[name] === undefined);
  console.log(`
${foods.length} starter foods, ${numbered.length} with an NDB number, ${compared.length} compared with ${table.size} rows.
${absent.length} numbers are not in the table: ${absent.map(({ food, number }) => `${food.id} (${number})`).join(", ") || "none"}.
Without an official column: ${uncompared.join(", ")}.
${differences.length} differences beyond rounding, ${differences.length - undocumented.length} documented, ${undocumented.length} not documented.`);
  return undocumented.length > 0 ? 1 : 0;
}

function main(paths: readonly string[]): 0 | 1 | 2 {
  const [path] = paths;
  if (path === undefined || paths.length > 1) {
    console.error(
      "Give the path of the official table, and nothing else: npx tsx tools/compareFoods.ts PATH/foods.csv",
    );
    return 2;
  }
  try {
    return compareAll(path);
  } catch (error) {
    if (error instanceof OddInput) console.error(`Nothing was compared: ${error.message}`);
    else if (error instanceof Error && "code" in error && "syscall" in error)
      console.error(`Nothing was compared: ${path} cannot be read (${error.message})`);
    else throw error;
    return 2;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = main(process.argv.slice(2));
