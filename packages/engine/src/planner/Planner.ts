import * as Comlink from "comlink";
import type { WorkPlan, WorkProblem } from "halfloaf/work";
import type { BoundOutcome, BoundProgress } from "../proveBound.ts";
import type { OrderJob, OrderOutcome } from "./OrderJob.ts";
import type { PlanJob, PlanOutcome, PlanProgress } from "./PlanJob.ts";
import type { SearchProgress } from "./PlannerService.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";
import type { ProofJob } from "./ProofJob.ts";
import { type LaneTicket, WorkerLane } from "./WorkerLane.ts";

/** How a planner uses the machine. */
export interface PlannerOptions {
  /** Threads that may be kept busy; with one alone, a proof begins when its search has ended. */
  readonly threads: number;
  /** Memory of the solver beyond which its worker is given up after a proof, since it never gives any back. */
  readonly mostSolverBytes?: number;
}

/** A search under way. */
export interface RunningPlan {
  readonly outcome: Promise<PlanOutcome>;
  /** The proof beside it, which may go on after the search; absent where none was asked for. */
  readonly proof?: Promise<BoundOutcome>;
  /** Ends search and proof with what they have. */
  stop(): void;
  /** Ends both for good; the outcome is `cancelled`. */
  cancel(): void;
}

/** A proof under way. */
export interface RunningProof {
  readonly outcome: Promise<BoundOutcome>;
  /** Tells it of a plan that costs so much, in minor units; the bound is not pushed above it. */
  hear(costMinor: number): void;
  /** Ends it with the bound proven by then. */
  stop(): void;
}

/** An order of work being looked for. */
export interface RunningOrder {
  readonly outcome: Promise<OrderOutcome>;
  /** Ends it with the best order so far. */
  stop(): void;
}

/** A search looks for messages every few dozen milliseconds, but not while it sets itself up. */
const PLAN_GRACE_MS = 2000;
/** A proof loses nothing when its worker ends amid a solve. */
const PROOF_GRACE_MS = 100;
const ORDER_GRACE_MS = 1000;
const MOST_SOLVER_BYTES = 256 * 2 ** 20;
const NOTHING_PROVEN: BoundOutcome = { status: "stopped", elapsed: 0, parts: 0 };

/**
 * Plans, proves and orders in workers, so that what called it stays awake: one worker searches, another proves beside
 * it. Several pieces of work may be queued for each; all tell their progress and are stopped or cancelled by themselves.
 * `dispose` ends the workers; what was under way is broken off with what it has.
 */
export class Planner {
  private readonly search: WorkerLane;
  private readonly proofs: WorkerLane;
  private readonly options: PlannerOptions;

  constructor(start: () => PlannerWorker, options: PlannerOptions) {
    this.search = new WorkerLane(start);
    this.proofs = new WorkerLane(start);
    this.options = options;
  }

  /** Searches for a plan and, where `proofS` is given, proves beside it how good it is. */
  plan(job: PlanJob, onProgress: (progress: PlanProgress) => void = () => undefined): RunningPlan {
    let progress: PlanProgress = { moves: 0 };
    const tell = (more: Partial<PlanProgress>): void => {
      progress = withGap({ ...progress, ...more });
      onProgress(progress);
    };
    let proof: RunningProof | undefined;
    let isEnded = false;
    const ticket = this.addSearch(job, (more) => {
      if (more.costMinor !== undefined) proof?.hear(more.costMinor);
      tell(more);
    });
    const end = (how: "stop" | "cancel") => (): void => {
      isEnded = true;
      ticket[how]();
      proof?.stop();
    };
    const running = { outcome: ticket.outcome, stop: end("stop"), cancel: end("cancel") };
    if (job.proofS === undefined) return running;
    const { problem, proofS: seconds } = job;
    const begun = this.whenThreadIsFree(ticket.outcome).then((found): Promise<BoundOutcome> | BoundOutcome => {
      if (isEnded) return NOTHING_PROVEN;
      const incumbentMinor = found ?? progress.costMinor;
      const proofJob = { problem, seconds, ...(incumbentMinor !== undefined && { incumbentMinor }) };
      proof = this.prove(proofJob, ({ boundMinor }) => tell({ boundMinor }));
      return proof.outcome;
    });
    return { ...running, proof: begun };
  }

  /** Proves how little any plan, or any plan of some dishes, can cost. */
  prove(job: ProofJob, onProgress: (progress: BoundProgress) => void = () => undefined): RunningProof {
    let best: BoundProgress | undefined;
    const stopped = (): BoundOutcome => ({ ...NOTHING_PROVEN, ...best });
    let incumbentMinor = job.incumbentMinor;
    const listen = (progress: BoundProgress): void => {
      best = progress;
      onProgress(progress);
    };
    const ticket = this.proofs.add<BoundOutcome>({
      begin: async (service) => {
        const known = incumbentMinor === undefined ? job : { ...job, incumbentMinor };
        const { outcome, memoryBytes } = await service.prove(known, Comlink.proxy(listen));
        if (memoryBytes > (this.options.mostSolverBytes ?? MOST_SOLVER_BYTES)) this.proofs.recycle();
        return outcome;
      },
      breakOff: stopped,
      cancel: stopped,
      fail: (reason) => ({ status: "failed", reason, elapsed: best?.elapsed ?? 0 }),
      graceMs: PROOF_GRACE_MS,
    });
    return {
      outcome: ticket.outcome,
      stop: ticket.stop,
      hear: (costMinor) => {
        incumbentMinor = Math.min(costMinor, incumbentMinor ?? Number.POSITIVE_INFINITY);
        if (ticket.isRunning) void this.proofs.service.hear(costMinor);
      },
    };
  }

  /**
   * The order of work of one cooking, better ones told as they are found; it ends with proof, at the limit or when
   * stopped. Where memory can't be shared between threads (a page that is not isolated), stopping ends the worker, and
   * the best order told by then is the outcome.
   */
  order(problem: WorkProblem, limitMs: number, onPlan: (plan: WorkPlan) => void = () => undefined): RunningOrder {
    const stopFlag = typeof SharedArrayBuffer === "undefined" ? undefined : new SharedArrayBuffer(4);
    const job: OrderJob = { problem, limitMs, ...(stopFlag && { stopFlag }) };
    let best: WorkPlan | undefined;
    const listen = (plan: WorkPlan): void => {
      best = plan;
      onPlan(plan);
    };
    const ticket = this.search.add<OrderOutcome>({
      begin: (service) => service.order(job, Comlink.proxy(listen)),
      breakOff: () => (best ? { kind: "broken-off", plan: best } : { kind: "stopped" }),
      cancel: () => ({ kind: "stopped" }),
      fail: (reason) => ({ kind: "failed", reason }),
      graceMs: stopFlag ? ORDER_GRACE_MS : 0,
    });
    const stop = (): void => {
      if (stopFlag) Atomics.store(new Int32Array(stopFlag), 0, 1);
      ticket.stop();
    };
    return { outcome: ticket.outcome, stop };
  }

  /** Ends the workers. */
  dispose(): void {
    this.search.dispose();
    this.proofs.dispose();
  }

  private addSearch(job: PlanJob, onProgress: (progress: SearchProgress) => void): LaneTicket<PlanOutcome> {
    let best: PlanOutcome = { status: "none", gaps: [], moves: 0 };
    const listen = (progress: SearchProgress): void => {
      const { plan, costMinor, moves } = progress;
      if (plan && costMinor !== undefined) best = { status: "planned", plan, costMinor, moves, complete: false };
      onProgress(progress);
    };
    return this.search.add<PlanOutcome>({
      begin: (service) => service.plan(job, Comlink.proxy(listen)),
      breakOff: () => best,
      cancel: () => ({ status: "cancelled" }),
      fail: (reason) => ({ status: "failed", reason }),
      graceMs: PLAN_GRACE_MS,
    });
  }

  /** At once where there is a thread for the proof, else after the search; then with the money of its plan. */
  private async whenThreadIsFree(search: Promise<PlanOutcome>): Promise<number | undefined> {
    if (this.options.threads > 1) return undefined;
    const outcome = await search.catch(() => undefined);
    return outcome?.status === "planned" ? outcome.costMinor : undefined;
  }
}

function withGap(progress: PlanProgress): PlanProgress {
  const { costMinor, boundMinor } = progress;
  if (costMinor === undefined || boundMinor === undefined) return progress;
  return { ...progress, gapMinor: Math.max(0, costMinor - boundMinor) };
}
