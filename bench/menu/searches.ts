import { parseArgs } from "node:util";
import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { parseKitchen, parseTables, toMenuProblem, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import { type MenuProblem, MenuSearch } from "halfloaf/menu";
import { generateProblem } from "./generateProblem.ts";

/** How many searches run beside each other in what is measured. */
const BESIDE = [1, 2, 4] as const;
/** The longer search that a further worker competes with, and that the best known may come from. */
const LONGER = 4;
const DEMO_MOVES = 600_000;

/** How much dearer than the best known a plan is, over all instances and all choices of seeds. */
interface SearchesRow {
  readonly instances: string;
  readonly moves: number;
  readonly searches: number;
  readonly meanPct: number;
  readonly p95Pct: number;
  readonly worstPct: number;
}

interface Instance {
  readonly name: string;
  readonly problem: MenuProblem;
}

function searchFor(problem: MenuProblem, seed: number, moves: number): number {
  const search = new MenuSearch(problem, seed, { expectedMoves: moves });
  let report = search.advance();
  while (report.moves < moves) report = search.advance();
  return report.costMinor ?? Number.POSITIVE_INFINITY;
}

/** The least of each choice of so many values. */
function leastOfEach(values: readonly number[], count: number): number[] {
  if (count === 0) return [Number.POSITIVE_INFINITY];
  return values.flatMap((value, at) =>
    leastOfEach(values.slice(at + 1), count - 1).map((rest) => Math.min(value, rest)),
  );
}

/** Searches each instance from every seed at equal moves, and once from each for longer. */
function measure(name: string, instances: readonly Instance[], seeds: number, moves: number): SearchesRow[] {
  const distances = new Map<number, number[]>();
  const note = (searches: number, pct: readonly number[]): void => {
    distances.set(searches, [...(distances.get(searches) ?? []), ...pct]);
  };
  for (const { name: each, problem } of instances) {
    const all = Array.from({ length: seeds }, (_, at) => searchFor(problem, at + 1, moves));
    const longer = Array.from({ length: 2 }, (_, at) => searchFor(problem, at + 1, LONGER * moves));
    const least = Math.min(...all, ...longer);
    const toPct = (costMinor: number): number => 100 * (costMinor / least - 1);
    for (const beside of BESIDE) note(beside, leastOfEach(all, beside).map(toPct));
    note(0, longer.map(toPct));
    process.stderr.write(
      `${JSON.stringify({ instance: each, moves, all: all.map(toPct), longer: longer.map(toPct) })}\n`,
    );
  }
  return [...distances].map(([searches, pct]) => {
    const sorted = [...pct].sort((a, b) => a - b);
    const at = (share: number): number =>
      sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] as number;
    return {
      instances: name,
      // 0 stands for one search that goes on for as long as four.
      moves: searches === 0 ? LONGER * moves : moves,
      searches: Math.max(1, searches),
      meanPct: sorted.reduce((sum, one) => sum + one, 0) / sorted.length,
      p95Pct: at(0.95),
      worstPct: sorted.at(-1) as number,
    };
  });
}

function demoInstances(): Instance[] {
  const tables = parseTables(loadStarterTables());
  if (!tables.ok) throw new Error("the starter tables are faulty");
  return loadDemoKitchens().map(({ name, content }) => {
    const kitchen = parseKitchen(content);
    if (!kitchen.ok) throw new Error(`the demo kitchen ${name} is faulty`);
    const own = withOwnFoodsAndDishes(tables.value, kitchen.value);
    return { name, problem: toMenuProblem(kitchen.value, own, kitchen.value.startsOn, 7).problem };
  });
}

function main(): void {
  const { values } = parseArgs({
    options: {
      json: { type: "boolean", default: false },
      kitchens: { type: "string", default: "5" },
      seeds: { type: "string", default: "8" },
      moves: { type: "string", default: "100000,400000" },
    },
  });
  const seeds = Number(values.seeds);
  const made = Array.from({ length: Number(values.kitchens) }, (_, at) => ({
    name: `M${at + 1}`,
    problem: generateProblem("M", at + 1),
  }));
  const rows = values.moves.split(",").flatMap((moves) => measure("M", made, seeds, Number(moves)));
  rows.push(...measure("demo kitchens", demoInstances(), seeds, DEMO_MOVES));
  if (values.json) process.stdout.write(`${JSON.stringify({ bench: "searches", seeds, rows })}\n`);
  else for (const row of rows) process.stdout.write(`${JSON.stringify(row)}\n`);
}

main();
