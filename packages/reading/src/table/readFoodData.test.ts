import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ReadingProgress, sourceOf } from "./FileSource.ts";
import {
  longNutrientList,
  NUTRIENT_LIST,
  SAMPLE_FOODS,
  sampleFoodAt,
  streamCsvFiles,
  streamJsonFile,
  toSources,
  writeCsvFiles,
  writeJsonFile,
} from "./foodData.testing.ts";
import { type OfficialTable, sourceOfFigure, type TableReading } from "./OfficialTable.ts";
import { readFoodDataCsv } from "./readFoodDataCsv.ts";
import { readFoodDataJson } from "./readFoodDataJson.ts";

const FILES = writeCsvFiles(SAMPLE_FOODS);

function tableOf(reading: TableReading): OfficialTable {
  if (reading.outcome !== "read") throw new Error(`${reading.outcome}: ${JSON.stringify(reading.issues)}`);
  return reading.table;
}

/** The CSV files with one of them changed. */
function changed(name: string, change: (text: string) => string) {
  return toSources({ ...FILES, [name]: change(FILES[name] as string) });
}

function tellIssues({ issues }: TableReading) {
  return issues.map(({ code, path, received }) => [code, path.join("/"), received]);
}

describe("a CSV download in miniature", () => {
  test("gives the foods of both kinds, with sources, portions and former numbers, and passes over samples", async () => {
    const reading = await readFoodDataCsv(toSources(FILES));
    const { title, foods } = tableOf(reading);
    expect(reading.issues).toEqual([]);
    expect(title).toBe("USDA FoodData Central SR Legacy, USDA FoodData Central Foundation");
    expect([...foods.keys()]).toEqual(["900001", "900002", "900003"]);
    const beans = foods.get("900001");
    expect(beans).toMatchObject({
      name: 'Harbour beans, "speckled", dry',
      formerNumber: "99001",
      source: "USDA FoodData Central SR Legacy, FDC ID 900001, as of 2019-04-01",
      portions: [{ amount: 1, measure: "cup", massG: 190 }],
      contradictions: [],
    });
    expect(beans?.composition).toEqual({
      proteinG: 22.5,
      fatG: 1.2,
      carbohydrateByDifferenceG: 60.1,
      energyKcal: 338,
      fibreG: 15.4,
      sugarsG: 2.2,
      sodiumMg: 12,
      ironMg: 6.1,
      carbohydrateAvailableG: 60.1 - 15.4,
      energyKj: 338 * 4.184,
    });
    expect(foods.get("900003")?.name).toBe("Moor oats,\nrolled");
  });

  test("reckons kilocalories of kilojoules alone, leaves a blank amount unknown, adds the two fatty acids", async () => {
    const crackers = tableOf(await readFoodDataCsv(toSources(FILES))).foods.get("900002");
    expect(crackers?.composition).toMatchObject({ energyKj: 1674, energyKcal: 1674 / 4.184, epaDhaG: 0.02 + 0.01 });
    expect(crackers?.composition.vitaminKUg).toBeUndefined();
    expect(crackers?.composition.carbohydrateAvailableG).toBeUndefined();
    expect(crackers && sourceOfFigure(crackers, "energyKcal")).toMatch(/FDC ID 900002.*reckoned, kilojoules \/ 4.184/);
    expect(crackers && sourceOfFigure(crackers, "energyKj")).toBe(crackers?.source);
    expect(crackers && sourceOfFigure(crackers, "vitaminKUg")).toBeUndefined();
  });

  test("takes energy by specific factors before that by general ones, and says so", async () => {
    const oats = tableOf(await readFoodDataCsv(toSources(FILES))).foods.get("900003");
    expect(oats?.composition.energyKcal).toBe(379);
    expect(oats?.figureSources.energyKcal).toMatch(/specific Atwater factors$/);
  });

  test("counts what it passes over", async () => {
    const reading = await readFoodDataCsv(toSources(FILES));
    expect(reading.outcome === "read" && reading.counts).toEqual({
      foods: 3,
      figures: 20,
      otherComponents: 2,
      otherRows: 2,
    });
  });

  test("is the same with CR LF and a byte order mark, and in bytes", async () => {
    const plain = tableOf(await readFoodDataCsv(toSources(FILES)));
    const texts = Object.entries(FILES).map(([name, text]) => [name, `\ufeff${text.replaceAll("\n", "\r\n")}`]);
    const other = tableOf(await readFoodDataCsv(toSources(Object.fromEntries(texts))));
    const names = (table: OfficialTable) => [...table.foods.values()].map((food) => ({ ...food, name: "" }));
    expect(names(other)).toEqual(names(plain));
    const encoder = new TextEncoder();
    const bytes = { ...toSources(FILES), food: sourceOf("food.csv", encoder.encode(FILES["food.csv"])) };
    expect(tableOf(await readFoodDataCsv(bytes))).toEqual(plain);
  });

  test("the JSON download of the same foods gives the same table", async () => {
    const kinds = SAMPLE_FOODS.filter(({ dataType }) => dataType !== "sub_sample_food");
    const csv = tableOf(await readFoodDataCsv(toSources(writeCsvFiles(kinds))));
    for (const name of ["SRLegacyFoods", "FoundationFoods"]) {
      const json = await readFoodDataJson(sourceOf("foods.json", writeJsonFile(kinds, name)));
      expect(json.issues).toEqual([]);
      expect(tableOf(json).foods).toEqual(csv.foods);
    }
  });
});

describe("faults of a download", () => {
  test("a faulty row is told with file, line and column and does not lose the others", async () => {
    const files = changed("food_nutrient.csv", (text) =>
      text
        .replace('"22.5"', '"a lot"')
        .replace('"1.2"', '"101.5"')
        .replace('"60.1"', '"-3"')
        .replace('"338"', '"33"8"')
        .concat('"1","900001","77777","1"\n', '"1","900001","1093","13"\n', '"1","5","1093","13"\n'),
    );
    const reading = await readFoodDataCsv(files);
    expect(tellIssues(reading)).toEqual([
      ["figure", "food_nutrient.csv/2/amount", '"a lot"'],
      ["range", "food_nutrient.csv/3/amount", "101.5 g"],
      ["figure", "food_nutrient.csv/4/amount", '"-3"'],
      ["text-after-quote", "food_nutrient.csv/5", "text"],
      ["nutrient", "food_nutrient.csv/26/nutrient_id", '"77777"'],
      ["figure-twice", "food_nutrient.csv/27/amount", "13"],
    ]);
    expect(tableOf(reading).foods.get("900001")?.composition).toEqual({
      sodiumMg: 12,
      ironMg: 6.1,
      fibreG: 15.4,
      sugarsG: 2.2,
    });
  });

  test("a mass in another unit is converted, an energy or a unit without a mass is refused", async () => {
    const sodiumInGrams = await readFoodDataCsv(
      changed("nutrient.csv", (text) => text.replace('"Sodium, Na","MG"', '"Sodium, Na","G"')),
    );
    expect(tableOf(sodiumInGrams).foods.get("900001")?.composition.sodiumMg).toBe(12_000);
    const inUnits = await readFoodDataCsv(
      changed("nutrient.csv", (text) => text.replace('"Iron, Fe","MG"', '"Iron, Fe","IU"')),
    );
    expect(tellIssues(inUnits)).toEqual([["unit", expect.stringMatching(/^food_nutrient.csv\/\d+\/amount$/), '"IU"']]);
    expect(tableOf(inUnits).foods.get("900001")?.composition.ironMg).toBeUndefined();
  });

  test("missing columns are told all at once and nothing is read", async () => {
    const reading = await readFoodDataCsv(
      changed("food.csv", (text) => text.replace("data_type", "kind").replace("fdc_id", "n")),
    );
    expect(reading.outcome).toBe("failed");
    expect(reading.issues.map(({ expected }) => expected)).toEqual(['a column "fdc_id"', 'a column "data_type"']);
  });

  test("a food without a number or with one used before is told, a date that is none only leaves the date out", async () => {
    const reading = await readFoodDataCsv(
      changed("food.csv", (text) =>
        text
          .replace('"2019-04-01"', '"2019-02-30"')
          .concat('"900001","sr_legacy_food","b","",""\n', '"x","sr_legacy_food","b","",""\n'),
      ),
    );
    expect(tellIssues(reading)).toEqual([
      ["date", "food.csv/2/publication_date", '"2019-02-30"'],
      ["unique", "food.csv/7/fdc_id", '"900001"'],
      ["id", "food.csv/8/fdc_id", '"x"'],
    ]);
    expect(tableOf(reading).foods.get("900001")?.source).toBe(
      "USDA FoodData Central SR Legacy, FDC ID 900001, without a date",
    );
  });

  test("a faulty element of a JSON list is told by line and column and loses only itself", async () => {
    const good = JSON.parse(writeJsonFile(SAMPLE_FOODS.slice(0, 2))).SRLegacyFoods;
    good[1].foodNutrients[0].amount = "9";
    good[1].foodPortions = [{ gramWeight: 0, amount: 1 }];
    const [first, second] = good.map((food: unknown) => JSON.stringify(food));
    const text = `{"SRLegacyFoods":[\n${first},\n{"fdcId": 1, }, \n{"fdcId": -1},\n7,\n${second}]}`;
    const reading = await readFoodDataJson(sourceOf("foods.json", text));
    expect([...tableOf(reading).foods.keys()]).toEqual(["900001", "900002"]);
    expect(reading.issues.map(({ path }) => path.join("/"))).toEqual([
      "foods.json/3/1",
      "foods.json/4/1/fdcId",
      "foods.json/4/1/dataType",
      "foods.json/4/1/description",
      "foods.json/5/1",
      "foods.json/6/1/foodNutrients/0/amount",
      "foods.json/6/1/foodPortions/0/gramWeight",
    ]);
  });

  test.each([
    ["", "no such list"],
    ["[", "one that is cut off"],
    ['{"SRLegacyFoods":{}}', "no such list"],
    ['{"FoundationFoods":[{"fdcId":1', "one that is cut off"],
  ])("%j holds no foods, which is told", async (text, received) => {
    const reading = await readFoodDataJson(sourceOf("foods.json", text));
    expect([reading.outcome, reading.issues.map((issue) => issue.received)]).toEqual(["failed", [received]]);
  });

  test("a name of an object's own parts is a name like any other", async () => {
    const hostile =
      '{"__proto__":{"polluted":1},"constructor":1,"fdcId":7,"dataType":"SR Legacy","description":"__proto__"}';
    const reading = await readFoodDataJson(sourceOf("foods.json", `{"SRLegacyFoods":[${hostile}]}`));
    expect(tableOf(reading).foods.get("7")?.name).toBe("__proto__");
    const csv = await readFoodDataCsv(
      changed("nutrient.csv", (text) => text.replaceAll('"203"', '"__proto__"').replaceAll('"204"', '"constructor"')),
    );
    expect(csv.issues).toEqual([]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe("a long reading", () => {
  const list = longNutrientList(80);

  test.each(["csv", "json"] as const)("tells how far it is and gives every food (%s)", async (kind) => {
    const told: ReadingProgress[] = [];
    const watch = { onProgress: (progress: ReadingProgress) => void told.push(progress) };
    const reading =
      kind === "csv"
        ? await readFoodDataCsv(streamCsvFiles(300, list), watch)
        : await readFoodDataJson(streamJsonFile(300, list), watch);
    const { foods } = tableOf(reading);
    expect([foods.size, reading.issueCount]).toEqual([300, 0]);
    const expected = sampleFoodAt(299, list).amounts;
    expect(foods.get("100299")?.composition).toMatchObject({ proteinG: expected["203"], sodiumMg: expected["307"] });
    const sizes = told.filter(({ file }) => file === told.at(-1)?.file).map(({ size }) => size);
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(told.at(-1)?.items).toBe(kind === "csv" ? 300 * 80 : 300);
  });

  test.each(["csv", "json"] as const)("stops when it is told to (%s)", async (kind) => {
    const signal = { aborted: false };
    let pieces = 0;
    const onProgress = () => {
      pieces++;
      signal.aborted = pieces === 3;
    };
    const files = streamCsvFiles(300, list);
    const reading =
      kind === "csv"
        ? await readFoodDataCsv(files, { signal, onProgress })
        : await readFoodDataJson(streamJsonFile(300, list), { signal, onProgress });
    expect([reading.outcome, pieces]).toEqual(["stopped", 3]);
  });

  test("keeps the first faults and counts them all", async () => {
    const rows = '"1","900001","1003","?"\n'.repeat(2000);
    const reading = await readFoodDataCsv(changed("food_nutrient.csv", (text) => text + rows));
    expect([reading.issues.length, reading.issueCount]).toEqual([500, 2000]);
  });
});

test("whatever the files hold, reading them ends in a table or in faults", async () => {
  const file = fc.oneof(
    fc.uint8Array({ maxLength: 300 }),
    fc.string({ unit: "binary", maxLength: 300 }),
    fc.string({ unit: fc.constantFrom('"', ",", "\n", "fdc_id", "data_type", "1", "\u202e", "\u200b"), maxLength: 80 }),
  );
  const mutated = fc.constantFrom(...Object.keys(FILES));
  await fc.assert(
    fc.asyncProperty(mutated, file, fc.nat(500), async (name, junk, at) => {
      const text = FILES[name] as string;
      const spliced = typeof junk === "string" ? text.slice(0, at) + junk + text.slice(at) : junk;
      const sources = toSources(FILES);
      const key = { "food.csv": "food", "nutrient.csv": "nutrient", "food_nutrient.csv": "foodNutrient" }[name];
      const reading = await readFoodDataCsv(
        key === undefined ? sources : { ...sources, [key]: sourceOf(name, spliced) },
      );
      expect(reading.issues.every(({ received }) => !/[\u202e\u200b]/.test(received))).toBe(true);
      const json = writeJsonFile(SAMPLE_FOODS, "SRLegacyFoods", NUTRIENT_LIST);
      await readFoodDataJson(
        sourceOf(name, typeof junk === "string" ? json.slice(0, at) + junk + json.slice(at) : junk),
      );
    }),
    { endOnFailure: true },
  );
});
