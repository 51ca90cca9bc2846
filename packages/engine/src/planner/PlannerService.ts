import { MenuSearch } from "halfloaf/menu";
import { solveWork, type WorkOutcome, type WorkPlan } from "halfloaf/work";
import type { OrderJob } from "./OrderJob.ts";
import type { PlanJob, PlanOutcome, PlanProgress } from "./PlanJob.ts";

/** Longest stretch of searching without looking for messages, in milliseconds. */
const SLICE_MS = 25;

/** Lets messages in: resolves after what is waiting in the event loop has been handled. */
function breathe(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}

/**
 * Runs searches one after the other, in the order they came, and answers to stop and cancel within a slice. It lives
 * in a worker; the same code runs in a browser's and in Node's.
 */
export class PlannerService {
  private readonly ended = new Map<number, "stop" | "cancel">();
  private queue: Promise<unknown> = Promise.resolve();

  /** Queues a search; `id` names it for `stop` and `cancel`. */
  plan(id: number, job: PlanJob, onProgress: (progress: PlanProgress) => void): Promise<PlanOutcome> {
    const turn = this.queue.then(() => this.run(id, job, onProgress));
    this.queue = turn.catch(() => undefined);
    return turn;
  }

  /** Queues an order of work; it can be stopped through its flag, since it leaves no time for messages. */
  order(job: OrderJob, onPlan: (plan: WorkPlan) => void): Promise<WorkOutcome> {
    const turn = this.queue.then(() => {
      const until = performance.now() + job.limitMs;
      const flag = job.stopFlag && new Int32Array(job.stopFlag);
      const shouldStop = (): boolean =>
        performance.now() >= until || (flag !== undefined && Atomics.load(flag, 0) !== 0);
      return solveWork(job.problem, { shouldStop, onPlan });
    });
    this.queue = turn.catch(() => undefined);
    return turn;
  }

  /** Ends a search with what it has; one that is still waiting makes a first plan. */
  stop(id: number): void {
    if (this.ended.get(id) !== "cancel") this.ended.set(id, "stop");
  }

  /** Ends a search for good. */
  cancel(id: number): void {
    this.ended.set(id, "cancel");
  }

  private async run(id: number, job: PlanJob, onProgress: (progress: PlanProgress) => void): Promise<PlanOutcome> {
    if (this.ended.get(id) === "cancel") return this.finish(id, { status: "cancelled" });
    const search = new MenuSearch(job.problem, job.seed, { expectedMoves: job.moves });
    const { gaps } = search;
    if (gaps.length > 0) return this.finish(id, { status: "none", gaps, moves: 0 });
    let progress: PlanProgress = { moves: 0 };
    while (progress.moves < job.moves) {
      const from = performance.now();
      let improved = false;
      do {
        const report = search.advance();
        improved ||= report.improved;
        progress = { moves: report.moves, ...(report.costMinor !== undefined && { costMinor: report.costMinor }) };
      } while (progress.moves < job.moves && performance.now() - from < SLICE_MS);
      if (improved) onProgress(progress);
      await breathe();
      const ended = this.ended.get(id);
      if (ended === "cancel") return this.finish(id, { status: "cancelled" });
      if (ended === "stop") break;
    }
    const { moves, costMinor } = progress;
    const plan = search.best();
    if (plan && costMinor !== undefined) {
      return this.finish(id, { status: "planned", plan, costMinor, moves, complete: moves >= job.moves });
    }
    const leastBroken = search.leastBroken();
    return this.finish(id, { status: "none", gaps, moves, ...(leastBroken && { leastBroken }) });
  }

  private finish(id: number, outcome: PlanOutcome): PlanOutcome {
    this.ended.delete(id);
    return outcome;
  }
}
