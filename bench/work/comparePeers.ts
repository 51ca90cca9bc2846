import { basename } from "node:path";
import { type Project, solveProject } from "halfloaf/work";
import { findContradictions, type Instance, isProven, type Run, readSet, runOurs } from "./runSet.ts";
import { medianOf } from "./statistics.ts";

/** A run of a peer. `searchMs` is the time of its search alone, `fault` what went wrong but for lack of time. */
export interface PeerRun extends Run {
  readonly searchMs?: number;
  readonly fault?: string;
}

/** A solver of another kind to run beside ours; `horizon` is a length it may take as reached. */
export interface Peer {
  readonly name: string;
  solve(project: Project, horizon: number, limitMs: number): Promise<PeerRun>;
  close(): Promise<void>;
}

/** Ours and each peer on one set, in shares and milliseconds. */
export interface PeerComparison {
  readonly set: string;
  readonly instances: number;
  readonly limitS: number;
  /** What a run without proof counts as wherever times are compared. */
  readonly unprovenCountAs: "the limit";
  readonly ours: ReturnType<typeof sumUp>;
  readonly peers: Record<string, ReturnType<typeof sumUp> & ReturnType<typeof rate>>;
}

interface Pair {
  readonly instance: Instance;
  readonly ours: Run;
  readonly run: PeerRun;
}

/**
 * Ours and each peer on the same sample of a folder, one after the other on each instance. Undefined where a project has
 * lags other than "ends before", for which there is no first schedule to take the horizon from.
 */
export async function comparePeers(
  folder: string,
  peers: readonly Peer[],
  limitMs: number,
  most: number,
): Promise<PeerComparison | undefined> {
  const sample = pickEvenly(readSet(folder), most);
  if (!sample.every(({ project }) => project.lags.every(({ from, lag }) => lag === project.minutes[from]))) {
    return undefined;
  }
  const pairs = new Map(peers.map(({ name }) => [name, [] as Pair[]]));
  await warmUp(sample[0], peers);
  for (const instance of sample) {
    const { project } = instance;
    const ours = runOurs(project, limitMs);
    const horizon = findHorizon(project);
    for (const { name, solve } of peers) {
      pairs.get(name)?.push({ instance, ours, run: await solve(project, horizon, limitMs) });
    }
  }
  const first = pairs.get(peers[0]?.name ?? "") ?? [];
  return {
    set: basename(folder),
    instances: sample.length,
    limitS: limitMs / 1000,
    unprovenCountAs: "the limit",
    ours: sumUp(
      first.map(({ instance, ours }) => ({ instance, run: ours })),
      limitMs,
    ),
    peers: Object.fromEntries(
      [...pairs].map(([name, list]) => [name, { ...sumUp(list, limitMs), ...rate(list, limitMs) }]),
    ),
  };
}

/**
 * `most` of the list, every k-th and round again from its end, k sharing no factor with its length: the sets go in
 * series, and a step in time with them would pick the same kinds over and over.
 */
function pickEvenly<T>(list: readonly T[], most: number): readonly T[] {
  const count = Math.min(most, list.length);
  let step = Math.ceil(list.length / Math.max(1, count));
  while (count > 0 && greatestCommonFactor(step, list.length) > 1) step++;
  return Array.from({ length: count }, (_, k) => list[(k * step) % list.length] as T);
}

function greatestCommonFactor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonFactor(b, a % b);
}

/** The first runs also compile the code; they are not counted. */
async function warmUp(instance: Instance | undefined, peers: readonly Peer[]): Promise<void> {
  if (!instance) return;
  runOurs(instance.project, 200);
  for (const { solve } of peers) await solve(instance.project, findHorizon(instance.project), 5000);
}

/** What our search has at once, before it has proven anything. */
function findHorizon(project: Project): number {
  const outcome = solveProject(project, { seed: 1, shouldStop: () => true });
  if (outcome.kind === "optimal" || outcome.kind === "feasible") return outcome.schedule.length;
  throw new Error(`a project without maximal lags has a schedule, but the outcome is ${outcome.kind}`);
}

function sumUp(list: readonly { readonly instance: Instance; readonly run: PeerRun }[], limitMs: number) {
  const runs = list.map(({ run }) => run);
  const provenWithin = (ms: number) => runs.filter((run) => isProvenBy(run, ms)).length / runs.length;
  return {
    proven: { "0.1": provenWithin(100), "1": provenWithin(1000), limit: provenWithin(limitMs) },
    unproven: runs.filter((run) => !isProvenBy(run, limitMs)).length,
    medianMs: medianOf(runs.map((run) => countedMs(run, limitMs))),
    contradictions: list.flatMap(({ instance, run }) => findContradictions(instance, run)),
    faults: list.flatMap(({ instance, run }) => (run.fault === undefined ? [] : [`${instance.name}: ${run.fault}`])),
  };
}

/** How many times as long as ours a peer takes: the median over the instances, with and without its preparations. */
function rate(pairs: readonly Pair[], limitMs: number) {
  const ratios = pairs.map(({ ours, run }) => countedMs(run, limitMs) / countedMs(ours, limitMs));
  const searches = pairs.map(({ ours, run }) => {
    const peerMs = isProvenBy(run, limitMs) ? (run.searchMs ?? run.milliseconds) : limitMs;
    return peerMs / countedMs(ours, limitMs);
  });
  return {
    medianTimesOurs: medianOf(ratios),
    leastTimesOurs: Math.min(...ratios),
    searchAloneMedianTimesOurs: medianOf(searches),
    slowerThanOurs: ratios.filter((ratio) => ratio > 1).length / ratios.length,
  };
}

function isProvenBy(run: Run, ms: number): boolean {
  return isProven(run) && run.milliseconds <= ms;
}

function countedMs(run: Run, limitMs: number): number {
  return isProvenBy(run, limitMs) ? run.milliseconds : limitMs;
}
