import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { explainImpossible, limitCosts, type MenuProblem, MenuSearch } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { generateProblem, type Size } from "./generateProblem.ts";

/** An impossible week: what was cut, and how long its explanation took. */
interface ImpossibleRow {
  readonly cut: string;
  readonly seconds: number;
  /** Time of the processor, which others at work on the machine disturb less. */
  readonly cpuS: number;
  readonly kind: string;
  readonly alone: number;
  readonly collisions: string;
}

/** The costs of the limits of a possible week. */
interface CostRow {
  readonly seconds: number;
  readonly cpuS: number;
  readonly limits: number;
  readonly saving: number;
}

/** Ways to make a week impossible, by its limits. */
const CUTS: Readonly<Record<string, (problem: MenuProblem) => Partial<MenuProblem["limits"]>>> = {
  budget: ({ limits }) => ({ budgetMinor: Math.round(0.25 * (limits.budgetMinor ?? 0)) }),
  minutes: ({ limits }) => ({ handsOnMinutes: limits.handsOnMinutes.map((most) => 0.3 * most) }),
  oneDay: ({ limits }) => ({ handsOnMinutes: limits.handsOnMinutes.map((most, day) => (day === 1 ? 4 : most)) }),
  both: ({ limits }) => ({
    budgetMinor: Math.round(0.25 * (limits.budgetMinor ?? 0)),
    handsOnMinutes: limits.handsOnMinutes.map((most) => 0.3 * most),
  }),
};

const PLAN_MOVES = 100_000;

function timed<Value>(work: () => Value): { readonly value: Value; readonly seconds: number; readonly cpuS: number } {
  const from = performance.now();
  const before = process.cpuUsage();
  const value = work();
  const { user, system } = process.cpuUsage(before);
  return { value, seconds: (performance.now() - from) / 1000, cpuS: (user + system) / 1e6 };
}

function explain(problem: MenuProblem, cut: string, seed: number): ImpossibleRow {
  const limits = { ...problem.limits, ...CUTS[cut]?.(problem) };
  const { value, seconds, cpuS } = timed(() => explainImpossible({ ...problem, limits }, { seed }));
  const isCollision = value.kind === "collision";
  return {
    cut,
    seconds,
    cpuS,
    kind: value.kind,
    alone: isCollision ? value.alone.length : 0,
    collisions: isCollision ? value.collisions.map((kinds) => kinds.join("+")).join(" / ") : "",
  };
}

function price(problem: MenuProblem, seed: number): CostRow {
  const search = new MenuSearch(problem, seed, { expectedMoves: PLAN_MOVES });
  while (search.advance().moves < PLAN_MOVES);
  const plan = search.best();
  if (plan === undefined) throw new Error("no plan to reckon the costs of limits from");
  const { value, seconds, cpuS } = timed(() => limitCosts(problem, plan, { seed }));
  for (const { found } of value.limits) {
    const bad = found && checkPlan(problem, found.plan).faults.length === 0;
    if (bad) throw new Error("a saving does not need the limit that it is put down to");
  }
  return {
    seconds,
    cpuS,
    limits: value.limits.length,
    saving: value.limits.filter((one) => one.savesMinor > 0).length,
  };
}

function median(values: readonly number[]): number {
  return values.slice().sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

/** Explains impossible weeks and prices the limits of possible ones in so many seeded kitchens. */
export function benchReasons(size: Size, seeds: number) {
  explain(generateProblem("S", 99), "budget", 1);
  const impossible: ImpossibleRow[] = [];
  const costs: CostRow[] = [];
  for (let seed = 1; seed <= seeds; seed++) {
    const problem = generateProblem(size, seed);
    for (const cut of Object.keys(CUTS)) impossible.push(explain(problem, cut, seed));
    costs.push(price(problem, seed));
  }
  return { impossible: sumUp(impossible), byCut: groupByCut(impossible), limitCosts: sumUp(costs) };
}

function sumUp<Row extends { readonly seconds: number; readonly cpuS: number }>(rows: readonly Row[]) {
  return {
    medianS: median(rows.map(({ seconds }) => seconds)),
    worstS: Math.max(...rows.map(({ seconds }) => seconds)),
    medianCpuS: median(rows.map(({ cpuS }) => cpuS)),
    rows,
  };
}

function groupByCut(rows: readonly ImpossibleRow[]) {
  return Object.fromEntries(
    Object.keys(CUTS).map((cut) => {
      const { medianS, medianCpuS } = sumUp(rows.filter((row) => row.cut === cut));
      return [cut, { medianS, medianCpuS }];
    }),
  );
}

function main(): void {
  const { values } = parseArgs({
    options: {
      json: { type: "boolean", default: false },
      size: { type: "string", default: "M" },
      seeds: { type: "string", default: "5" },
    },
  });
  const size = values.size as Size;
  const { impossible, byCut, limitCosts } = benchReasons(size, Number(values.seeds));
  if (values.json)
    process.stdout.write(`${JSON.stringify({ bench: "reasons", size, impossible, byCut, limitCosts })}\n`);
  else {
    console.table(impossible.rows);
    console.table(limitCosts.rows);
    console.table({
      ...byCut,
      all: { ...impossible, rows: undefined },
      limitCosts: { ...limitCosts, rows: undefined },
    });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
