import * as v from "valibot";
import { CivilDate, holdsMoreThan, type Issue, type Parsed, parseWith } from "../quantity/index.ts";
import { type Food, FoodFacts, Id } from "./food.ts";
import type { FoodTable } from "./foodTable.ts";
import { type Composition, NUTRIENT_NAMES, type Nutrient } from "./nutrient.ts";

const text = v.pipe(v.string(), v.nonEmpty());
const figure = v.pipe(v.number(), v.finite(), v.minValue(0));
const Component = v.picklist(NUTRIENT_NAMES as readonly [Nutrient, ...Nutrient[]]);
const factor = v.pipe(v.number(), v.finite(), v.minValue(0));

/**
 * The figures of one food that a kitchen takes from elsewhere, per 100 g edible portion. Components that are not named
 * stay as the table has them.
 */
export const FoodOverride = v.pipe(
  v.strictObject({
    food: Id,
    /** What the figures were taken from, for people: the table and the food in it. */
    from: text,
    /** The day the choice was made; absent where it was not noted. */
    chosenOn: v.optional(CivilDate),
    figures: v.record(Component, figure),
    /** Where each of `figures` comes from; every one has a source. */
    sources: v.record(Component, text),
    /** Components that are to count as unknown although the table knows them. */
    unknown: v.optional(v.array(Component), []),
    note: v.optional(text),
  }),
  v.forward(
    v.partialCheck(
      [["figures"], ["sources"]],
      ({ figures, sources }) => Object.keys(figures).sort().join() === Object.keys(sources).sort().join(),
      "a source for every figure and for nothing else",
    ),
    ["sources"],
  ),
  v.forward(
    v.partialCheck(
      [["figures"], ["unknown"]],
      ({ figures, unknown }) => unknown.every((name) => figures[name] === undefined),
      "no component that has a figure as well",
    ),
    ["unknown"],
  ),
);
export type FoodOverride = v.InferOutput<typeof FoodOverride>;

/** A food of the kitchen's own: what a food of the table holds, in one place. */
export const OwnFood = v.strictObject({
  ...FoodFacts.entries,
  source: text,
  /** Per 100 g edible portion; what is absent is unknown. */
  composition: v.record(Component, figure),
  energyFactors: v.optional(
    v.strictObject({ proteinKcalPerG: factor, fatKcalPerG: factor, carbohydrateKcalPerG: factor }),
  ),
});
export type OwnFood = v.InferOutput<typeof OwnFood>;

/** A file of own foods and of figures from elsewhere, by which one kitchen hands them to another. */
export const OwnFoods = v.strictObject({
  /** Where an editor finds the schema; not read here. */
  $schema: v.optional(v.string()),
  format: v.literal("halfloaf-foods"),
  version: v.literal(1),
  foods: v.optional(v.array(OwnFood), []),
  overrides: v.optional(v.array(FoodOverride), []),
});
export type OwnFoods = v.InferOutput<typeof OwnFoods>;

/** A file of own foods with nothing in it yet. */
export const NO_OWN_FOODS: OwnFoods = { format: "halfloaf-foods", version: 1, foods: [], overrides: [] };

/** The file with its lists not looked into yet. */
const Unread = v.strictObject({
  ...OwnFoods.entries,
  foods: v.optional(v.array(v.unknown()), []),
  overrides: v.optional(v.array(v.unknown()), []),
});
/** A file may be of any length and faulty throughout; beyond so many faults no more are looked for. */
const MOST_ISSUES = 500;
/** No food has a tenth of as many values. */
const MOST_VALUES = 2000;

/** Reads the content of a file of own foods; on failure gives all faults at once, as far as the first 500. */
export function parseOwnFoods(input: unknown): Parsed<OwnFoods> {
  const file = parseWith(Unread, input);
  if (!file.ok) return file;
  const issues: Issue[] = [];
  const foods = parseEach(OwnFood, file.value.foods, "foods", issues);
  const overrides = parseEach(FoodOverride, file.value.overrides, "overrides", issues);
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: { ...file.value, foods, overrides } };
}

function parseEach<Schema extends v.GenericSchema>(
  schema: Schema,
  list: readonly unknown[],
  key: string,
  issues: Issue[],
): v.InferOutput<Schema>[] {
  const read: v.InferOutput<Schema>[] = [];
  for (const [at, each] of list.entries()) {
    if (issues.length >= MOST_ISSUES) break;
    const parsed: Parsed<v.InferOutput<Schema>> = holdsMoreThan(each, MOST_VALUES)
      ? {
          ok: false,
          issues: [{ code: "too-long", path: [], expected: `at most ${MOST_VALUES} values`, received: "more" }],
        }
      : parseWith(schema, each);
    if (parsed.ok) read.push(parsed.value);
    else issues.push(...parsed.issues.map((issue) => ({ ...issue, path: [key, at, ...issue.path] })));
  }
  return read;
}

/** The text of a file of own foods, which `parseOwnFoods` reads back the same once its JSON is read. */
export function formatOwnFoods(own: OwnFoods): string {
  return `${JSON.stringify(own, undefined, 2)}\n`;
}

/** The foods of a kitchen's own and the figures it takes from elsewhere, in a file of their own or in the kitchen. */
export type OwnFoodParts = Pick<OwnFoods, "foods" | "overrides">;

/**
 * The table with a kitchen's own foods behind its foods and the kitchen's overrides laid over both; the table itself stays
 * as it is. An own food takes the place of a food of the same id, so that laying the same twice changes nothing; an override
 * of a food that nobody has is passed over, and of two of the same food the later one counts. `checkOwnFoods` tells of them.
 */
export function withOwnFoods(table: FoodTable, { foods, overrides }: OwnFoodParts): FoodTable {
  if (foods.length === 0 && overrides.length === 0) return table;
  const joined = new Map(table);
  for (const { energyFactors, ...food } of foods)
    joined.set(food.id, energyFactors === undefined ? food : { ...food, energyFactors });
  const latest = new Map(overrides.map((override) => [override.food, override]));
  for (const [id, override] of latest) {
    const food = joined.get(id);
    if (food !== undefined) joined.set(id, overrideFigures(food, override));
  }
  return joined;
}

/**
 * What of own foods does not fit a table that does not hold them yet, all at once: an id that the table or another own food
 * has, an override of a food that nobody has, and a second one of the same food.
 */
export function checkOwnFoods(table: FoodTable, { foods, overrides }: OwnFoodParts): readonly Issue[] {
  const issues: Issue[] = [];
  const own = new Set<string>();
  for (const [at, { id }] of foods.entries()) {
    if (table.has(id) || own.has(id)) issues.push(unique(["foods", at, "id"], "an id that no food has yet", id));
    own.add(id);
  }
  const overridden = new Set<string>();
  for (const [at, { food }] of overrides.entries()) {
    const path = ["overrides", at, "food"];
    if (!table.has(food) && !own.has(food))
      issues.push({ code: "food-unknown", path, expected: "a food there is", received: food });
    else if (overridden.has(food)) issues.push(unique(path, "one override of a food", food));
    overridden.add(food);
  }
  return issues;
}

/** A food with the figures of an override in place of its own, each with its source; the food given stays as it is. */
export function overrideFigures(food: Food, override: Pick<FoodOverride, "figures" | "sources" | "unknown">): Food {
  const forgotten = new Set<string>(override.unknown);
  const kept = <Value>(record: Readonly<Record<string, Value>>): Record<string, Value> =>
    Object.fromEntries(Object.entries(record).filter(([name]) => !forgotten.has(name)));
  const composition: Composition = { ...kept(food.composition), ...override.figures };
  return { ...food, composition, figureSources: { ...kept(food.figureSources), ...override.sources } };
}

function unique(path: Issue["path"], expected: string, received: string): Issue {
  return { code: "unique", path, expected, received };
}
