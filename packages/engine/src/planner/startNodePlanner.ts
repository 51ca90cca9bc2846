/// <reference path="./comlink-node-adapter.d.ts" />
import { availableParallelism, totalmem } from "node:os";
import { Worker } from "node:worker_threads";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import { Planner, type PlannerOptions } from "./Planner.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";

/** A planner in worker threads of Node. Dispose of it, else the process does not end. */
export function startNodePlanner(options: PlannerOptions = readMachine()): Planner {
  return new Planner(startNodeWorker, options);
}

function readMachine(): PlannerOptions {
  return { threads: availableParallelism(), memoryGb: totalmem() / 2 ** 30 };
}

/** One worker thread of Node, for a planner. */
export function startNodeWorker(): PlannerWorker {
  const worker = new Worker(new URL("./nodeWorker.mjs", import.meta.url));
  return {
    endpoint: nodeEndpoint(worker),
    onFailure: (listener) => void worker.once("error", ({ message }: Error) => listener(message)),
    terminate: () => void worker.terminate(),
  };
}
