/**
 * Times the reading of an official composition table of full size: `tsx bench/read/table.ts [--foods N] [--json]`.
 *
 * An invented table in the published form of USDA FoodData Central (8,000 foods x 80 nutrients where nothing else is
 * asked) is written to a temporary folder, once as CSV and once as JSON, and read back from there in a process of its
 * own each, so that the most memory of each can be told. Exit code 1 where a reading takes longer or more than its target.
 */
import { spawnSync } from "node:child_process";
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { type FileSource, readFoodDataCsv, readFoodDataJson } from "@halfloaf/reading";
import { longNutrientList, streamCsvFiles, streamJsonFile } from "@halfloaf/reading/table/testing";

const NUTRIENTS = 80;
const TARGET_S = 10;
const TARGET_MB = 512;
const PIECE_BYTES = 1 << 18;

/** What one reading took. */
interface Reading {
  readonly form: string;
  readonly foods: number;
  readonly figures: number;
  readonly faults: number;
  readonly seconds: number;
  readonly peakMb: number;
}

const { values, positionals } = parseArgs({
  options: { foods: { type: "string", default: "8000" }, json: { type: "boolean", default: false } },
  allowPositionals: true,
});

// The reading process is this file again, told form and folder.
const [form, place] = positionals;
await (form === undefined || place === undefined ? report(Number(values.foods)) : readOnce(form, place));

async function report(foods: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "halfloaf-table-"));
  try {
    await writeTable(folder, foods);
    const readings = ["csv", "json"].map((each) => readApart(each, folder));
    const isMet = readings.every(({ seconds, peakMb }) => seconds <= TARGET_S && peakMb <= TARGET_MB);
    if (values.json)
      console.log(JSON.stringify({ readings, targets: { seconds: TARGET_S, peakMb: TARGET_MB }, isMet }));
    else for (const reading of readings) console.log(tell(reading));
    process.exitCode = isMet ? 0 : 1;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function writeTable(folder: string, foods: number): Promise<void> {
  const list = longNutrientList(NUTRIENTS);
  for (const { name, pieces } of [...Object.values(streamCsvFiles(foods, list)), streamJsonFile(foods, list)]) {
    await pipeline(Readable.from(pieces), createWriteStream(join(folder, name)));
  }
}

function readApart(each: string, folder: string): Reading {
  const self = fileURLToPath(import.meta.url);
  const { stdout, stderr, status } = spawnSync(process.execPath, [...process.execArgv, self, each, folder]);
  if (status !== 0) throw new Error(String(stderr));
  return JSON.parse(String(stdout)) as Reading;
}

async function readOnce(each: string, folder: string): Promise<void> {
  const source = (name: string): FileSource => ({
    name,
    pieces: createReadStream(join(folder, name), { highWaterMark: PIECE_BYTES }) as AsyncIterable<Uint8Array>,
  });
  const from = performance.now();
  const reading =
    each === "json"
      ? await readFoodDataJson(source("foods.json"))
      : await readFoodDataCsv({
          food: source("food.csv"),
          nutrient: source("nutrient.csv"),
          foodNutrient: source("food_nutrient.csv"),
        });
  const seconds = (performance.now() - from) / 1000;
  if (reading.outcome !== "read") throw new Error(JSON.stringify(reading.issues));
  const size = statSync(join(folder, each === "json" ? "foods.json" : "food_nutrient.csv")).size;
  const { foods, figures, otherComponents } = reading.counts;
  const result: Reading = {
    form: `${each}, ${Math.round(size / 1e6)} MB`,
    foods,
    figures: figures + otherComponents,
    faults: reading.issueCount,
    seconds,
    peakMb: process.resourceUsage().maxRSS / 1024,
  };
  console.log(JSON.stringify(result));
}

function tell({ form: what, foods, figures, faults, seconds, peakMb }: Reading): string {
  const met = seconds <= TARGET_S && peakMb <= TARGET_MB ? "met" : "missed";
  const took = `${seconds.toFixed(2)} s of ${TARGET_S}, ${Math.round(peakMb)} MB of ${TARGET_MB}: ${met}`;
  return `${what}: ${foods} foods, ${figures} figures, ${faults} faults, ${took}`;
}
