import { Worker } from "node:worker_threads";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import { Planner } from "./Planner.ts";

/** A planner in a worker thread of Node. Dispose of it, else the process does not end. */
export function startNodePlanner(): Planner {
  const worker = new Worker(new URL("./nodeWorker.mjs", import.meta.url));
  return new Planner({ endpoint: nodeEndpoint(worker), terminate: () => void worker.terminate() });
}
