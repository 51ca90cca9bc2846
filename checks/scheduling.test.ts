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
