/**
 * A project: jobs with lengths, lags between their starts and resources they share, to be finished as early as possible.
 *
 * Job 0 is the start (at 0) and the last job is the end. Where every lag is the length of the earlier job, it is the
 * resource-constrained project scheduling problem; negative lags from later to earlier jobs are maximal ones.
 */
export interface Project {
  readonly minutes: readonly number[];
  /** start of `to` >= start of `from` + lag. */
  readonly lags: readonly { readonly from: number; readonly to: number; readonly lag: number }[];
  /** What each resource holds, and what each job takes of it while it runs. */
  readonly resources: readonly { readonly capacity: number; readonly demands: readonly number[] }[];
}

/** True where lags only say that one job ends before another starts. */
export function isPlain(project: Project): boolean {
  return project.lags.every(({ from, lag }) => lag === project.minutes[from]);
}

/** Stands for "no path" in `longestPaths`. */
export const NO_PATH = -1_000_000;

/**
 * The longest path of lags between any two jobs, row by row; every job lies between the first and the last. Undefined
 * where the lags contradict each other.
 */
export function longestPaths(project: Project): Int32Array | undefined {
  const { minutes, lags } = project;
  const n = minutes.length;
  const path = new Int32Array(n * n).fill(NO_PATH);
  const lengthen = (from: number, to: number, lag: number) => {
    path[from * n + to] = Math.max(path[from * n + to] as number, lag);
  };
  for (let i = 0; i < n; i++) {
    lengthen(i, i, 0);
    lengthen(0, i, 0);
    lengthen(i, n - 1, minutes[i] as number);
  }
  for (const { from, to, lag } of lags) lengthen(from, to, lag);
  closePaths(path, n);
  for (let i = 0; i < n; i++) if ((path[i * n + i] as number) > 0) return undefined;
  return path;
}

/**
 * Replaces single lags between n jobs, row by row, by longest paths.
 * **Source**: Floyd 1962, "Algorithm 97: shortest path", Communications of the ACM 5.
 */
export function closePaths(path: Int32Array, n: number): void {
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      const to = path[i * n + k] as number;
      if (to === NO_PATH) continue;
      for (let j = 0; j < n; j++) {
        const on = path[k * n + j] as number;
        if (on !== NO_PATH && to + on > (path[i * n + j] as number)) path[i * n + j] = to + on;
      }
    }
  }
}
