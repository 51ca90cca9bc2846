/** One piece of work: how long it takes and what it holds while it runs. */
export interface Job {
  /** Minutes at so many portions are `fixed + perPortion x portions`. */
  readonly minutes: { readonly fixed: number; readonly perPortion: number };
  /** How much it holds of each resource, in the order of the capacities. */
  readonly holds: readonly number[];
}

/** Jobs, which of them come before which, and how much there is of each resource. */
export interface Workload {
  readonly jobs: readonly Job[];
  /** `precedes[a][b]` is true where job `a` must be finished before job `b` starts, directly or through others. */
  readonly precedes: readonly (readonly boolean[])[];
  readonly capacities: readonly number[];
}

/** Minutes of a job at so many portions. */
export function jobMinutes({ minutes }: Job, portions: number): number {
  return minutes.fixed + minutes.perPortion * portions;
}

/**
 * Start of each job in minutes: one after the other in the order of `sequence`, each as early as what comes before it and
 * the capacities allow. `sequence` must not put a job before one it waits for. A job of no minutes holds nothing.
 * Throws where a job holds more than there is, since it could never start.
 * **Source**: serial schedule generation, Kolisch 1996, European Journal of Operational Research 90, 320-333.
 */
export function scheduleByList(work: Workload, portions: number, sequence: readonly number[]): number[] {
  const placed: Placed[] = [];
  for (const at of sequence) {
    const job = work.jobs[at] as Job;
    if (job.holds.some((held, resource) => held > (work.capacities[resource] as number))) {
      throw new RangeError(`job ${at} holds more than there is`);
    }
    const before = placed.filter((other) => work.precedes[other.at]?.[at]);
    const ready = before.reduce((latest, { end }) => Math.max(latest, end), 0);
    const moments = [ready, ...placed.map(({ end }) => end).filter((end) => end > ready)].sort((a, b) => a - b);
    const minutes = jobMinutes(job, portions);
    // When the last of the others has ended nothing stands in the way, so one of the moments fits.
    const start = moments.find((moment) => fits(work, placed, job, moment, moment + minutes)) as number;
    placed.push({ at, start, end: start + minutes });
  }
  const starts: number[] = work.jobs.map(() => 0);
  for (const { at, start } of placed) starts[at] = start;
  return starts;
}

interface Placed {
  readonly at: number;
  readonly start: number;
  readonly end: number;
}

/** Use of a resource only rises where a job starts, so looking at those moments is enough. */
function fits(work: Workload, placed: readonly Placed[], job: Job, start: number, end: number): boolean {
  const beside = placed.filter((other) => other.start < end && other.end > start);
  const moments = [start, ...beside.map((other) => other.start).filter((moment) => moment > start)];
  if (start === end) return true;
  return moments.every((moment) => {
    const running = beside.filter((other) => other.start <= moment && moment < other.end);
    return work.capacities.every((capacity, resource) => {
      const held = (each: Job) => each.holds[resource] as number;
      return running.reduce((sum, other) => sum + held(work.jobs[other.at] as Job), held(job)) <= capacity;
    });
  });
}

/**
 * A way to do a workload that holds for any number of portions: each job starts when those named have ended. Its length
 * is the greatest of sums of minutes, so it never falls with more portions and bends upwards only.
 */
export interface FixedOrder {
  /** The jobs so that none stands before one it waits for, each with those it waits for. */
  readonly waits: readonly { readonly at: number; readonly before: readonly number[] }[];
  readonly jobs: readonly Job[];
}

/**
 * The order that the schedule by list for so many portions puts on its jobs: what had ended when a job started comes before it.
 * Jobs that may then run at once ran at one common moment of the schedule, so the capacities hold however long they take.
 */
export function fixOrder(work: Workload, portions: number, sequence: readonly number[]): FixedOrder {
  const starts = scheduleByList(work, portions, sequence);
  const startOf = (at: number) => starts[at] as number;
  const endOf = (at: number) => startOf(at) + jobMinutes(work.jobs[at] as Job, portions);
  // The sort is stable, so jobs of no minutes at one moment stay in the order of the sequence.
  const inTurn = [...sequence].sort((a, b) => startOf(a) - startOf(b) || endOf(a) - endOf(b));
  const waits = inTurn.map((at, turn) => ({
    at,
    before: inTurn.slice(0, turn).filter((other) => endOf(other) <= startOf(at)),
  }));
  return { waits, jobs: work.jobs };
}

/** Minutes from the first start to the last end of a fixed order at so many portions; 0 where there is no job. */
export function orderMinutes({ waits, jobs }: FixedOrder, portions: number): number {
  const ends: number[] = jobs.map(() => 0);
  for (const { at, before } of waits) {
    const start = before.reduce((latest, other) => Math.max(latest, ends[other] as number), 0);
    ends[at] = start + jobMinutes(jobs[at] as Job, portions);
  }
  return Math.max(0, ...ends);
}
