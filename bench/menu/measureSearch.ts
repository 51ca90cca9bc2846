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
  readonly costs: ReadonlyMap<number, number | undefined>;
  readonly sketchFirstS: number | undefined;
  readonly sketchCosts: ReadonlyMap<number, number | undefined>;
  /** Money of the cheapest plan seen in this run; absent while there is none. */
  readonly bestMinor: number | undefined;
  readonly bestPlan: MenuPlan | undefined;
}

/**
 * Searches for each of the times, each a search of its own, and longer from another seed for the best plan known.
 * Throws where the judge finds a fault in a plan.
 */
export function measureSearch(
  instance: Instance,
  seconds: readonly number[],
  bestSeconds: number,
  sketch: Sketch | undefined,
): SearchRow {
  const { problem, seed } = instance;
  const pace = measurePace(problem);
  const found = seconds.map((s) => timeSearch(problem, seed, s, pace));
  const peers = seconds.map((s) => sketch?.search(problem, seed, s));
  const all = bestSeconds > 0 ? [...found, timeSearch(problem, seed + 1000, bestSeconds, pace)] : found;
  const costOf = (costMinor: number | undefined): number => costMinor ?? Number.POSITIVE_INFINITY;
  const best = all.reduce((least, one) => (costOf(one.costMinor) < costOf(least.costMinor) ? one : least));
  for (const { plan } of all) if (plan) assertSound(instance, plan);
  return {
    instance,
    firstS: found[0]?.firstS,
    costs: new Map(seconds.map((s, i) => [s, found[i]?.costMinor])),
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

/** First plan, and how much dearer than the best known the plans are, over the problems of a group. */
export function summariseSearch(rows: readonly SearchRow[], seconds: readonly number[]) {
  const quality = seconds.map((s) => {
    const over = rows.map(({ costs, bestMinor }) => {
      const ratio = ratioOf(costs.get(s), bestMinor);
      return ratio === undefined ? undefined : 100 * (ratio - 1);
    });
    const ratios = rows.map(({ costs, sketchCosts }) => ratioOf(costs.get(s), sketchCosts.get(s)));
    return [`${s}s`, { overBestPct: spreadOf(over), costRatioToSketch: medianOf(ratios) }] as const;
  });
  return {
    instances: rows.length,
    firstS: spreadOf(rows.map(({ firstS }) => firstS)),
    firstRatioToSketch: medianOf(rows.map(({ firstS, sketchFirstS }) => ratioOf(firstS, sketchFirstS))),
    quality: Object.fromEntries(quality),
  };
}
