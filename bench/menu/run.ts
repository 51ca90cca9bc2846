import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import type { MenuProblem } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { generateProblem, type Size } from "./generateProblem.ts";
import { loadSketch, type RunSketch } from "./runSketch.ts";
import { measurePace, timeSearch } from "./timeSearch.ts";

/** One problem to plan, and the group whose medians it counts in. */
interface Instance {
  readonly group: string;
  readonly name: string;
  readonly seed: number;
  readonly problem: MenuProblem;
}

interface Row {
  readonly group: string;
  readonly name: string;
  readonly firstS?: number;
  readonly costs: Record<string, number | undefined>;
  readonly sketchFirstS?: number;
  readonly sketchCosts: Record<string, number | undefined>;
  readonly bestKnown: number;
}

function readInstances(folder: string): Instance[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .map((name, i) => ({
      group: "instances",
      name,
      seed: i + 1,
      problem: JSON.parse(readFileSync(join(folder, name), "utf8")) as MenuProblem,
    }));
}

function seeded(sizes: readonly Size[], seeds: number): Instance[] {
  return sizes.flatMap((size) =>
    Array.from({ length: seeds }, (_, i) => ({
      group: size,
      name: `${size}${i + 1}`,
      seed: i + 1,
      problem: generateProblem(size, i + 1),
    })),
  );
}

function measure(
  instance: Instance,
  seconds: readonly number[],
  bestSeconds: number,
  sketch: RunSketch | undefined,
): Row {
  const { problem, seed } = instance;
  const pace = measurePace(problem);
  const costs: Record<string, number | undefined> = {};
  const sketchCosts: Record<string, number | undefined> = {};
  let firstS: number | undefined;
  let sketchFirstS: number | undefined;
  for (const s of seconds) {
    const found = timeSearch(problem, seed, s, pace);
    if (found.plan) {
      const { faults } = checkPlan(problem, found.plan);
      if (faults.length > 0)
        throw new Error(`${instance.name}: the judge finds ${faults[0]?.code} in a plan of the search`);
    }
    costs[`${s}s`] = found.costMinor;
    firstS ??= found.firstS;
    const peer = sketch && instance.group !== "instances" ? sketch(problem, seed, s) : undefined;
    if (peer) {
      sketchCosts[`${s}s`] = peer.costMinor;
      sketchFirstS ??= peer.firstS;
    }
  }
  const long = bestSeconds > 0 ? timeSearch(problem, seed + 1000, bestSeconds, pace).costMinor : undefined;
  const known = [...Object.values(costs), long].filter((cost) => cost !== undefined);
  return {
    group: instance.group,
    name: instance.name,
    costs,
    sketchCosts,
    bestKnown: Math.min(...known),
    ...(firstS !== undefined && { firstS }),
    ...(sketchFirstS !== undefined && { sketchFirstS }),
  };
}

function median(values: readonly (number | undefined)[]): number | null {
  if (values.length === 0 || values.some((value) => value === undefined)) return null;
  const sorted = (values as number[]).slice().sort((a, b) => a - b);
  return sorted[sorted.length >> 1] as number;
}

function summarise(rows: readonly Row[], seconds: readonly number[]): Record<string, unknown> {
  const over = (cost: number | undefined, best: number): number | undefined =>
    cost === undefined ? undefined : 100 * (cost / best - 1);
  const quality = seconds.map((s) => {
    const key = `${s}s`;
    const excess = rows.map((row) => over(row.costs[key], row.bestKnown));
    const ratios = rows.map((row) => {
      const [ours, theirs] = [row.costs[key], row.sketchCosts[key]];
      return ours === undefined || theirs === undefined ? undefined : ours / theirs;
    });
    const worst = excess.some((value) => value === undefined) ? null : Math.max(...(excess as number[]));
    return [key, { overBestPct: median(excess), worstPct: worst, costRatioToSketch: median(ratios) }];
  });
  const ratio = rows.map((row) => (row.firstS && row.sketchFirstS ? row.firstS / row.sketchFirstS : undefined));
  return {
    instances: rows.length,
    firstS: median(rows.map((row) => row.firstS)),
    firstRatioToSketch: median(ratio),
    ...Object.fromEntries(quality),
  };
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      json: { type: "boolean", default: false },
      instances: { type: "string" },
      sizes: { type: "string", default: "S,M,L" },
      seeds: { type: "string", default: "5" },
      seconds: { type: "string", default: "2,10" },
      best: { type: "string", default: "20" },
      sketch: { type: "string", default: "../shared/trials/menu" },
    },
  });
  const seconds = values.seconds.split(",").map(Number);
  const instances = values.instances
    ? readInstances(values.instances)
    : seeded(values.sizes.split(",") as Size[], Number(values.seeds));
  const sketch = await loadSketch(values.sketch);
  const warm = generateProblem("S", 99);
  timeSearch(warm, 1, 0.3, measurePace(warm));
  sketch?.(warm, 1, 0.3);
  const rows: Row[] = [];
  for (const instance of instances) {
    rows.push(measure(instance, seconds, Number(values.best), sketch));
    process.stderr.write(`${instance.name} ${JSON.stringify(rows[rows.length - 1])}\n`);
  }
  const groups = [...new Set(rows.map((row) => row.group))];
  const result = Object.fromEntries(
    groups.map((group) => [
      group,
      summarise(
        rows.filter((row) => row.group === group),
        seconds,
      ),
    ]),
  );
  if (values.json)
    process.stdout.write(`${JSON.stringify({ bench: "menu", sketch: sketch !== undefined, results: result })}\n`);
  else console.table(result);
}

await main();
