/**
 * Outside check 16: projects whose shortest length is known from the literature or from a theorem.
 */
import fc from "fast-check";
import { type Project, solveProject } from "halfloaf/work";
import { expect, test } from "vitest";

const options = { seed: 1, shouldStop: () => false };

/** A job shop as a project: each job is a row of [machine, minutes], every machine a resource of one. */
function shopOf(jobs: readonly (readonly (readonly [number, number])[])[], machines: number): Project {
  const operations = jobs.flatMap((row, job) => row.map(([machine, minutes], k) => ({ job, k, machine, minutes })));
  const end = operations.length + 1;
  const lags = operations.flatMap(({ job, k, minutes }, i) => {
    const next = operations[i + 1];
    const isFollowed = next !== undefined && next.job === job;
    return [
      ...(k === 0 ? [{ from: 0, to: i + 1, lag: 0 }] : []),
      { from: i + 1, to: isFollowed ? i + 2 : end, lag: minutes },
    ];
  });
  const resources = Array.from({ length: machines }, (_, machine) => ({
    capacity: 1,
    demands: [0, ...operations.map((each) => (each.machine === machine ? 1 : 0)), 0],
  }));
  return { minutes: [0, ...operations.map(({ minutes }) => minutes), 0], lags, resources };
}

function lengthOf(project: Project): number | undefined {
  const outcome = solveProject(project, options);
  return outcome.kind === "optimal" ? outcome.schedule.length : undefined;
}

// Source: Fisher, Thompson 1963, in Muth, Thompson (eds.), Industrial Scheduling: the 6 x 6 job shop; data and optimum
// from memory.
const FISHER_THOMPSON_6 = [
  [
    [2, 1],
    [0, 3],
    [1, 6],
    [3, 7],
    [5, 3],
    [4, 6],
  ],
  [
    [1, 8],
    [2, 5],
    [4, 10],
    [5, 10],
    [0, 10],
    [3, 4],
  ],
  [
    [2, 5],
    [3, 4],
    [5, 8],
    [0, 9],
    [1, 1],
    [4, 7],
  ],
  [
    [1, 5],
    [0, 5],
    [2, 5],
    [3, 3],
    [4, 8],
    [5, 9],
  ],
  [
    [2, 9],
    [1, 3],
    [4, 5],
    [5, 4],
    [0, 3],
    [3, 1],
  ],
  [
    [1, 3],
    [3, 3],
    [5, 9],
    [0, 10],
    [4, 4],
    [2, 1],
  ],
] as const;

test("the 6 x 6 job shop of Fisher and Thompson takes 55", () => {
  expect(lengthOf(shopOf(FISHER_THOMPSON_6, 6))).toBe(55);
});

/**
 * Shortest two-machine flow shop: jobs faster on the first machine come first, by that time ascending, then the others
 * by the second time descending. **Source**: Johnson 1954, Naval Research Logistics Quarterly 1, 61-68.
 */
function johnson(jobs: readonly (readonly [number, number])[]): number {
  const first = jobs.filter(([a, b]) => a < b).sort((x, y) => x[0] - y[0]);
  const second = jobs.filter(([a, b]) => a >= b).sort((x, y) => y[1] - x[1]);
  let [one, two] = [0, 0];
  for (const [a, b] of [...first, ...second]) {
    one += a;
    two = Math.max(one, two) + b;
  }
  return two;
}

test("two-machine flow shops are as short as Johnson's rule makes them", () => {
  const minutes = fc.integer({ min: 1, max: 20 });
  fc.assert(
    fc.property(fc.array(fc.tuple(minutes, minutes), { minLength: 1, maxLength: 7 }), (jobs) => {
      const shop = shopOf(
        jobs.map(
          ([a, b]) =>
            [
              [0, a],
              [1, b],
            ] as const,
        ),
        2,
      );
      expect(lengthOf(shop)).toBe(johnson(jobs));
    }),
    { numRuns: 60 },
  );
});

test("without scarce resources a project takes its critical path", () => {
  // Source: Kelley, Walker 1959, "Critical-path planning and scheduling"; the longest path by going through all.
  const arcs = fc.array(fc.tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 })), { maxLength: 16 });
  fc.assert(
    fc.property(fc.array(fc.nat(9), { minLength: 8, maxLength: 8 }), arcs, (minutes, pairs) => {
      const all = [0, ...minutes, 0];
      const forward = pairs.filter(([a, b]) => a < b);
      const longest = all.map(() => 0);
      for (let i = 1; i <= 8; i++) {
        const before = forward.filter(([, b]) => b === i).map(([a]) => longest[a] as number);
        longest[i] = Math.max(0, ...before) + (all[i] as number);
      }
      const lags = [
        ...minutes.flatMap((length, k) => [
          { from: 0, to: k + 1, lag: 0 },
          { from: k + 1, to: 9, lag: length },
        ]),
        ...forward.map(([from, to]) => ({ from, to, lag: all[from] as number })),
      ];
      expect(lengthOf({ minutes: all, lags, resources: [] })).toBe(Math.max(...longest));
    }),
  );
});

test("jobs that each take the whole of a resource take the sum of their times, whatever the order", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 9 }), (minutes) => {
      const end = minutes.length + 1;
      const lags = minutes.flatMap((length, k) => [
        { from: 0, to: k + 1, lag: 0 },
        { from: k + 1, to: end, lag: length },
      ]);
      const resources = [{ capacity: 2, demands: [0, ...minutes.map(() => 2), 0] }];
      expect(lengthOf({ minutes: [0, ...minutes, 0], lags, resources })).toBe(minutes.reduce((sum, m) => sum + m, 0));
    }),
  );
});

/** Least number of unit times by levels: in each the m free jobs that are furthest from the root. */
function hu(parents: readonly (number | undefined)[], machines: number): number {
  const level = (job: number): number => {
    const parent = parents[job];
    return parent === undefined ? 0 : 1 + level(parent);
  };
  const left = new Set(parents.keys());
  let time = 0;
  while (left.size > 0) {
    const free = [...left].filter((job) => ![...left].some((other) => parents[other] === job));
    for (const job of free.sort((a, b) => level(b) - level(a)).slice(0, machines)) left.delete(job);
    time++;
  }
  return time;
}

test("trees of unit jobs on several machines take as long as Hu's rule makes them", () => {
  // Source: Hu 1961, "Parallel sequencing and assembly line problems", Operations Research 9, 841-848.
  const tree = fc
    .integer({ min: 1, max: 11 })
    .chain((size) =>
      fc.tuple(...Array.from({ length: size }, (_, job) => (job === 0 ? fc.constant(undefined) : fc.nat(job - 1)))),
    );
  fc.assert(
    fc.property(tree, fc.integer({ min: 2, max: 4 }), (parents, machines) => {
      const end = parents.length + 1;
      const lags = parents.flatMap((parent, job) => [
        { from: 0, to: job + 1, lag: 0 },
        { from: job + 1, to: parent === undefined ? end : parent + 1, lag: 1 },
      ]);
      const ones = parents.map(() => 1);
      const resources = [{ capacity: machines, demands: [0, ...ones, 0] }];
      expect(lengthOf({ minutes: [0, ...ones, 0], lags, resources })).toBe(hu(parents, machines));
    }),
    { numRuns: 60 },
  );
});

function* permutations<T>(items: readonly T[]): Generator<readonly T[]> {
  if (items.length === 0) yield [];
  for (const [k, item] of items.entries())
    for (const rest of permutations([...items.slice(0, k), ...items.slice(k + 1)])) yield [item, ...rest];
}

/** A job begins as soon as it will not have to wait between its two machines. */
function noWaitLength(jobs: readonly (readonly [number, number])[]): number {
  let [start, length] = [0, 0];
  for (const [k, [a, b]] of jobs.entries()) {
    const before = jobs[k - 1];
    if (before !== undefined) start += Math.max(before[0], before[0] + before[1] - a);
    length = start + a + b;
  }
  return length;
}

test("two machines with no wait in between, a maximal lag, take as long as the best sequence of all", () => {
  // Source: Reddi, Ramamoorthy 1972, "On the flow-shop sequencing problem with no wait in process", Operational
  // Research Quarterly 23, 323-331 (from memory).
  const minutes = fc.integer({ min: 1, max: 12 });
  fc.assert(
    fc.property(fc.array(fc.tuple(minutes, minutes), { minLength: 1, maxLength: 6 }), (jobs) => {
      const shop = shopOf(
        jobs.map(
          ([a, b]) =>
            [
              [0, a],
              [1, b],
            ] as const,
        ),
        2,
      );
      const atOnce = jobs.map(([a], job) => ({ from: 2 * job + 2, to: 2 * job + 1, lag: -a }));
      const best = Math.min(...[...permutations(jobs)].map(noWaitLength));
      expect(lengthOf({ ...shop, lags: [...shop.lags, ...atOnce] })).toBe(best);
    }),
    { numRuns: 60 },
  );
});
