import * as Comlink from "comlink";
import { atHighPrices, type MenuPlan, type MenuProblem, MenuSearch } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { solveWork, type WorkOutcome, type WorkPlan } from "halfloaf/work";
import { readSolverMemory } from "../loadSolver.ts";
import { type BoundProgress, proveBound } from "../proveBound.ts";
import type { OrderJob } from "./OrderJob.ts";
import type { PlanJob, PlanOutcome, PlanProgress } from "./PlanJob.ts";
import type { ProofAnswer, ProofJob } from "./ProofJob.ts";

/** Longest stretch of searching without looking for messages, in milliseconds. */
const SLICE_MS = 25;
/** Least time between two plans told, and how many times longer than the writing down of one. */
const LEAST_PAUSE_MS = 100;
const PAUSE_PER_PLAN = 10;

/** What a search tells from within its worker. */
export type SearchProgress = Pick<PlanProgress, "moves" | "costMinor" | "plan">;

/** One search of a job. */
export type SearchJob = Pick<PlanJob, "problem" | "seed" | "moves">;

/** Lets messages in: resolves after what is waiting in the event loop has been handled. */
function breathe(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}

/**
 * What a worker does: one piece of work at a time, which answers to `stop` within a slice. Who calls it keeps the
 * queue. The same code runs in a browser's worker and in Node's.
 */
export class PlannerService {
  private isStopped = false;
  private proof = new AbortController();
  private incumbentMinor: number | undefined;

  /**
   * Searches for a plan, once more at the high prices where none is found at those expected; every plan told has been
   * judged.
   */
  async plan(job: SearchJob, onProgress: (progress: SearchProgress) => void): Promise<PlanOutcome> {
    this.isStopped = false;
    const outcome = await this.search(job, onProgress);
    const isBroken = outcome.status === "none" && outcome.gaps.length === 0 && !this.isStopped;
    const raised = isBroken ? atHighPrices(job.problem) : undefined;
    const again = raised && (await this.search({ ...job, problem: raised }, onProgress));
    release(onProgress);
    if (again?.status !== "planned") return outcome;
    return { ...again, costMinor: checkPlan(job.problem, judge(job.problem, again.plan)).money.totalMinor };
  }

  private async search(job: SearchJob, onProgress: (progress: SearchProgress) => void): Promise<PlanOutcome> {
    const search = new MenuSearch(job.problem, job.seed, { expectedMoves: job.moves });
    const { gaps } = search;
    if (gaps.length > 0) return { status: "none", gaps, moves: 0 };
    const reporter = new Reporter(job.problem, search, onProgress);
    let moves = 0;
    let costMinor: number | undefined;
    while (moves < job.moves && !this.isStopped) {
      const until = performance.now() + SLICE_MS;
      do ({ moves, costMinor } = search.advance());
      while (moves < job.moves && performance.now() < until);
      reporter.tell(moves, costMinor);
      await breathe();
    }
    const plan = search.best();
    if (plan && costMinor !== undefined) {
      judge(job.problem, plan);
      return { status: "planned", plan, costMinor, seed: job.seed, moves, complete: moves >= job.moves };
    }
    const leastBroken = search.leastBroken();
    return { status: "none", gaps, moves, ...(leastBroken && { leastBroken }) };
  }

  /** Orders the work of a cooking. It leaves no time for messages: only its flag stops it, or the end of the worker. */
  order(job: OrderJob, onPlan: (plan: WorkPlan) => void): WorkOutcome {
    const until = performance.now() + job.limitMs;
    const flag = job.stopFlag && new Int32Array(job.stopFlag);
    const shouldStop = (): boolean => performance.now() >= until || (flag !== undefined && Atomics.load(flag, 0) !== 0);
    const outcome = solveWork(job.problem, { shouldStop, onPlan });
    release(onPlan);
    return outcome;
  }

  /** Proves how little any plan can cost. The solver is loaded by the first call. */
  async prove(job: ProofJob, onProgress: (progress: BoundProgress) => void): Promise<ProofAnswer> {
    this.proof = new AbortController();
    this.incumbentMinor = job.incumbentMinor;
    const outcome = await proveBound(job.problem, {
      incumbentMinor: () => this.incumbentMinor,
      seconds: job.seconds,
      signal: this.proof.signal,
      onProgress,
      ...(job.dishes && { dishes: new Set(job.dishes) }),
    });
    release(onProgress);
    return { outcome, memoryBytes: await readSolverMemory() };
  }

  /** Tells the proof under way of a plan that costs so much. */
  hear(incumbentMinor: number): void {
    this.incumbentMinor = Math.min(incumbentMinor, this.incumbentMinor ?? Number.POSITIVE_INFINITY);
  }

  /** Ends the search or proof under way with what it has. */
  stop(): void {
    this.isStopped = true;
    this.proof.abort();
  }
}

/** Tells progress now and then, since writing a plan down and judging it takes as long as thousands of moves. */
class Reporter {
  private readonly problem: MenuProblem;
  private readonly search: MenuSearch;
  private readonly onProgress: (progress: SearchProgress) => void;
  private notBefore = 0;
  private toldMinor = Number.POSITIVE_INFINITY;

  constructor(problem: MenuProblem, search: MenuSearch, onProgress: (progress: SearchProgress) => void) {
    this.problem = problem;
    this.search = search;
    this.onProgress = onProgress;
  }

  tell(moves: number, costMinor: number | undefined): void {
    const from = performance.now();
    if (from < this.notBefore) return;
    const isBetter = costMinor !== undefined && costMinor < this.toldMinor;
    const plan = isBetter ? this.search.best() : undefined;
    if (plan) {
      judge(this.problem, plan);
      this.toldMinor = costMinor as number;
    }
    this.onProgress({ moves, ...(costMinor !== undefined && { costMinor }), ...(plan && { plan }) });
    const now = performance.now();
    this.notBefore = now + Math.max(LEAST_PAUSE_MS, PAUSE_PER_PLAN * (now - from));
  }
}

/** A plan that the judge faults is a defect of the search and is never shown. */
function judge(problem: MenuProblem, plan: MenuPlan): MenuPlan {
  const [fault] = checkPlan(problem, plan).faults;
  if (fault !== undefined) throw new Error(`the search gave a plan that breaks its limits: ${fault.code}`);
  return plan;
}

/** Closes the channel that a listener of another thread came with; one of this thread has none. */
function release(listener: object): void {
  (listener as Partial<Comlink.ProxyMethods>)[Comlink.releaseProxy]?.();
}
