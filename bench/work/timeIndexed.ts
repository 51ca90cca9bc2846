import { solveLinear } from "@halfloaf/engine";
import type { LinearColumn, LinearModel, LinearRow } from "halfloaf/menu/linear";
import type { Project } from "halfloaf/work";
import type { PeerRun } from "./comparePeers.ts";

/** The minutes in which each job may start, both ends included. */
interface Window {
  readonly earliest: number;
  readonly latest: number;
}

/**
 * A project as a time-indexed linear model: column `i@t` is 1 where job i starts at minute t, and the end is earliest.
 *
 * `horizon` is a length that can be reached. Each lag is written minute by minute, which binds the relaxed model more
 * than one row a lag. Undefined where the windows alone leave no room.
 * **Source**: Pritsker, Watters, Wolfe 1969, Management Science 16(1), 93-108; lags by the minute: Christofides,
 * Alvarez-Valdes, Tamarit 1987, EJOR 29(3), 262-273.
 */
function toTimeIndexedModel(project: Project, horizon: number): LinearModel | undefined {
  const windows = startWindows(project, horizon);
  if (!windows) return undefined;
  return {
    sense: "min",
    columns: windows.flatMap((window, job) => columnsOf(job, window, job === windows.length - 1)),
    rows: [
      ...windows.map((window, job) => onceRow(job, window)),
      ...project.lags.flatMap((lag, k) => lagRows(k, lag, windows)),
      ...project.resources.flatMap((_, r) => resourceRows(project, r, windows, horizon)),
    ],
  };
}

/** Runs HiGHS on the time-indexed model; the time is that of writing the model down and of solving it. */
export async function solveTimeIndexed(project: Project, horizon: number, limitMs: number): Promise<PeerRun> {
  const began = performance.now();
  const model = toTimeIndexedModel(project, horizon);
  if (!model) return { kind: "impossible", milliseconds: performance.now() - began, trace: [] };
  const handedOver = performance.now();
  const outcome = await solveLinear(model, { timeS: Math.max(0.01, (limitMs - (handedOver - began)) / 1000) });
  const milliseconds = performance.now() - began;
  const searchMs = performance.now() - handedOver;
  if (outcome.status === "impossible") return { kind: "impossible", milliseconds, searchMs, trace: [] };
  if (outcome.status !== "optimal") {
    const reason = outcome.status === "failed" ? outcome.reason : outcome.status;
    const isLate = /time/i.test(reason);
    return { kind: "stopped", milliseconds, searchMs, trace: [], ...(isLate ? {} : { fault: reason }) };
  }
  const start = new Int32Array(project.minutes.length);
  for (const [name, value] of outcome.values) {
    const [job, minute] = name.split("@").map(Number) as [number, number];
    if (value === 1) start[job] = minute;
  }
  const length = start[start.length - 1] as number;
  return { kind: "optimal", length, start, milliseconds, searchMs, trace: [{ milliseconds, length }] };
}

/** Earliest starts from the start, latest ones from the horizon, along the lags until nothing moves. */
function startWindows({ minutes, lags }: Project, horizon: number): Window[] | undefined {
  const last = minutes.length - 1;
  const windows = minutes.map((length, job) => ({ earliest: 0, latest: job === 0 ? 0 : horizon - length }));
  const all = [...lags, ...minutes.slice(0, last).map((lag, from) => ({ from, to: last, lag }))];
  for (let isMoving = true; isMoving; ) {
    isMoving = false;
    for (const { from, to, lag } of all) {
      const [a, b] = [windows[from] as Window, windows[to] as Window];
      const earliest = Math.max(b.earliest, a.earliest + lag);
      const latest = Math.min(a.latest, b.latest - lag);
      if (earliest === b.earliest && latest === a.latest) continue;
      windows[to] = { ...b, earliest };
      windows[from] = { ...a, latest };
      if (earliest > b.latest || latest < a.earliest) return undefined;
      isMoving = true;
    }
  }
  return windows;
}

function columnsOf(job: number, window: Window, isEnd: boolean): LinearColumn[] {
  return minutesOf(window).map((t) => ({
    name: `${job}@${t}`,
    cost: isEnd ? t : 0,
    lower: 0,
    upper: 1,
    integer: true,
  }));
}

function onceRow(job: number, window: Window): LinearRow {
  return { name: `once ${job}`, lower: 1, upper: 1, entries: minutesOf(window).map((t) => [`${job}@${t}`, 1]) };
}

/** Where a job starts at minute t or later, the one after it does not start before t + lag. */
function lagRows(k: number, { from, to, lag }: Project["lags"][number], windows: readonly Window[]): LinearRow[] {
  const [a, b] = [windows[from] as Window, windows[to] as Window];
  return minutesOf({ earliest: b.earliest - lag + 1, latest: a.latest }).map((t) => ({
    name: `lag ${k} from ${t}`,
    lower: Number.NEGATIVE_INFINITY,
    upper: 1,
    entries: [
      ...minutesOf({ earliest: Math.max(t, a.earliest), latest: a.latest }).map((at) => [`${from}@${at}`, 1] as const),
      ...minutesOf({ earliest: b.earliest, latest: t + lag - 1 }).map((at) => [`${to}@${at}`, 1] as const),
    ],
  }));
}

/** What runs at minute t takes no more than there is; minutes in which it cannot are left out. */
function resourceRows({ minutes, resources }: Project, r: number, windows: readonly Window[], horizon: number) {
  const { capacity, demands } = resources[r] as Project["resources"][number];
  return minutesOf({ earliest: 0, latest: horizon - 1 }).flatMap((t): LinearRow[] => {
    const running = windows.map(({ earliest, latest }, job) => ({
      job,
      demand: demands[job] as number,
      starts: minutesOf({
        earliest: Math.max(earliest, t - (minutes[job] as number) + 1),
        latest: Math.min(latest, t),
      }),
    }));
    const possible = running.filter(({ demand, starts }) => demand > 0 && starts.length > 0);
    if (possible.reduce((sum, { demand }) => sum + demand, 0) <= capacity) return [];
    const entries = possible.flatMap(({ job, demand, starts }) =>
      starts.map((at) => [`${job}@${at}`, demand] as const),
    );
    return [{ name: `resource ${r} at ${t}`, lower: Number.NEGATIVE_INFINITY, upper: capacity, entries }];
  });
}

function minutesOf({ earliest, latest }: Window): number[] {
  return Array.from({ length: Math.max(0, latest - earliest + 1) }, (_, k) => earliest + k);
}
