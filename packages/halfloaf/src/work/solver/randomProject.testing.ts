import fc from "fast-check";
import type { Project } from "./project.ts";

/** Small projects; `isPlain` ones only have precedence, others maximal lags as well. */
export function randomProject(jobs: number, isPlain: boolean): fc.Arbitrary<Project> {
  const inner = fc.integer({ min: 1, max: jobs });
  return fc
    .record({
      minutes: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: jobs, maxLength: jobs }),
      arcs: fc.array(fc.tuple(inner, inner), { maxLength: jobs }),
      lags: fc.array(fc.tuple(inner, inner, fc.integer({ min: 0, max: 6 })), { maxLength: isPlain ? 0 : 3 }),
      demands: fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: jobs, maxLength: jobs }), {
        maxLength: 2,
      }),
    })
    .map(({ minutes, arcs, lags, demands }) => {
      const all = [0, ...minutes, 0];
      const end = jobs + 1;
      const forward = arcs.filter(([a, b]) => a < b).map(([from, to]) => ({ from, to, lag: all[from] as number }));
      const frame = minutes.flatMap((length, k) => [
        { from: 0, to: k + 1, lag: 0 },
        { from: k + 1, to: end, lag: length },
      ]);
      const maximal = lags.filter(([a, b]) => a !== b).map(([from, to, most]) => ({ from: to, to: from, lag: -most }));
      const resources = demands.map((own) => ({ capacity: 3, demands: [0, ...own, 0] }));
      return { minutes: all, lags: [...frame, ...forward, ...maximal], resources };
    });
}

/** True where a schedule keeps all lags and never takes more of a resource than there is. */
export function isValid({ minutes, lags, resources }: Project, start: ArrayLike<number>): boolean {
  if (lags.some(({ from, to, lag }) => (start[to] as number) < (start[from] as number) + lag)) return false;
  return resources.every(({ capacity, demands }) =>
    minutes.every((_, at) => {
      const t = start[at] as number;
      const isRunning = (i: number) => (start[i] as number) <= t && t < (start[i] as number) + (minutes[i] as number);
      return demands.reduce((sum, demand, i) => sum + (isRunning(i) ? demand : 0), 0) <= capacity;
    }),
  );
}

/** The shortest length by trying every start up to a horizon; undefined where there is none. */
export function shortestByTrying(project: Project, horizon: number): number | undefined {
  const n = project.minutes.length;
  const start = new Array<number>(n).fill(0);
  for (let length = 0; length <= horizon; length++) {
    start[n - 1] = length;
    const place = (i: number): boolean => {
      if (i === n - 1) return isValid(project, start);
      for (let t = 0; t + (project.minutes[i] as number) <= length; t++) {
        start[i] = t;
        if (place(i + 1)) return true;
      }
      return false;
    };
    if (place(1)) return length;
  }
  return undefined;
}
