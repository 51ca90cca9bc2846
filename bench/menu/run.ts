import { cpus, loadavg } from "node:os";
import { parseArgs } from "node:util";
import { proveBound } from "@halfloaf/engine";
import { generateProblem, type Size } from "./generateProblem.ts";
import { type Instance, readInstances, seedInstances, seedLongInstances } from "./Instance.ts";
import { layRow, type TableRow, type TargetName } from "./layTable.ts";
import { measureProof, type ProofRow, summariseProof } from "./measureProof.ts";
import { measureSearch, type SearchPlan, type SearchRow, summariseSearch } from "./measureSearch.ts";
import { measureShortList, type ShortListRow, summariseShortList } from "./measureShortList.ts";
import { benchReasons } from "./reasons.ts";
import { benchReplan } from "./replan.ts";
import { loadSketch, type Sketch } from "./runSketch.ts";
import type { Spread } from "./statistics.ts";
import { measurePace, timeSearch } from "./timeSearch.ts";
import { useProcessorClock } from "./useProcessorClock.ts";

const SHORT_LIST_S = [1, 5];
const FRESH_S = 2;

/** What the command line asked for. */
interface Wish extends SearchPlan {
  readonly seeds: number;
  readonly parts: ReadonlySet<string>;
}

/** The figures of one group of problems. */
interface Group {
  readonly search: ReturnType<typeof summariseSearch>;
  readonly proof?: ReturnType<typeof summariseProof>;
  readonly shortList?: ReturnType<typeof summariseShortList>;
}

/** Searches all problems of a group, and proves where asked. */
async function measureGroup(instances: readonly Instance[], wish: Wish, proves: boolean): Promise<Group> {
  const { seconds, sketch, parts } = wish;
  const searches: SearchRow[] = [];
  const proofs: ProofRow[] = [];
  const lists: ShortListRow[] = [];
  for (const instance of instances) {
    const peer = fits(instance) ? sketch : undefined;
    const row = measureSearch(instance, { ...wish, sketch: peer });
    searches.push(row);
    if (proves && parts.has("gap")) proofs.push(await measureProof(row, seconds, peer));
    if (proves && parts.has("short")) lists.push(await measureShortList(row, SHORT_LIST_S));
    tellRow(row, proofs.at(-1), lists.at(-1));
  }
  return {
    search: summariseSearch(searches, seconds),
    ...(proofs.length > 0 && { proof: summariseProof(proofs, seconds) }),
    ...(lists.length > 0 && { shortList: summariseShortList(lists, SHORT_LIST_S) }),
  };
}

/** The trial reads seeded weeks alone. */
function fits({ group }: Instance): boolean {
  return group !== "instances" && group !== "long";
}

function tellRow({ instance, firstS, costs, bestMinor }: SearchRow, proof?: ProofRow, list?: ShortListRow): void {
  const maps = { costs, gaps: proof?.gaps, shortList: list };
  const told = Object.entries(maps).map(([name, map]) => [name, map && Object.fromEntries(map)]);
  process.stderr.write(`${JSON.stringify({ name: instance.name, firstS, bestMinor, ...Object.fromEntries(told) })}\n`);
}

/** Everything the first solve or search of a process pays for, paid beforehand. */
async function warmUp(sketch: Sketch | undefined): Promise<void> {
  const warm = generateProblem("S", 99);
  timeSearch(warm, 1, 0.3, measurePace(warm));
  await proveBound(warm, { seconds: 0.5 });
  sketch?.search(warm, 1, 0.3);
}

async function measureAll(
  sizes: readonly Size[],
  wish: Wish,
): Promise<{ groups: Record<string, Group>; table: TableRow[] }> {
  const groups: Record<string, Group> = {};
  if (wish.parts.has("search"))
    for (const size of sizes) groups[size] = await measureGroup(seedInstances(size, wish.seeds), wish, size === "M");
  if (wish.parts.has("long")) groups.long = await measureGroup(seedLongInstances(wish.seeds), wish, false);
  return { groups, table: [...layGroups(groups), ...layOthers(wish)] };
}

function layGroups({ M, L, long }: Record<string, Group>): TableRow[] {
  const quality = (name: TargetName, group: Group | undefined, s: string): TableRow[] => {
    const found = group?.search.quality[s];
    return found ? [layRow(name, found.overBestPct, found.costRatioToSketch)] : [];
  };
  const gap = (name: TargetName, s: string): TableRow[] => {
    const found = M?.proof?.[s];
    return found ? [layRow(name, found.gapPct, found.gapRatioToSketch)] : [];
  };
  const shortList = M?.shortList?.["5s"];
  return [
    ...(M ? [layRow("firstM", M.search.firstS, M.search.firstRatioToSketch)] : []),
    ...quality("qualityM2", M, "2s"),
    ...quality("qualityM10", M, "10s"),
    ...quality("qualityL2", L, "2s"),
    ...gap("gapM2", "2s"),
    ...gap("gapM10", "10s"),
    ...(shortList ? [layRow("shortList", shortList.gapPct)] : []),
    ...(long ? [layRow("firstLong", long.search.firstS)] : []),
    ...quality("qualityLong10", long, "10s"),
  ];
}

function layOthers({ parts, seeds }: Wish): TableRow[] {
  const rows: TableRow[] = [];
  if (parts.has("replan")) {
    const { all } = benchReplan("M", seeds, FRESH_S);
    const pick = (median: string, worst: string): Spread => ({
      median: toFigure(all?.[median]),
      worst: toFigure(all?.[worst]),
    });
    rows.push(layRow("replanTime", pick("timeS", "worstTimeS")));
    rows.push(layRow("replanDistance", pick("overFreshPct", "worstOverFreshPct")));
    rows.push(layRow("replanChanges", pick("sittingsChanged", "mostSittingsChanged")));
  }
  if (parts.has("reasons")) {
    const { impossible, limitCosts } = benchReasons("M", seeds);
    rows.push(layRow("impossible", { median: impossible.medianS, worst: impossible.worstS }));
    rows.push(layRow("limitCosts", { median: limitCosts.medianS, worst: limitCosts.worstS }));
  }
  return rows;
}

function toFigure(value: unknown): number | null {
  return typeof value === "number" ? value : null;
}

function readWish() {
  const { values } = parseArgs({
    options: {
      json: { type: "boolean", default: false },
      quick: { type: "boolean", default: false },
      instances: { type: "string" },
      sizes: { type: "string", default: "S,M,L" },
      parts: { type: "string", default: "search,gap,short,replan,reasons,long" },
      seeds: { type: "string" },
      seconds: { type: "string", default: "2,10" },
      searches: { type: "string", default: "1" },
      best: { type: "string", default: "20" },
      sketch: { type: "string", default: "../shared/trials/menu" },
      clock: { type: "string", default: "wall" },
    },
  });
  return {
    ...values,
    seeds: Number(values.seeds ?? (values.quick ? 1 : 5)),
    sizes: values.sizes.split(",") as Size[],
    seconds: values.seconds.split(",").map(Number),
    searches: Number(values.searches),
  };
}

async function main(): Promise<void> {
  const asked = readWish();
  if (asked.clock === "processor") useProcessorClock();
  const sketch = await loadSketch(asked.sketch);
  const parts = new Set(asked.parts.split(","));
  const { seeds, seconds, searches, best } = asked;
  const wish: Wish = { seeds, seconds, searches, bestS: Number(best), parts, sketch };
  await warmUp(sketch);
  const { groups, table } = asked.instances
    ? { groups: { instances: await measureGroup(readInstances(asked.instances), wish, true) }, table: [] }
    : await measureAll(asked.sizes, wish);
  const machine = { node: process.version, cpu: cpus()[0]?.model, cores: cpus().length, load: loadavg()[0] };
  const result = {
    bench: "menu",
    machine,
    clock: asked.clock,
    seeds: wish.seeds,
    sketch: sketch !== undefined,
    table,
    groups,
  };
  if (asked.json) process.stdout.write(`${JSON.stringify(result)}\n`);
  else if (table.length > 0) console.table(table);
  else console.log(JSON.stringify(groups, undefined, 2));
}

await main();
