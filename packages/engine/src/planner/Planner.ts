import * as Comlink from "comlink";
import type { WorkPlan, WorkProblem } from "halfloaf/work";
import type { BoundOutcome, BoundProgress } from "../proveBound.ts";
import { JointSearch } from "./JointSearch.ts";
import type { OrderJob, OrderOutcome } from "./OrderJob.ts";
import type { PlanJob, PlanOutcome, PlanProgress } from "./PlanJob.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";
import type { ProofJob } from "./ProofJob.ts";
import { WorkerLane } from "./WorkerLane.ts";

/** How a planner uses the machine. */
export interface PlannerOptions {
  /** Threads that may be kept busy; with one alone, a proof begins when its search has ended. */
  readonly threads: number;
  /** Memory of the device, as far as it tells. */
  readonly memoryGb?: number;
  /** Memory of the solver beyond which its worker is given up after a proof, since it never gives any back. */
  readonly mostSolverBytes?: number;
}

/** A search under way, or several as one. */
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

/** Beyond these a further search brings little, and warms the device. */
const MOST_SEARCHES = 4;
/** A search and its problem take some dozen megabytes; this leaves most of a device to all else. */
const GB_PER_SEARCH = 2;
/** A proof loses nothing when its worker ends amid a solve. */
const PROOF_GRACE_MS = 100;
const ORDER_GRACE_MS = 1000;
const MOST_SOLVER_BYTES = 256 * 2 ** 20;
const NOTHING_PROVEN: BoundOutcome = { status: "stopped", elapsed: 0, parts: 0 };

/**
 * Plans, proves and orders in workers, so that what called it stays awake: one worker searches, another proves beside
 * it, and a plan may be searched for in further workers from other seeds. Several pieces of work may be queued for each;
 * all tell their progress and are stopped or cancelled by themselves. `dispose` ends the workers; what was under way is
 * broken off with what it has.
 *
 * A plan hangs on its job alone, on problem, seed, moves and number of searches, once all of them have made their moves.
 * What is told on the way, and what a stop leaves, hang on how fast each of them ran. Decision 0016.
 */
export class Planner {
  private readonly start: () => PlannerWorker;
  /** The first searches every plan and orders all work; the others search along where a job asks for several. */
  private readonly searches: WorkerLane[];
  private readonly proofs: WorkerLane;
  private readonly options: PlannerOptions;

  constructor(start: () => PlannerWorker, options: PlannerOptions) {
    this.start = start;
    this.searches = [new WorkerLane(start)];
    this.proofs = new WorkerLane(start);
    this.options = options;
  }

  /** Searches that the machine has room for beside a proof and the rest of it: 1 to 4, 1 on two cores or 2 GB. */
  get mostSearches(): number {
    const { threads, memoryGb = Number.POSITIVE_INFINITY } = this.options;
    return Math.max(1, Math.min(MOST_SEARCHES, threads - 1, Math.floor(memoryGb / GB_PER_SEARCH)));
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
    const search = new JointSearch(this.lanes(job.searches ?? 1), job, (more) => {
      if (more.costMinor !== undefined) proof?.hear(more.costMinor);
      tell(more);
    });
    const end = (how: "stop" | "cancel") => (): void => {
      isEnded = true;
      search[how]();
      proof?.stop();
    };
    const running = { outcome: search.outcome, stop: end("stop"), cancel: end("cancel") };
    if (job.proofS === undefined) return running;
    const { problem, proofS: seconds } = job;
    const begun = this.whenThreadIsFree(search.outcome).then((found): Promise<BoundOutcome> | BoundOutcome => {
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
    const ticket = this.lanes(1)[0].add<OrderOutcome>({
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
    for (const lane of [...this.searches, this.proofs]) lane.dispose();
  }

  private lanes(count: number): readonly [WorkerLane, ...WorkerLane[]] {
    while (this.searches.length < count) this.searches.push(new WorkerLane(this.start));
    return this.searches.slice(0, Math.max(1, count)) as [WorkerLane, ...WorkerLane[]];
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
