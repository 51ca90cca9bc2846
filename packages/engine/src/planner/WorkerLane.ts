import * as Comlink from "comlink";
import type { PlannerService } from "./PlannerService.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";

/** One piece of work for a worker, and what is answered where the worker does not get to answer. */
export interface LaneJob<Answer> {
  begin(service: Comlink.Remote<PlannerService>): Promise<Answer>;
  /** The answer where the worker had to be ended: what was told by then. */
  breakOff(): Answer;
  /** The answer where nobody wants it any more. */
  cancel(): Answer;
  /** The answer where the worker broke down. */
  fail(reason: string): Answer;
  /** Milliseconds that the worker has to answer after `stop`, before it is ended. */
  readonly graceMs: number;
}

/** A piece of work that waits or is under way. */
export interface LaneTicket<Answer> {
  readonly outcome: Promise<Answer>;
  readonly isRunning: boolean;
  /** Ends it with what it has; one that waits is begun in its turn and ended at once. */
  stop(): void;
  /** Ends it for good and at once. */
  cancel(): void;
}

interface Entry {
  run(service: Comlink.Remote<PlannerService>): Promise<void>;
  end(reason: string | undefined): void;
  readonly graceMs: number;
  isSettled: boolean;
  isStopped: boolean;
}

/**
 * One worker and what waits for it, one after the other. The worker is started when it is first needed; where it
 * breaks down, does not stop in time or is given up for its memory, the next piece of work gets a new one.
 */
export class WorkerLane {
  private readonly start: () => PlannerWorker;
  private readonly waiting: Entry[] = [];
  private current: Entry | undefined;
  private worker: PlannerWorker | undefined;
  private remote: Comlink.Remote<PlannerService> | undefined;
  private grace: ReturnType<typeof setTimeout> | undefined;
  private isSpent = false;

  constructor(start: () => PlannerWorker) {
    this.start = start;
  }

  get service(): Comlink.Remote<PlannerService> {
    if (this.remote) return this.remote;
    const worker = this.start();
    worker.onFailure((reason) => {
      if (worker === this.worker) this.drop(reason);
    });
    this.worker = worker;
    this.remote = Comlink.wrap<PlannerService>(worker.endpoint);
    return this.remote;
  }

  add<Answer>(job: LaneJob<Answer>): LaneTicket<Answer> {
    const lane = this;
    const { promise, resolve, reject } = withResolvers<Answer>();
    const settle = (answer: Answer): void => {
      entry.isSettled = true;
      resolve(answer);
    };
    const entry: Entry = {
      graceMs: job.graceMs,
      isSettled: false,
      isStopped: false,
      run: (service) => job.begin(service).then(settle, reject),
      end: (reason) => settle(reason === undefined ? job.breakOff() : job.fail(reason)),
    };
    this.waiting.push(entry);
    queueMicrotask(() => this.next());
    return {
      outcome: promise,
      get isRunning() {
        return lane.current === entry;
      },
      stop: () => lane.stop(entry),
      cancel: () => {
        if (entry.isSettled) return;
        settle(job.cancel());
        lane.stop(entry);
      },
    };
  }

  /** Has the worker ended after what is under way; the next piece of work starts a new one. */
  recycle(): void {
    this.isSpent = true;
  }

  /** Ends the worker; what is under way or waits is answered with what there is. */
  dispose(): void {
    for (const entry of this.waiting.splice(0)) if (!entry.isSettled) entry.end(undefined);
    this.drop(undefined);
  }

  private stop(entry: Entry): void {
    if (entry.isStopped) return;
    entry.isStopped = true;
    if (this.current === entry) this.stopCurrent(entry);
  }

  private stopCurrent({ graceMs }: Entry): void {
    if (graceMs > 0) {
      void this.service.stop();
      this.grace = setTimeout(() => this.drop(undefined), graceMs);
    } else this.drop(undefined);
  }

  private next(): void {
    if (this.current) return;
    let entry = this.waiting.shift();
    while (entry?.isSettled) entry = this.waiting.shift();
    if (entry) this.begin(entry);
  }

  private begin(entry: Entry): void {
    this.current = entry;
    const free = (): void => {
      if (this.current !== entry) return;
      this.release();
      if (this.isSpent) this.endWorker();
      this.next();
    };
    void entry.run(this.service).then(free, free);
    if (entry.isStopped) this.stopCurrent(entry);
  }

  private release(): Entry | undefined {
    const entry = this.current;
    this.current = undefined;
    clearTimeout(this.grace);
    return entry;
  }

  private drop(reason: string | undefined): void {
    const entry = this.release();
    this.endWorker();
    if (entry && !entry.isSettled) entry.end(reason);
    this.next();
  }

  private endWorker(): void {
    this.remote?.[Comlink.releaseProxy]();
    this.remote = undefined;
    this.worker?.terminate();
    this.worker = undefined;
    this.isSpent = false;
  }
}

function withResolvers<Value>() {
  let resolve: (value: Value) => void = () => undefined;
  let reject: (reason: unknown) => void = () => undefined;
  const promise = new Promise<Value>((yes, no) => {
    resolve = yes;
    reject = no;
  });
  return { promise, resolve, reject };
}
