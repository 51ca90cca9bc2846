import { type FileSource, sourceOf } from "./FileSource.ts";

/** A nutrient as the downloads list it. */
export interface SampleNutrient {
  readonly id: number;
  readonly number: string;
  readonly name: string;
  /** As the CSV files write it. */
  readonly unit: string;
}

/** A food to be written in the published format. Amounts are made up and by nutrient number; blank = published without one. */
export interface SampleFood {
  readonly fdcId: number;
  readonly dataType: "sr_legacy_food" | "foundation_food" | "sub_sample_food";
  readonly description: string;
  readonly publishedOn: string;
  readonly ndbNumber?: number;
  readonly amounts: Readonly<Record<string, number | undefined>>;
  readonly portions?: readonly { readonly amount: number; readonly modifier: string; readonly massG: number }[];
}

/** Nutrients of the list that a component of ours has, and some that none has. */
export const NUTRIENT_LIST: readonly SampleNutrient[] = [
  { id: 1003, number: "203", name: "Protein", unit: "G" },
  { id: 1004, number: "204", name: "Total lipid (fat)", unit: "G" },
  { id: 1005, number: "205", name: "Carbohydrate, by difference", unit: "G" },
  { id: 1007, number: "207", name: "Ash", unit: "G" },
  { id: 1008, number: "208", name: "Energy", unit: "KCAL" },
  { id: 1062, number: "268", name: "Energy", unit: "kJ" },
  { id: 1051, number: "255", name: "Water", unit: "G" },
  { id: 2000, number: "269", name: "Sugars, total", unit: "G" },
  { id: 1079, number: "291", name: "Fiber, total dietary", unit: "G" },
  { id: 1087, number: "301", name: "Calcium, Ca", unit: "MG" },
  { id: 1089, number: "303", name: "Iron, Fe", unit: "MG" },
  { id: 1093, number: "307", name: "Sodium, Na", unit: "MG" },
  { id: 1104, number: "318", name: "Vitamin A, IU", unit: "IU" },
  { id: 1278, number: "629", name: "PUFA 20:5 n-3 (EPA)", unit: "G" },
  { id: 1272, number: "621", name: "PUFA 22:6 n-3 (DHA)", unit: "G" },
  { id: 2047, number: "957", name: "Energy (Atwater General Factors)", unit: "KCAL" },
  { id: 2048, number: "958", name: "Energy (Atwater Specific Factors)", unit: "KCAL" },
  { id: 1185, number: "430", name: "Vitamin K (phylloquinone)", unit: "UG" },
  { id: 9001, number: "9001", name: "A component of nobody", unit: "MG" },
];

/** Two foods of one table, one of another and a sample that is none, all invented. */
export const SAMPLE_FOODS: readonly SampleFood[] = [
  {
    fdcId: 900001,
    dataType: "sr_legacy_food",
    description: 'Harbour beans, "speckled", dry',
    publishedOn: "2019-04-01",
    ndbNumber: 99001,
    amounts: {
      "203": 22.5,
      "204": 1.2,
      "205": 60.1,
      "208": 338,
      "291": 15.4,
      "269": 2.2,
      "307": 12,
      "303": 6.1,
      "318": 3,
    },
    portions: [{ amount: 1, modifier: "cup", massG: 190 }],
  },
  {
    fdcId: 900002,
    dataType: "sr_legacy_food",
    description: "Kelp crackers",
    publishedOn: "2019-04-01",
    amounts: { "203": 9, "204": 11, "205": 66, "268": 1674, "430": undefined, "9001": 4, "629": 0.02, "621": 0.01 },
  },
  {
    fdcId: 900003,
    dataType: "foundation_food",
    description: "Moor oats,\nrolled",
    publishedOn: "2024-10-31",
    amounts: { "203": 13, "204": 6.5, "205": 68, "957": 383, "958": 379, "291": 0 },
    portions: [{ amount: 0.5, modifier: "", massG: 40.5 }],
  },
  {
    fdcId: 900004,
    dataType: "sub_sample_food",
    description: "a bag",
    publishedOn: "2024-10-31",
    amounts: { "203": 1 },
  },
];

const FOOD_HEADER = '"fdc_id","data_type","description","food_category_id","publication_date"';
const FIGURE_HEADER =
  '"id","fdc_id","nutrient_id","amount","data_points","derivation_id","min","max","median","footnote","min_year_acquired"';

function cell(value: string | number | undefined): string {
  return `"${String(value ?? "").replaceAll('"', '""')}"`;
}

function row(...values: (string | number | undefined)[]): string {
  return `${values.map(cell).join(",")}\n`;
}

function foodRow({ fdcId, dataType, description, publishedOn }: SampleFood): string {
  return row(fdcId, dataType, description, "16", publishedOn);
}

function figureRows({ fdcId, amounts }: SampleFood, list: readonly SampleNutrient[]): string {
  return list
    .filter(({ number }) => number in amounts)
    .map(({ id, number }) => row(id * 7, fdcId, id, amounts[number], 4, 1, "", "", "", "", ""))
    .join("");
}

function portionRows({ fdcId, portions = [] }: SampleFood): string {
  return portions
    .map(({ amount, modifier, massG }, at) => row(at, fdcId, at + 1, amount, "9999", "", modifier, massG, "", "", ""))
    .join("");
}

/** The texts of the CSV download that holds these foods, by the names of its files. */
export function writeCsvFiles(foods: readonly SampleFood[], list = NUTRIENT_LIST): Record<string, string> {
  const old = foods.filter(({ ndbNumber }) => ndbNumber !== undefined);
  return {
    "food.csv": `${FOOD_HEADER}\n${foods.map(foodRow).join("")}`,
    "nutrient.csv": `"id","name","unit_name","nutrient_nbr","rank"\n${list
      .map(({ id, name, unit, number }, rank) => row(id, name, unit, number, rank))
      .join("")}`,
    "food_nutrient.csv": `${FIGURE_HEADER}\n${foods.map((food) => figureRows(food, list)).join("")}`,
    "food_portion.csv": `"id","fdc_id","seq_num","amount","measure_unit_id","portion_description","modifier","gram_weight","data_points","footnote","min_year_acquired"\n${foods.map(portionRows).join("")}`,
    "measure_unit.csv": '"id","name"\n"9999","undetermined"\n"1000","cup"\n',
    "sr_legacy_food.csv": `"fdc_id","NDB_number"\n${old.map((food) => row(food.fdcId, food.ndbNumber)).join("")}`,
  };
}

/** The files of a CSV download as sources. */
export function toSources(texts: Readonly<Record<string, string>>) {
  const source = (name: string): FileSource => sourceOf(name, texts[name] as string);
  return {
    food: source("food.csv"),
    nutrient: source("nutrient.csv"),
    foodNutrient: source("food_nutrient.csv"),
    foodPortion: source("food_portion.csv"),
    measureUnit: source("measure_unit.csv"),
    formerNumber: source("sr_legacy_food.csv"),
  };
}

/** One food as an element of the JSON download. */
function toDownloaded(food: SampleFood, list: readonly SampleNutrient[]): object {
  const [year, month, day] = food.publishedOn.split("-").map(Number);
  return {
    foodClass: "FinalFood",
    description: food.description,
    foodNutrients: list
      .filter(({ number }) => number in food.amounts)
      .map(({ id, number, name, unit }) => ({
        type: "FoodNutrient",
        id: id * 7,
        nutrient: { id, number, name, rank: 1, unitName: unit === "UG" ? "\u00b5g" : unit.toLowerCase() },
        dataPoints: 4,
        amount: food.amounts[number],
      })),
    foodPortions: (food.portions ?? []).map(({ amount, modifier, massG }) => ({
      amount,
      modifier,
      gramWeight: massG,
      measureUnit: { id: 9999, name: "undetermined", abbreviation: "undetermined" },
    })),
    publicationDate: `${month}/${day}/${year}`,
    fdcId: food.fdcId,
    ...(food.ndbNumber && { ndbNumber: food.ndbNumber }),
    dataType: food.dataType === "foundation_food" ? "Foundation" : "SR Legacy",
  };
}

/** The JSON download that holds these foods under the name of its list. */
export function writeJsonFile(foods: readonly SampleFood[], name = "SRLegacyFoods", list = NUTRIENT_LIST): string {
  return JSON.stringify({ [name]: foods.map((food) => toDownloaded(food, list)) });
}

/** So many nutrients: the list above, and behind it components that nobody has. */
export function longNutrientList(count: number): readonly SampleNutrient[] {
  const further = Array.from({ length: Math.max(0, count - NUTRIENT_LIST.length) }, (_, at) => ({
    id: 10_000 + at,
    number: String(10_000 + at),
    name: `component ${at}`,
    unit: "MG",
  }));
  return [...NUTRIENT_LIST.slice(0, count), ...further];
}

/** The food at a position of a large invented table, with a figure of every nutrient of the list. */
export function sampleFoodAt(at: number, list: readonly SampleNutrient[]): SampleFood {
  const amounts = Object.fromEntries(list.map(({ number }, place) => [number, ((at * 31 + place * 17) % 997) / 100]));
  const description = `Food ${at}, raw, of the invented table`;
  return { fdcId: 100_000 + at, dataType: "sr_legacy_food", description, publishedOn: "2019-04-01", amounts };
}

async function* pieces(before: string, count: number, write: (at: number) => string, after = "") {
  const encode = (text: string) => new TextEncoder().encode(text);
  yield encode(before);
  for (let at = 0; at < count; at += 16) {
    const places = Array.from({ length: Math.min(16, count - at) }, (_, offset) => at + offset);
    yield encode(places.map(write).join(""));
  }
  yield encode(after);
}

/** A CSV download of so many foods in pieces, none of which is held. */
export function streamCsvFiles(foods: number, list: readonly SampleNutrient[]) {
  const foodAt = (at: number) => sampleFoodAt(at, list);
  return {
    food: { name: "food.csv", pieces: pieces(`${FOOD_HEADER}\n`, foods, (at) => foodRow(foodAt(at))) },
    nutrient: sourceOf("nutrient.csv", writeCsvFiles([], list)["nutrient.csv"] as string),
    foodNutrient: {
      name: "food_nutrient.csv",
      pieces: pieces(`${FIGURE_HEADER}\n`, foods, (at) => figureRows(foodAt(at), list)),
    },
  };
}

/** A JSON download of so many foods in pieces, none of which is held. */
export function streamJsonFile(foods: number, list: readonly SampleNutrient[]): FileSource {
  const write = (at: number) => (at === 0 ? "" : ",\n") + JSON.stringify(toDownloaded(sampleFoodAt(at, list), list));
  return { name: "foods.json", pieces: pieces('{"SRLegacyFoods":[\n', foods, write, "\n]}\n") };
}
