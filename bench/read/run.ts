import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { readMakingsLine } from "@halfloaf/reading";
import { type LabelledLine, loadLines } from "./loadLines.ts";
import { type FoodScore, loadSample, scoreFoods } from "./scoreFoods.ts";
import { scoreLine } from "./scoreLine.ts";

const HELP = `bench:read [--lines FILE] [--half even|odd] [--misses] [--json]

  --lines FILE   labelled lines, .csv or .jsonl with source, line, quantity, quantity_max, unit, name
                 (../shared/data/ingredient-lines/lines.csv)
  --half         only the even or the odd rows, counted from 0: rules are made on the even ones
  --misses       also every line whose quantity or unit was not read as labelled
  --json         JSON instead of lines

How a reading is held against its labels is written in bench/read/scoreLine.ts. Where bench/read/sample.csv is there
(columns line, food and, if need be, english), also how often the right food comes first.`;

const DEFAULT_LINES = fileURLToPath(new URL("../../../shared/data/ingredient-lines/lines.csv", import.meta.url));

/** The least share of each source's lines, in percent: quantity, then unit; and the least F1 of names. */
const TARGETS = { nyt: [99, 94], tasteset: [99, 94], bbc: [97, 88] } as const;
const NAME_TARGET = 0.8;
const SPEED_TARGET = 2000;
const FOOD_TARGET = 0.9;

// Rounds before the clock starts, so that the reader is timed and not its compilation.
const WARMING_ROUNDS = 5;
const LEAST_TIMED_MS = 1000;

const { values } = parseArgs({
  options: {
    lines: { type: "string", default: DEFAULT_LINES },
    half: { type: "string" },
    misses: { type: "boolean", default: false },
    json: { type: "boolean", default: false },
    help: { type: "boolean", default: false },
  },
});

if (values.help) console.log(HELP);
else if (!existsSync(values.lines)) {
  console.error(`No labelled lines at ${values.lines}; name a file with --lines.`);
  process.exitCode = 2;
} else report();

function report(): void {
  const half = values.half === "even" ? 0 : values.half === "odd" ? 1 : undefined;
  const lines = loadLines(values.lines).filter((_, at) => half === undefined || at % 2 === half);
  const scored = lines.map((label) => ({ label, score: scoreLine(readMakingsLine(label.line), label) }));
  const sources = [...new Set(lines.map(({ source }) => source))].map((source) => sumUp(source, scored));
  const sample = loadSample();
  const result = {
    lines: lines.length,
    sources,
    nameF1: mean(scored.map(({ score }) => score.nameF1)),
    ...timeReading(lines),
    foods: sample ? scoreFoods(sample) : "bench/read/sample.csv is not there yet",
    ...(values.misses ? { misses: scored.filter(({ score }) => !score.quantity || !score.unit) } : {}),
  };
  if (values.json) console.log(JSON.stringify({ ...result, targets: judge(result) }, null, 2));
  else for (const [name, value] of Object.entries(result)) console.log(name, JSON.stringify(value));
  if (!judge(result).every(({ met }) => met)) process.exitCode = 1;
}

interface SourceSum {
  readonly source: string;
  readonly lines: number;
  /** Percent of lines. */
  readonly quantityPct: number;
  readonly unitPct: number;
  readonly nameF1: number;
}

function sumUp(
  source: string,
  scored: readonly { label: LabelledLine; score: ReturnType<typeof scoreLine> }[],
): SourceSum {
  const own = scored.filter(({ label }) => label.source === source).map(({ score }) => score);
  const percent = (right: readonly boolean[]) => Math.round(mean(right.map(Number)) * 10_000) / 100;
  return {
    source,
    lines: own.length,
    quantityPct: percent(own.map(({ quantity }) => quantity)),
    unitPct: percent(own.map(({ unit }) => unit)),
    nameF1: mean(own.map(({ nameF1 }) => nameF1)),
  };
}

function mean(numbers: readonly number[]): number {
  return Math.round((numbers.reduce((sum, each) => sum + each, 0) / Math.max(1, numbers.length)) * 1e4) / 1e4;
}

/** Lines read in a second of the clock and in one of the processor: the second does not feel what else the machine does. */
function timeReading(lines: readonly LabelledLine[]): { linesPerSecond: number; linesPerCpuSecond: number } {
  if (lines.length === 0) return { linesPerSecond: 0, linesPerCpuSecond: 0 };
  for (let round = 0; round < WARMING_ROUNDS; round++) for (const { line } of lines) readMakingsLine(line);
  const [start, cpuStart] = [performance.now(), process.cpuUsage()];
  let read = 0;
  while (performance.now() - start < LEAST_TIMED_MS) {
    for (const { line } of lines) if (readMakingsLine(line).kind !== "empty") read++;
  }
  const cpu = process.cpuUsage(cpuStart);
  return {
    linesPerSecond: Math.round((read * 1e3) / (performance.now() - start)),
    linesPerCpuSecond: Math.round((read * 1e6) / (cpu.user + cpu.system)),
  };
}

interface Target {
  readonly what: string;
  readonly least: number;
  readonly reached: number;
  readonly met: boolean;
}

function judge(result: {
  sources: readonly SourceSum[];
  nameF1: number;
  linesPerSecond: number;
  foods: FoodScore | string;
}): Target[] {
  const hold = (what: string, least: number, reached: number): Target => ({
    what,
    least,
    reached,
    met: reached >= least,
  });
  return [
    ...result.sources.flatMap(({ source, quantityPct, unitPct }) => {
      const [quantity, unit] = TARGETS[source as keyof typeof TARGETS];
      return [hold(`${source} quantity %`, quantity, quantityPct), hold(`${source} unit %`, unit, unitPct)];
    }),
    hold("name F1", NAME_TARGET, result.nameF1),
    hold("lines per second", SPEED_TARGET, result.linesPerSecond),
    ...(typeof result.foods === "string" ? [] : [hold("right food first", FOOD_TARGET, result.foods.firstRight)]),
  ];
}
