import * as Comlink from "comlink";
import type { WorkOutcome, WorkPlan, WorkProblem } from "halfloaf/work";
import type { PlanJob, PlanOutcome, PlanProgress } from "./PlanJob.ts";
import type { PlannerService } from "./PlannerService.ts";

/** A worker, reduced to what the planner needs of it. */
export interface PlannerWorker {
  readonly endpoint: Comlink.Endpoint;
  terminate(): void;
}

/** A search under way. */
export interface RunningPlan {
  readonly outcome: Promise<PlanOutcome>;
  /** Ends it with the best plan so far. */
  stop(): void;
  /** Ends it for good; the outcome is `cancelled`. */
  cancel(): void;
}

/**
 * Searches in a worker, so that what called it stays awake: several may be queued, each reports progress, stops or is
 * cancelled by itself. `dispose` ends the worker; what was running never answers, so cancel first.
 */
export class Planner {
  private readonly service: Comlink.Remote<PlannerService>;
  private readonly worker: PlannerWorker;
  private next = 0;

  constructor(worker: PlannerWorker) {
    this.worker = worker;
    this.service = Comlink.wrap<PlannerService>(worker.endpoint);
  }

  plan(job: PlanJob, onProgress: (progress: PlanProgress) => void = () => undefined): RunningPlan {
    const id = this.next++;
    const outcome = this.service.plan(id, job, Comlink.proxy(onProgress));
    return {
      outcome,
      stop: () => void this.service.stop(id),
      cancel: () => void this.service.cancel(id),
    };
  }

  /**
   * The order of work of one cooking, better ones told as they are found; it ends with proof, at the limit or when
   * stopped. Where memory can't be shared between threads (a page that is not isolated), only the limit stops it.
   */
  order(
    problem: WorkProblem,
    limitMs: number,
    onPlan: (plan: WorkPlan) => void = () => undefined,
  ): { readonly outcome: Promise<WorkOutcome>; stop(): void } {
    const stopFlag = typeof SharedArrayBuffer === "undefined" ? undefined : new SharedArrayBuffer(4);
    const job = { problem, limitMs, ...(stopFlag && { stopFlag }) };
    return {
      outcome: this.service.order(job, Comlink.proxy(onPlan)),
      stop: () => {
        if (stopFlag) Atomics.store(new Int32Array(stopFlag), 0, 1);
      },
    };
  }

  dispose(): void {
    this.service[Comlink.releaseProxy]();
    this.worker.terminate();
  }
}
