import { Planner, type PlannerOptions } from "./Planner.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";

export type { Planner, RunningPlan, RunningProof } from "./Planner.ts";

/**
 * A planner in web workers of a page. A bundler finds worker and solver by their URLs below. The page needs leave to
 * compile WASM (`wasm-unsafe-eval` in its content security policy); isolation is welcome but not needed.
 */
export function startWebPlanner(options: PlannerOptions = readDevice()): Planner {
  return new Planner(startWebWorker, options);
}

/** Some browsers don't tell how much memory there is. */
function readDevice(): PlannerOptions {
  const { hardwareConcurrency: threads, deviceMemory: memoryGb } = navigator as Navigator & { deviceMemory?: number };
  return memoryGb === undefined ? { threads } : { threads, memoryGb };
}

function startWebWorker(): PlannerWorker {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
  return {
    endpoint: worker,
    onFailure: (listener) =>
      worker.addEventListener("error", ({ message }) => listener(message || "the worker could not be started"), {
        once: true,
      }),
    terminate: () => worker.terminate(),
  };
}
