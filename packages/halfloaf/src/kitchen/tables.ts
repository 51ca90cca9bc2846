import { applyRetention, checkDish, Dish, parseRetentionTable, type Retain } from "../dish/index.ts";
import { type FoodTable, type FoodTableFile, parseFoodTable, withOwnFoods } from "../food/index.ts";
import { parseReferenceTables, type ReferenceTables } from "../intake/index.ts";
import { type Issue, type Parsed, parseWith } from "../quantity/index.ts";
import { parseCoreTemperatures, parseKeepingRules, type SafetyTables } from "../safety/index.ts";
import type { Kitchen } from "./kitchen.ts";

/** What a kitchen is planned with: foods, dishes (the kitchen's own among them), retention and reference intakes. */
export interface Tables {
  readonly foods: FoodTable;
  readonly dishes: readonly Dish[];
  readonly retain: Retain;
  readonly references: ReferenceTables;
  readonly safety: SafetyTables;
}

/** The tables as they come from files, not checked yet. */
export interface TableFiles {
  readonly foods: readonly FoodTableFile[];
  readonly dishes: readonly { readonly name: string; readonly content: unknown }[];
  readonly retention: unknown;
  readonly references: { readonly nasem: unknown; readonly efsa: unknown; readonly who: unknown };
  readonly safety: { readonly coreTemperatures: unknown; readonly keepingRules: unknown };
}

/** Reads all tables; every fault of every file at once, each path beginning with its file. */
export function parseTables(files: TableFiles): Parsed<Tables> {
  const foods = parseFoodTable(files.foods);
  const retention = parseRetentionTable(files.retention);
  const references = parseReferenceTables(files.references);
  const coreTemperatures = parseCoreTemperatures(files.safety.coreTemperatures);
  const keepingRules = parseKeepingRules(files.safety.keepingRules);
  const lists = files.dishes.map(({ name, content }) => ({ name, list: Array.isArray(content) ? content : [content] }));
  const issues: Issue[] = [foods, retention, references, coreTemperatures, keepingRules].flatMap((read) =>
    read.ok ? [] : [...read.issues],
  );
  const dishes: Dish[] = [];
  for (const { name, list } of lists) {
    list.forEach((each: unknown, at) => {
      const read = parseWith(Dish, each);
      const faults = read.ok ? (foods.ok ? checkDish(read.value, foods.table) : []) : read.issues;
      issues.push(...faults.map((fault) => ({ ...fault, path: [`${name}.json`, at, ...fault.path] })));
      if (read.ok) dishes.push(read.value);
    });
  }
  if (!foods.ok || !retention.ok || !references.ok || !coreTemperatures.ok || !keepingRules.ok || issues.length > 0) {
    return { ok: false, issues };
  }
  const retain: Retain = (raw, code) => applyRetention(raw, code, retention.value);
  const safety = { coreTemperatures: coreTemperatures.value, keepingRules: keepingRules.value };
  return { ok: true, value: { foods: foods.table, dishes, retain, references: references.value, safety } };
}

/**
 * The tables with the foods, figures and dishes that a kitchen has of its own; what is its own takes the place of what
 * the starter tables have of the same id. Laying the same kitchen over twice changes nothing.
 */
export function withOwnFoodsAndDishes(
  tables: Tables,
  kitchen: Pick<Kitchen, "foods" | "overrides" | "dishes">,
): Tables {
  const own = new Set(kitchen.dishes.map(({ id }) => id));
  const dishes = [...tables.dishes.filter(({ id }) => !own.has(id)), ...kitchen.dishes];
  return { ...tables, foods: withOwnFoods(tables.foods, kitchen), dishes };
}
