import type { MenuPlan } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { Instance } from "./Instance.ts";
import type { Sketch } from "./runSketch.ts";
import { medianOf, ratioOf, spreadOf } from "./statistics.ts";
import { measurePace, timeSearch } from "./timeSearch.ts";

/** What the search reached on one problem, by seconds of search, and what the trial did. */
export interface SearchRow {
  readonly instance: Instance;
  readonly firstS: number | undefined;
  /** Money of the plan of each search, first that from the seed of the problem. */
  readonly costs: ReadonlyMap<number, readonly (number | undefined)[]>;
  readonly sketchFirstS: number | undefined;
  readonly sketchCosts: ReadonlyMap<number, number | undefined>;
  /** Money of the cheapest plan seen in this run; absent while there is none. */
  readonly bestMinor: number | undefined;
  readonly bestPlan: MenuPlan | undefined;
}

/** Seeds of several searches of one problem lie so far apart, so that each problem has its own. */
const BETWEEN_SEEDS = 10_000;

/** How a problem is searched. */
export interface SearchPlan {
  /** Times of the searches, each a search of its own. */
  readonly seconds: readonly number[];
  /** Searches of each time, from as many seeds. */
  readonly searches: number;
  /** Seconds of one more search, for the best plan known; 0 = none. */
  readonly bestS: number;
  readonly sketch: Sketch | undefined;
}

/**
 * Searches for each of the times, and longer from another seed for the best plan known. Throws where the judge finds a fault
 * in a plan.
 */
export function measureSearch(instance: Instance, { seconds, searches, bestS, sketch }: SearchPlan): SearchRow {
  const { problem, seed } = instance;
  const pace = measurePace(problem);
  const seeds = Array.from({ length: searches }, (_, i) => seed + i * BETWEEN_SEEDS);
  const found = seconds.map((s) => seeds.map((each) => timeSearch(problem, each, s, pace)));
  const peers = seconds.map((s) => sketch?.search(problem, seed, s));
  const all = [...found.flat(), ...(bestS > 0 ? [timeSearch(problem, seed + 1000, bestS, pace)] : [])];
  const costOf = (costMinor: number | undefined): number => costMinor ?? Number.POSITIVE_INFINITY;
  const best = all.reduce((least, one) => (costOf(one.costMinor) < costOf(least.costMinor) ? one : least));
  for (const { plan } of all) if (plan) assertSound(instance, plan);
  return {
    instance,
    firstS: found[0]?.[0]?.firstS,
    costs: new Map(seconds.map((s, i) => [s, (found[i] ?? []).map(({ costMinor }) => costMinor)])),
    sketchFirstS: peers[0]?.firstS,
    sketchCosts: new Map(seconds.map((s, i) => [s, peers[i]?.costMinor])),
    bestMinor: best.costMinor,
    bestPlan: best.plan,
  };
}

function assertSound({ name, problem }: Instance, plan: MenuPlan): void {
  const [fault] = checkPlan(problem, plan).faults;
  if (fault) throw new Error(`${name}: the judge finds ${fault.code} in a plan of the search`);
}

/** First plan, and how much dearer than the best known the plans of all searches are, over the problems of a group. */
export function summariseSearch(rows: readonly SearchRow[], seconds: readonly number[]) {
  const quality = seconds.map((s) => {
    const over = rows.flatMap(({ costs, bestMinor }) =>
      (costs.get(s) ?? [undefined]).map((cost) => {
        const ratio = ratioOf(cost, bestMinor);
        return ratio === undefined ? undefined : 100 * (ratio - 1);
      }),
    );
    const ratios = rows.map(({ costs, sketchCosts }) => ratioOf(costs.get(s)?.[0], sketchCosts.get(s)));
    return [`${s}s`, { overBestPct: spreadOf(over), costRatioToSketch: medianOf(ratios) }] as const;
  });
  return {
    instances: rows.length,
    searches: rows[0]?.costs.get(seconds[0] ?? 0)?.length ?? 0,
    firstS: spreadOf(rows.map(({ firstS }) => firstS)),
    firstRatioToSketch: medianOf(rows.map(({ firstS, sketchFirstS }) => ratioOf(firstS, sketchFirstS))),
    quality: Object.fromEntries(quality),
  };
}
