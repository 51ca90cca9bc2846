import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";
import type { Project } from "halfloaf/work";
import type { Peer, PeerRun } from "./comparePeers.ts";

/** Only the one constraint is included: reading the whole library of them takes seconds each time. */
const MODEL = `include "cumulative.mzn";
int: horizon; int: jobs; int: lags; int: kinds;
array[1..jobs] of int: minutes;
array[1..lags, 1..3] of int: lag;
array[1..kinds, 1..jobs] of int: demand;
array[1..kinds] of int: capacity;
array[1..jobs] of var 0..horizon: start;
constraint forall(k in 1..lags)(start[lag[k, 2]] >= start[lag[k, 1]] + lag[k, 3]);
constraint forall(k in 1..kinds)(
  let { set of int: takers = {i | i in 1..jobs where demand[k, i] > 0 /\\ minutes[i] > 0} } in
  cumulative([start[i] | i in takers], [minutes[i] | i in takers], [demand[k, i] | i in takers], capacity[k])
);
solve :: int_search(start, smallest, indomain_min) minimize start[jobs];
`;

/** Learning search, by turns as the model says and by activity. */
const OPTIONS = ["-i", "--output-mode", "json", "--statistics", "--solver", "chuffed", "-f"];

/** Milliseconds that a solver gets to notice its limit before its thread is ended. */
const GRACE_MS = 1000;

type Message =
  | { readonly type: "solution"; readonly output: { readonly json: { readonly start: readonly number[] } } }
  | { readonly type: "status"; readonly status: string }
  | { readonly type: "statistics"; readonly statistics: { readonly solveTime?: number } }
  | { readonly type: "error"; readonly message: string }
  | { readonly type: "exit"; readonly code: number }
  | { readonly type: "ready" };

/**
 * The constraint solver Chuffed as compiled to WASM in the package `minizinc`; undefined where it is not installed.
 *
 * `folder` holds the `node_modules` with the package; absent means those of this repository. A second run in one
 * thread gave wrong answers or broke down, so each gets a thread of its own, started before the clock.
 */
export async function loadMinizinc(folder?: string): Promise<Peer | undefined> {
  const file = findPackageFile(folder);
  if (file === undefined) return undefined;
  // One thread stays open unused, so that the compiled code is kept for the others.
  const idle = await startThread(file);
  return {
    name: "minizinc",
    solve: async (project, horizon, limitMs) => {
      const thread = await startThread(file);
      const run = await runThread(thread, project, horizon, limitMs);
      await thread.terminate();
      return run;
    },
    close: async () => {
      await idle.terminate();
    },
  };
}

function findPackageFile(folder?: string): string | undefined {
  const from = folder === undefined ? import.meta.url : pathToFileURL(join(resolve(folder), "from.js"));
  try {
    return createRequire(from).resolve("minizinc/minizinc-worker.js");
  } catch {
    return undefined;
  }
}

function startThread(file: string): Promise<Worker> {
  const thread = new Worker(new URL("./minizincWorker.mjs", import.meta.url), { workerData: file, execArgv: [] });
  const beside = (ending: string) => file.replace(/-worker\.js$/, ending);
  return new Promise((settle, fail) => {
    thread.once("error", fail);
    thread.once("message", () => {
      thread.off("error", fail);
      settle(thread);
    });
    thread.postMessage({ wasmURL: beside(".wasm"), dataURL: beside(".data") });
  });
}

function runThread(thread: Worker, project: Project, horizon: number, limitMs: number): Promise<PeerRun> {
  const began = performance.now();
  const trace: { milliseconds: number; length: number }[] = [];
  let start: readonly number[] | undefined;
  let status = "";
  let searchMs: number | undefined;
  let fault: string | undefined;
  return new Promise((settle) => {
    const end = () => {
      clearTimeout(watch);
      const kind = toKind(status, start !== undefined);
      const length = trace.at(-1)?.length;
      settle({
        kind,
        milliseconds: performance.now() - began,
        trace,
        ...(start && length !== undefined ? { start, length } : {}),
        ...(searchMs === undefined ? {} : { searchMs }),
        ...(fault === undefined ? {} : { fault }),
      });
    };
    const watch = setTimeout(end, limitMs + GRACE_MS);
    thread.on("error", (error) => {
      fault = String(error);
      end();
    });
    thread.on("message", (message: Message) => {
      if (message.type === "solution") {
        start = message.output.json.start;
        trace.push({ milliseconds: performance.now() - began, length: start.at(-1) as number });
      } else if (message.type === "status") status = message.status;
      else if (message.type === "statistics") {
        const { solveTime } = message.statistics;
        if (solveTime !== undefined) searchMs = 1000 * solveTime;
      } else if (message.type === "error") fault = message.message;
      else if (message.type === "exit") {
        if (message.code !== 0) fault ??= `ended with code ${message.code}`;
        end();
      }
    });
    const files = { "project.mzn": MODEL, "project.json": JSON.stringify(toData(project, horizon)) };
    const args = [...OPTIONS, "--time-limit", String(limitMs), ...Object.keys(files)];
    thread.postMessage({ jsonStream: true, files, args });
  });
}

function toKind(status: string, hasSchedule: boolean): PeerRun["kind"] {
  if (status === "OPTIMAL_SOLUTION") return "optimal";
  if (status === "UNSATISFIABLE") return "impossible";
  return hasSchedule ? "feasible" : "stopped";
}

function toData({ minutes, lags, resources }: Project, horizon: number) {
  return {
    horizon,
    jobs: minutes.length,
    lags: lags.length,
    kinds: resources.length,
    minutes,
    lag: lags.map(({ from, to, lag }) => [from + 1, to + 1, lag]),
    demand: resources.map(({ demands }) => demands),
    capacity: resources.map(({ capacity }) => capacity),
  };
}
