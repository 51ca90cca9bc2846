import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import {
  changeProblem,
  EFFORTS,
  type MenuChange,
  type MenuPlan,
  type MenuProblem,
  MenuSearch,
  type ReplanOutcome,
  replan,
  toRemainder,
} from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { generateProblem, type Size } from "./generateProblem.ts";
import { measurePace, timeSearch } from "./timeSearch.ts";

/** One re-plan: what it took and how far it is from a plan made afresh. */
interface Row {
  readonly name: string;
  readonly change: string;
  readonly timeS: number;
  /** Money above that of the fresh plan, in percent of it; negative where the re-plan is the cheaper one. */
  readonly overFreshPct: number | undefined;
  readonly sittingsChanged: number | undefined;
}

/** Moves of the plan that life then changes: as many as `halfloaf week` makes. */
const OLD_MOVES = EFFORTS.usual;

/** The dish served most, which the kitchen is tired of. */
function refuseOften({ batches }: MenuPlan): MenuChange {
  const often = [...batches].sort((a, b) => b.sittings.length - a.sittings.length)[0] as MenuPlan["batches"][number];
  return { kind: "refuse", dish: often.dish };
}

/** The pack that most money is spent on is not there. */
function losePack(problem: MenuProblem, { purchases }: MenuPlan): MenuChange {
  const spent = ({ pack, count }: MenuPlan["purchases"][number]): number =>
    (problem.packs[pack]?.priceMinor ?? 0) * count;
  const dearest = [...purchases].sort((a, b) => spent(b) - spent(a))[0] as MenuPlan["purchases"][number];
  return { kind: "gone", pack: dearest.pack };
}

/** The first evening to come that is not fed by what is cooked already. */
function chooseEvening({ sittings }: MenuProblem, { batches }: MenuPlan, today: number): number {
  const cookedOn = (k: number): number => {
    const batch = batches.find((each) => each.sittings.includes(k));
    return sittings[batch?.sittings[0] ?? -1]?.day ?? 0;
  };
  return sittings.findIndex(({ day, variety }, k) => variety && day > today && cookedOn(k) >= today);
}

/** The kinds of change, each with the day on which it is heard of. */
function listChanges(
  problem: MenuProblem,
  plan: MenuPlan,
): readonly { readonly change: string; readonly today: number; readonly list: readonly MenuChange[] }[] {
  const portions = problem.sittings[0]?.portions ?? 1;
  const sitting = chooseEvening(problem, plan, 3);
  return [
    { change: "refuse", today: 0, list: [refuseOften(plan)] },
    { change: "gone", today: 0, list: [losePack(problem, plan)] },
    { change: "skip", today: 0, list: [{ kind: "skip", sittings: [14, 15] }] },
    { change: "guest, three days eaten", today: 3, list: [{ kind: "guest", sitting, portions }] },
  ];
}

function measure(name: string, problem: MenuProblem, seed: number, freshS: number): Row[] {
  const search = new MenuSearch(problem, seed, { expectedMoves: OLD_MOVES });
  let moves = 0;
  while (moves < OLD_MOVES) moves = search.advance().moves;
  const plan = search.best();
  if (plan === undefined) throw new Error(`${name}: no plan to begin with`);
  return listChanges(problem, plan).map(({ change, today, list }): Row => {
    const changed = changeProblem(problem, plan, list, { today });
    if (!changed.ok) throw new Error(`${name}, ${change}: ${JSON.stringify(changed.unfit)}`);
    const from = performance.now();
    const outcome = replan(changed.value, { judge: checkPlan, seed });
    const timeS = (performance.now() - from) / 1000;
    const freshMinor = searchAfresh(changed.value, seed, freshS);
    const found = outcome.kind === "planned" ? outcome : undefined;
    if (found) assertSound(changed.value.problem, found, `${name}, ${change}`);
    const overFreshPct = found && freshMinor ? 100 * (found.moneyMinor / freshMinor - 1) : undefined;
    return { name, change, timeS, overFreshPct, sittingsChanged: found?.changes.length };
  });
}

function assertSound(problem: MenuProblem, { plan }: Extract<ReplanOutcome, { kind: "planned" }>, name: string): void {
  const { faults } = checkPlan(problem, plan);
  if (faults.length > 0) throw new Error(`${name}: the judge finds ${faults[0]?.code} in a plan planned again`);
}

/** Money of a plan for the same week that owes nothing to the old menu; what is over and paid stays as it is. */
function searchAfresh(
  week: Extract<ReturnType<typeof changeProblem>, { ok: true }>["value"],
  seed: number,
  seconds: number,
): number | undefined {
  const { problem, join } = toRemainder(week);
  const { plan } = timeSearch(problem, seed + 500, seconds, measurePace(problem));
  return plan && checkPlan(week.problem, join(plan)).money.totalMinor;
}

function median(values: readonly (number | undefined)[]): number | null {
  const known = values.filter((value) => value !== undefined).sort((a, b) => a - b);
  return known.length === 0 ? null : (known[known.length >> 1] as number);
}

function summarise(rows: readonly Row[]): Record<string, unknown> {
  const distances = rows.flatMap(({ overFreshPct }) => overFreshPct ?? []);
  return {
    replans: rows.length,
    withoutPlan: rows.filter(({ sittingsChanged }) => sittingsChanged === undefined).length,
    timeS: median(rows.map(({ timeS }) => timeS)),
    worstTimeS: Math.max(...rows.map(({ timeS }) => timeS)),
    overFreshPct: median(distances),
    worstOverFreshPct: distances.length === 0 ? null : Math.max(...distances),
    sittingsChanged: median(rows.map(({ sittingsChanged }) => sittingsChanged)),
    mostSittingsChanged: Math.max(...rows.map(({ sittingsChanged = 0 }) => sittingsChanged)),
  };
}

/** Plans again after each kind of change in so many seeded kitchens, and sums up all and each kind. */
export function benchReplan(size: Size, seeds: number, freshS: number): Record<string, Record<string, unknown>> {
  const rows: Row[] = [];
  measure("warm-up", generateProblem("S", 99), 99, 0.1);
  for (let seed = 1; seed <= seeds; seed++) {
    const own = measure(`${size}${seed}`, generateProblem(size, seed), seed, freshS);
    rows.push(...own);
    for (const row of own) process.stderr.write(`${JSON.stringify(row)}\n`);
  }
  const kinds = [...new Set(rows.map(({ change }) => change))];
  const byKind = kinds.map((kind) => [kind, summarise(rows.filter(({ change }) => change === kind))] as const);
  return { all: summarise(rows), ...Object.fromEntries(byKind) };
}

function main(): void {
  const { values } = parseArgs({
    options: {
      json: { type: "boolean", default: false },
      size: { type: "string", default: "M" },
      seeds: { type: "string", default: "5" },
      seconds: { type: "string", default: "2" },
    },
  });
  const results = benchReplan(values.size as Size, Number(values.seeds), Number(values.seconds));
  if (values.json) process.stdout.write(`${JSON.stringify({ bench: "menu/replan", size: values.size, results })}\n`);
  else console.table(results);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
