import { readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { proveBound } from "@halfloaf/engine";
import { type MenuProblem, MenuSearch } from "halfloaf/menu";
import { generateProblem } from "./generateProblem.ts";
import { type GrowthAxis, type GrowthPoint, growthSvg } from "./growthSvg.ts";
import { medianOf } from "./statistics.ts";
import { measurePace } from "./timeSearch.ts";
import { useProcessorClock } from "./useProcessorClock.ts";

/** What is varied, its values, and the problem of each: from 150 dishes, 150 foods, 7 days and 2 eaters. */
const AXES: readonly {
  readonly name: string;
  readonly values: readonly number[];
  readonly problem: (value: number, seed: number) => MenuProblem;
}[] = [
  {
    name: "dishes",
    values: [50, 100, 200, 400, 800],
    problem: (dishes, seed) => generateProblem([dishes, 150], seed, { eaters: 2 }),
  },
  {
    name: "foods",
    values: [50, 100, 200, 400],
    problem: (foods, seed) => generateProblem([150, foods], seed, { eaters: 2 }),
  },
  {
    name: "days",
    values: [3, 7, 14, 21, 28],
    problem: (days, seed) => generateProblem("M", seed, { eaters: 2, days }),
  },
  {
    name: "eaters",
    values: [1, 2, 4, 8],
    problem: (eaters, seed) => generateProblem("M", seed, { eaters }),
  },
];

/** Most seconds that a first plan is waited for. */
const PATIENCE_S = 20;
const BEGIN = "<!-- figures: written by bench/menu/growth.ts -->";
const END = "<!-- end of figures -->";

async function measurePoint(problem: MenuProblem, seed: number) {
  const from = performance.now();
  const search = new MenuSearch(problem, seed, { expectedMoves: 100_000 });
  let report = search.advance();
  const elapsedS = (): number => (performance.now() - from) / 1000;
  while (report.costMinor === undefined && elapsedS() < PATIENCE_S) report = search.advance();
  const firstS = report.costMinor === undefined ? undefined : elapsedS();
  const proof = await proveBound(problem, { seconds: 0 });
  const hasBound = "boundMinor" in proof && proof.boundMinor !== undefined;
  return { firstS, boundS: hasBound ? proof.elapsed : undefined, movesPerS: measurePace(problem) };
}

async function measureAxis({ name, values, problem }: (typeof AXES)[number], seeds: number): Promise<GrowthAxis> {
  const points: GrowthPoint[] = [];
  for (const value of values) {
    const runs = [];
    for (let seed = 1; seed <= seeds; seed++) runs.push(await measurePoint(problem(value, seed), seed));
    points.push({
      value,
      firstS: medianOf(runs.map(({ firstS }) => firstS)),
      boundS: medianOf(runs.map(({ boundS }) => boundS)),
      movesPerS: medianOf(runs.map(({ movesPerS }) => movesPerS)),
    });
    process.stderr.write(`${JSON.stringify({ axis: name, ...points.at(-1) })}\n`);
  }
  return { name, points };
}

function layTable(axes: readonly GrowthAxis[]): string[] {
  const show = (value: number | null, digits: number): string => (value === null ? "none" : value.toFixed(digits));
  const rows = axes.flatMap(({ name, points }) =>
    points.map(({ value, firstS, boundS, movesPerS }) => {
      const moves = movesPerS === null ? null : movesPerS / 1000;
      return `| ${value} ${value === 1 ? name.slice(0, -1) : name} | ${show(firstS, 3)} | ${show(boundS, 2)} | ${show(moves, 1)} |`;
    }),
  );
  return ["| | first plan, s | first bound, s | thousand moves a second |", "| --- | --- | --- | --- |", ...rows];
}

/** Puts table, plot and circumstances between the marks of the page. */
function writePage(axes: readonly GrowthAxis[], seeds: number, clock: string): void {
  const page = fileURLToPath(new URL("../../docs/growth.md", import.meta.url));
  const text = readFileSync(page, "utf8");
  const [from, to] = [text.indexOf(BEGIN), text.indexOf(END)];
  if (from < 0 || to < from) throw new Error("docs/growth.md has lost its marks");
  const day = new Date().toISOString().slice(0, 10);
  const machine = `${day}, Node ${process.versions.node}, one thread of ${cpus()[0]?.model.trim()} (${cpus().length} cores)`;
  const told = `${machine}; medians of ${seeds} seeds, ${clock === "processor" ? "processor time" : "time on the wall"}.`;
  const lines = [BEGIN, "", told, "", ...layTable(axes), "", END];
  writeFileSync(page, text.slice(0, from) + lines.join("\n") + text.slice(to + END.length));
  writeFileSync(fileURLToPath(new URL("../../docs/growth.svg", import.meta.url)), growthSvg(axes));
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      seeds: { type: "string", default: "3" },
      clock: { type: "string", default: "wall" },
      docs: { type: "boolean", default: false },
    },
  });
  if (values.clock === "processor") useProcessorClock();
  const seeds = Number(values.seeds);
  await measurePoint(generateProblem("S", 99), 99);
  const axes: GrowthAxis[] = [];
  for (const axis of AXES) axes.push(await measureAxis(axis, seeds));
  if (values.docs) writePage(axes, seeds, values.clock);
  process.stdout.write(`${layTable(axes).join("\n")}\n`);
}

await main();
