import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type FixedOrder,
  fixOrder,
  type Job,
  jobMinutes,
  orderMinutes,
  scheduleByList,
  type Workload,
} from "./listSchedule.ts";

/** Workloads of up to seven jobs that wait only for jobs before them, and two resources of capacity 2. */
const workloads: fc.Arbitrary<Workload> = fc
  .array(
    fc.record({
      minutes: fc.record({ fixed: fc.nat(6), perPortion: fc.nat(2) }),
      holds: fc.tuple(fc.nat(2), fc.nat(2)),
      waits: fc.array(fc.nat(6), { maxLength: 2 }),
    }),
    { minLength: 1, maxLength: 7 },
  )
  .map((drawn) => {
    const precedes = drawn.map(() => drawn.map(() => false));
    for (const [at, { waits }] of drawn.entries()) {
      for (const before of waits.filter((each) => each < at)) {
        for (const row of [...precedes.keys()]) {
          if (row === before || precedes[row]?.[before]) (precedes[row] as boolean[])[at] = true;
        }
      }
    }
    return { jobs: drawn.map(({ minutes, holds }) => ({ minutes, holds })), precedes, capacities: [2, 2] };
  });
const inOrder = ({ jobs }: Workload) => [...jobs.keys()];
const portionsDrawn = fc.integer({ min: 1, max: 9 });

/** Every minute at which a resource is overdrawn and every pair out of order, looked for minute by minute. */
function findBreaches(work: Workload, portions: number, starts: readonly number[]): string[] {
  const ends = starts.map((start, at) => start + jobMinutes(work.jobs[at] as Job, portions));
  const breaches: string[] = [];
  for (let minute = 0; minute < Math.max(...ends); minute++) {
    for (const [resource, capacity] of work.capacities.entries()) {
      const running = inOrder(work).filter((at) => (starts[at] as number) <= minute && minute < (ends[at] as number));
      const held = running.reduce((sum, at) => sum + (work.jobs[at]?.holds[resource] as number), 0);
      if (held > capacity) breaches.push(`${held} of resource ${resource} at minute ${minute}`);
    }
  }
  for (const a of inOrder(work)) {
    for (const b of inOrder(work)) {
      if (work.precedes[a]?.[b] && (ends[a] as number) > (starts[b] as number)) breaches.push(`${a} not before ${b}`);
    }
  }
  return breaches;
}

/** Starts in a fixed order, each as early as what it waits for allows. */
function startAll(order: FixedOrder, portions: number): number[] {
  const starts: number[] = order.jobs.map(() => 0);
  for (const { at, before } of order.waits) {
    const ends = before.map((other) => (starts[other] as number) + jobMinutes(order.jobs[other] as Job, portions));
    starts[at] = Math.max(0, ...ends);
  }
  return starts;
}

describe("laws", () => {
  test("a schedule keeps every order and every capacity at every minute", () => {
    fc.assert(
      fc.property(workloads, portionsDrawn, (work, portions) => {
        expect(findBreaches(work, portions, scheduleByList(work, portions, inOrder(work)))).toEqual([]);
      }),
    );
  });

  test("the order of a schedule keeps them for any other number of portions too", () => {
    fc.assert(
      fc.property(workloads, portionsDrawn, portionsDrawn, (work, found, portions) => {
        const order = fixOrder(work, found, inOrder(work));
        expect(findBreaches(work, portions, startAll(order, portions))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test("a fixed order is no longer than the schedule it comes from", () => {
    fc.assert(
      fc.property(workloads, portionsDrawn, (work, portions) => {
        const starts = scheduleByList(work, portions, inOrder(work));
        const ends = starts.map((start, at) => start + jobMinutes(work.jobs[at] as Job, portions));
        expect(orderMinutes(fixOrder(work, portions, inOrder(work)), portions)).toBeLessThanOrEqual(Math.max(...ends));
      }),
    );
  });

  test("the minutes of a fixed order bend upwards only", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(workloads, fc.nat(8), fc.nat(8), share, (work, a, b, part) => {
        const order = fixOrder(work, 2, inOrder(work));
        const chord = orderMinutes(order, a) * part + orderMinutes(order, b) * (1 - part);
        expect(orderMinutes(order, a * part + b * (1 - part))).toBeLessThanOrEqual(chord + 1e-9);
      }),
    );
  });
});

describe("cases", () => {
  const job = (fixed: number, ...holds: number[]): Job => ({ minutes: { fixed, perPortion: 0 }, holds });
  const free = [
    [false, false],
    [false, false],
  ];

  test("jobs that fit together run at once, others one after the other", () => {
    const run = (a: Job, b: Job) => scheduleByList({ jobs: [a, b], precedes: free, capacities: [2] }, 1, [0, 1]);
    expect(run(job(5, 1), job(3, 1))).toEqual([0, 0]);
    expect(run(job(5, 2), job(3, 1))).toEqual([0, 5]);
  });

  test("a later job may slip into a gap before an earlier one", () => {
    const precedes = [
      [false, true, false],
      [false, false, false],
      [false, false, false],
    ];
    const jobs = [job(5, 0), job(2, 2), job(4, 2)];
    expect(scheduleByList({ jobs, precedes, capacities: [2] }, 1, [0, 1, 2])).toEqual([0, 5, 0]);
  });

  test("a job that holds more than there is is a defect", () => {
    const work = { jobs: [job(1, 3)], precedes: [[false]], capacities: [2] };
    expect(() => scheduleByList(work, 1, [0])).toThrow(RangeError);
  });

  test("no jobs take no time", () => {
    const work = { jobs: [], precedes: [], capacities: [2] };
    expect(orderMinutes(fixOrder(work, 1, []), 3)).toBe(0);
  });
});
