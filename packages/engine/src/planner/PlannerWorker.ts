import type { Endpoint } from "comlink";

/** A worker, reduced to what the planner needs of it. */
export interface PlannerWorker {
  readonly endpoint: Endpoint;
  /** Calls the listener once if the worker breaks down or cannot be started at all. */
  onFailure(listener: (reason: string) => void): void;
  terminate(): void;
}
