import * as Comlink from "comlink";
import { furtherSeed } from "./furtherSeed.ts";
import type { PlanJob, PlanOutcome, PlanProgress } from "./PlanJob.ts";
import type { SearchJob, SearchProgress } from "./PlannerService.ts";
import type { LaneTicket, WorkerLane } from "./WorkerLane.ts";

/** What several searches tell as one. */
export type JointProgress = Pick<PlanProgress, "moves" | "costMinor" | "plan" | "seed">;

/** A search looks for messages every few dozen milliseconds, but not while it sets itself up. */
const GRACE_MS = 2000;
/** A further search is not waited for so long: what it told by then is there, and it may not even have been started. */
const FURTHER_GRACE_MS = 250;

/**
 * The searches of one job, told of as one: what is told never gets worse, and the outcome is that of the best. One that fails
 * does not take the others' plan with it. They share nothing while they run, so that what they come to hangs on the job
 * alone and not on which of them was faster.
 */
export class JointSearch {
  readonly outcome: Promise<PlanOutcome>;
  private readonly onProgress: (progress: JointProgress) => void;
  private readonly tickets: readonly LaneTicket<PlanOutcome>[];
  /** Moves of each search that goes on. */
  private readonly moves = new Map<number, number>();
  private costMinor: number | undefined;
  /** The best plan told, by whichever search. */
  private told: Planned | undefined;

  constructor(lanes: readonly WorkerLane[], job: PlanJob, onProgress: (progress: JointProgress) => void) {
    this.onProgress = onProgress;
    const { problem, moves } = job;
    this.tickets = lanes.map((lane, place) => {
      this.moves.set(place, 0);
      return this.begin(lane, { problem, moves, seed: furtherSeed(job.seed, place) }, place);
    });
    const outcomes = this.tickets.map(({ outcome }, place) => this.follow(outcome, place));
    this.outcome = Promise.all(outcomes).then((all) => this.end(all));
  }

  /** Ends all of them with what they have. */
  stop(): void {
    for (const ticket of this.tickets) ticket.stop();
  }

  /** Ends all of them for good. */
  cancel(): void {
    for (const ticket of this.tickets) ticket.cancel();
  }

  private begin(lane: WorkerLane, job: SearchJob, place: number): LaneTicket<PlanOutcome> {
    const listen = (progress: SearchProgress): void => this.hear(progress, place, job.seed);
    return lane.add<PlanOutcome>({
      begin: (service) => {
        // The memory of further workers is only lent.
        if (place > 0) lane.recycle();
        return service.plan(job, Comlink.proxy(listen));
      },
      breakOff: () => this.told ?? { status: "none", gaps: [], moves: 0 },
      cancel: () => ({ status: "cancelled" }),
      fail: (reason) => ({ status: "failed", reason }),
      graceMs: place === 0 ? GRACE_MS : FURTHER_GRACE_MS,
    });
  }

  /** One that ends is no longer waited for; a defect of one search is told as its failure where there are others. */
  private async follow(outcome: Promise<PlanOutcome>, place: number): Promise<PlanOutcome> {
    const ended = this.tickets.length === 1 ? outcome : outcome.catch(toFailure);
    return ended.finally(() => this.moves.delete(place));
  }

  private hear({ moves, costMinor, plan }: SearchProgress, place: number, seed: number): void {
    // What was on its way when all had ended is too late.
    if (this.moves.size === 0) return;
    if (this.moves.has(place)) this.moves.set(place, moves);
    if (costMinor !== undefined) {
      this.costMinor = Math.min(costMinor, this.costMinor ?? Number.POSITIVE_INFINITY);
      if (plan !== undefined && costMinor < (this.told?.costMinor ?? Number.POSITIVE_INFINITY))
        this.told = { status: "planned", plan, costMinor, seed, moves, complete: false };
    }
    this.onProgress({
      moves: Math.min(...this.moves.values()),
      ...(this.costMinor !== undefined && { costMinor: this.costMinor }),
      ...(this.told && { plan: this.told.plan, seed: this.told.seed }),
    });
  }

  /** The cheapest plan, of equal ones the first; a plan told by a search that broke down later counts too. */
  private end(outcomes: readonly PlanOutcome[]): PlanOutcome {
    const cancelled = outcomes.find(({ status }) => status === "cancelled");
    if (cancelled !== undefined) return cancelled;
    const ended = outcomes.filter(isPlanned);
    const planned = this.told === undefined ? ended : [...ended, this.told];
    const [first, ...others] = planned;
    if (first === undefined) return (outcomes.find(({ status }) => status === "none") ?? outcomes[0]) as PlanOutcome;
    const best = others.reduce((least, one) => (one.costMinor < least.costMinor ? one : least), first);
    const isComplete = ended.length === outcomes.length && ended.every(({ complete }) => complete);
    return { ...best, complete: isComplete };
  }
}

type Planned = Extract<PlanOutcome, { readonly status: "planned" }>;

function isPlanned(outcome: PlanOutcome): outcome is Planned {
  return outcome.status === "planned";
}

function toFailure(error: unknown): PlanOutcome {
  return { status: "failed", reason: error instanceof Error ? error.message : String(error) };
}
