import { loadStarterFoods } from "@halfloaf/data";
import {
  type DishText,
  type DraftOptions,
  decodeText,
  draftDish,
  ENGLISH_RECEIPT,
  FoodIndex,
  findContentKind,
  findFoodOfChoice,
  findOfficialFoods,
  observeReceipt,
  PackIndex,
  parsePriceListMapping,
  parseTableMapping,
  readDishTexts,
  readFoodDataCsv,
  readFoodDataJson,
  readMakingsLine,
  readMappedTable,
  readPage,
  readPastedText,
  readPriceList,
  readReceipt,
  sourceOf,
  toAmount,
  toDish,
} from "@halfloaf/reading";
import { checkOwnFoods, type Food, parseFoodTable, parseOwnFoods, withOwnFoods } from "halfloaf/food";
import type { Pack } from "halfloaf/price";
import type { Parsed } from "halfloaf/quantity";

/** Where one file of a download ends and the next begins, in the one text that is drawn. */
export const FILE_MARK = "\n%%%\n";

/** Reads one input to its end and gives all that a caller could pass on. */
type Reader = (bytes: Uint8Array) => unknown;

const foods = loadFoods();
const options: DraftOptions = { foods, index: new FoodIndex(foods.values()), english: "british" };
const onion = foods.get("onion") as Food;

const shops = [{ id: "quay", name: "Quay Market" }];
const oats = { id: "oats-500", shop: "quay", food: "rolled-oats", label: "Rolled oats 500 g", section: "dry goods" };
const packs: readonly Pack[] = [
  { ...oats, content: { massG: 500 }, priceMinor: 89, estimate: true, gtin: "4006381333931" },
];
const index = new PackIndex(packs);

const priceMapping = sound(
  parsePriceListMapping({
    format: "halfloaf-price-list-mapping",
    version: 1,
    csv: { delimiter: ";", decimal: ",", thousands: "." },
    currency: "EUR",
    columns: {
      label: "label",
      price: "price",
      shop: "shop",
      content: "content",
      unitPrice: "unit price",
      date: "date",
      gtin: "gtin",
      offer: "offer",
    },
    dateOrder: "dmy",
    customary: "british",
  }),
);
const tableMapping = sound(
  parseTableMapping({
    format: "halfloaf-table-mapping",
    version: 1,
    title: "An invented table",
    csv: { delimiter: ";", decimal: "," },
    columns: { id: "id", name: "name", portionG: "portion" },
    basis: { per: "portion" },
    figures: [
      { column: "energy kcal", component: "energyKcal", unit: "kcal" },
      { column: "protein", component: "proteinG", unit: "g" },
      { column: "salt", component: "sodiumMg", unit: "g", factor: 0.4 },
    ],
    words: [{ word: "tr", means: "zero" }],
    below: "half",
    marks: "()",
  }),
);

/** Every way in, by name. */
export const READERS = {
  line: (bytes) => {
    const line = readMakingsLine(toText(bytes));
    if (line.kind !== "making") return line;
    return [
      line,
      line.choices.map((choice) => [
        findFoodOfChoice(options.index, line, choice, "british"),
        toAmount(line, choice, "american"),
      ]),
    ];
  },
  text: (bytes) => readWhole(readPastedText(toText(bytes))),
  page: (bytes) => {
    const { dishes, issues } = readPage(toText(bytes));
    return [issues, dishes.map(readWhole)];
  },
  // Whatever was pasted, dropped or shared, of which nobody says what it is.
  any: (bytes) => {
    const { text } = decodeText(bytes);
    const { dishes, issues } = readDishTexts(text);
    return [findContentKind(text), issues, dishes.map(readWhole)];
  },
  receipt: (bytes) => {
    const receipt = readReceipt(toText(bytes), { currency: "EUR", shops, packs, words: ENGLISH_RECEIPT });
    return [receipt, observeReceipt(receipt, shops)];
  },
  prices: (bytes) => readPriceList(sourceOf("prices.csv", bytes), { mapping: priceMapping, shops, index }),
  table: async (bytes) => whatOfTable(await readMappedTable(sourceOf("table.csv", bytes), tableMapping)),
  "food-data-csv": async (bytes) => {
    const [food = "", nutrient = "", foodNutrient = "", portion = "", unit = "", number = ""] =
      toText(bytes).split(FILE_MARK);
    const files = {
      food: sourceOf("food.csv", food),
      nutrient: sourceOf("nutrient.csv", nutrient),
      foodNutrient: sourceOf("food_nutrient.csv", foodNutrient),
      foodPortion: sourceOf("food_portion.csv", portion),
      measureUnit: sourceOf("measure_unit.csv", unit),
      formerNumber: sourceOf("sr_legacy_food.csv", number),
    };
    return whatOfTable(await readFoodDataCsv(files));
  },
  "food-data-json": async (bytes) => whatOfTable(await readFoodDataJson(sourceOf("foods.json", bytes))),
  json: (bytes) => {
    const content = parseJson(toText(bytes));
    const own = parseOwnFoods(content);
    return [
      own,
      own.ok
        ? [checkOwnFoods(foods, own.value), withOwnFoods(foods, own.value)]
        : [parseTableMapping(content), parsePriceListMapping(content)],
    ];
  },
} satisfies Record<string, Reader>;

export type ReaderName = keyof typeof READERS;

function readWhole(text: DishText | undefined): unknown {
  if (text === undefined) return undefined;
  const draft = draftDish(text, options);
  return [text, draft, toDish(draft, { title: "x", portions: 4 }, options)];
}

function whatOfTable(reading: Awaited<ReturnType<typeof readFoodDataJson>>): unknown {
  if (reading.outcome !== "read") return reading;
  return [reading, [...reading.table.foods.values()], findOfficialFoods(onion, reading.table)];
}

function loadFoods(): ReadonlyMap<string, Food> {
  const parsed = parseFoodTable(loadStarterFoods());
  if (!parsed.ok) throw new Error("the starter foods are faulty");
  return parsed.table;
}

function sound<Value>(parsed: Parsed<Value>): Value {
  if (!parsed.ok) throw new Error(`a mapping of the bench is faulty: ${JSON.stringify(parsed.issues)}`);
  return parsed.value;
}

function toText(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes);
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
