import { ConstraintModel } from "./ConstraintModel.ts";
import { findSchedule, type Schedule } from "./findSchedule.ts";
import { atLeast, FALSE, type Literal } from "./literal.ts";
import { isPlain, longestPaths, type Project } from "./project.ts";
import { Solver } from "./Solver.ts";

export interface ProjectOptions {
  readonly seed: number;
  readonly shouldStop: () => boolean;
  /** Told of every better schedule as it is found. */
  readonly onSchedule?: (length: number) => void;
}

/** A shortest schedule; the best found with what it can be bettered to; a proof that there is none; or nothing in time. */
export type ProjectOutcome =
  | { readonly kind: "optimal"; readonly schedule: Schedule; readonly conflicts: number }
  | { readonly kind: "feasible"; readonly schedule: Schedule; readonly bound: number; readonly conflicts: number }
  | { readonly kind: "impossible"; readonly conflicts: number }
  | { readonly kind: "stopped"; readonly bound: number; readonly conflicts: number };

const HEURISTIC_ROUNDS = 100;

/** The shortest schedule of a project, with proof. */
export function solveProject(project: Project, options: ProjectOptions): ProjectOutcome {
  const path = longestPaths(project);
  const isOverdrawn = project.resources.some(({ capacity, demands }) => demands.some((demand) => demand > capacity));
  if (!path || isOverdrawn) return { kind: "impossible", conflicts: 0 };
  const bound = lowerBound(project, path);
  return isPlain(project) ? solvePlain(project, path, bound, options) : solveWithLags(project, path, bound, options);
}

/** The longest path, and what each resource needs at least. */
function lowerBound(project: Project, path: Int32Array): number {
  const n = project.minutes.length;
  const loads = project.resources.map(({ capacity, demands }) => {
    const load = demands.reduce((sum, demand, i) => sum + demand * (project.minutes[i] as number), 0);
    return load === 0 ? 0 : Math.ceil(load / capacity);
  });
  return Math.max(path[n - 1] as number, ...loads);
}

function solvePlain(project: Project, path: Int32Array, bound: number, options: ProjectOptions): ProjectOutcome {
  let schedule = findSchedule(project, path, bound, HEURISTIC_ROUNDS, options.seed);
  options.onSchedule?.(schedule.length);
  if (schedule.length <= bound) return { kind: "optimal", schedule, conflicts: 0 };
  const n = project.minutes.length;
  const { solver, hasRoom } = prepare(project, path, bound, schedule.length - 1, options, [0, ...schedule.start]);
  if (!hasRoom || !solver) return { kind: "optimal", schedule, conflicts: 0 };
  const end = solver.minimise(n, (values) => {
    schedule = { start: values.slice(1, n + 1), length: values[n] as number };
    options.onSchedule?.(schedule.length);
  });
  const { conflicts } = solver;
  if (end !== "stopped") return { kind: "optimal", schedule, conflicts };
  return { kind: "feasible", schedule, bound: solver.trail.low(n), conflicts };
}

/** With maximal lags a first schedule may be hard to find: the horizon starts near the bound and grows. */
function solveWithLags(project: Project, path: Int32Array, least: number, options: ProjectOptions): ProjectOutcome {
  const n = project.minutes.length;
  const longest = project.minutes.map((minutes) => minutes);
  for (const { from, lag } of project.lags) longest[from] = Math.max(longest[from] as number, lag);
  const latest = longest.reduce((sum, minutes) => sum + minutes, 0);
  let bound = least;
  let horizon = Math.min(latest, Math.ceil(least * 1.3) + 5);
  let conflicts = 0;
  let schedule: Schedule | undefined;
  for (;;) {
    const { solver } = prepare(project, path, bound, horizon, options);
    const end = solver?.minimise(n, (values) => {
      schedule = { start: values.slice(1, n + 1), length: values[n] as number };
      options.onSchedule?.(schedule.length);
    });
    conflicts += solver?.conflicts ?? 0;
    if (end === "stopped") {
      bound = Math.max(bound, solver?.trail.low(n) ?? bound);
      return schedule ? { kind: "feasible", schedule, bound, conflicts } : { kind: "stopped", bound, conflicts };
    }
    if (schedule) return { kind: "optimal", schedule, conflicts };
    if (horizon >= latest) return { kind: "impossible", conflicts };
    bound = horizon + 1;
    horizon = Math.min(latest, Math.ceil(horizon * 1.5));
  }
}

/** The solver for schedules within a horizon; none where the bounds alone leave no room. Job i is variable i + 1. */
function prepare(
  project: Project,
  path: Int32Array,
  bound: number,
  horizon: number,
  options: ProjectOptions,
  hint?: readonly number[],
): { solver?: Solver; hasRoom: boolean } {
  const { minutes, lags, resources } = project;
  const n = minutes.length;
  const model = new ConstraintModel();
  for (let i = 0; i < n; i++) {
    const low = i === n - 1 ? Math.max(bound, path[i] as number) : (path[i] as number);
    const high = horizon - (path[i * n + n - 1] as number);
    if (low > high) return { hasRoom: false };
    model.addVariable(low, high);
  }
  for (const { from, to, lag } of lags) model.addEdge(from + 1, to + 1, lag);
  for (let i = 0; i < n - 1; i++) model.addEdge(i + 1, n, minutes[i] as number);
  for (const { capacity, demands } of resources) {
    const intervals = demands.flatMap((demand, i) => {
      const length = minutes[i] as number;
      return demand > 0 && length > 0 ? [interval(i + 1, length, demand)] : [];
    });
    if (intervals.length > 0) model.addCumulative(capacity, intervals);
  }
  addPairs(model, project, path);
  const schedule = Array.from({ length: n }, (_, i) => i + 1);
  const full = hint ? [...hint, ...Array.from({ length: model.lows.length - hint.length }, () => 0)] : undefined;
  const solver = new Solver(model, { schedule, shouldStop: options.shouldStop, ...(full ? { hint: full } : {}) });
  return { solver, hasRoom: true };
}

function interval(variable: number, minutes: number, demand: number) {
  return { start: variable, startOffset: 0, end: variable, endOffset: minutes, demand, when: atLeast(0, 0) };
}

/** Two jobs that never run at once: one switch says which comes first. */
function addPairs(model: ConstraintModel, { minutes, resources }: Project, path: Int32Array): void {
  const n = minutes.length;
  const collide = (i: number, j: number) =>
    resources.some(({ capacity, demands }) => (demands[i] as number) + (demands[j] as number) > capacity);
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const [a, b] = [minutes[i] as number, minutes[j] as number];
      if (a === 0 || b === 0 || !collide(i, j)) continue;
      if ((path[i * n + j] as number) >= a || (path[j * n + i] as number) >= b) continue;
      const isFirst: Literal = model.addSwitch();
      model.addEdge(i + 1, j + 1, a, isFirst);
      model.addEdge(j + 1, i + 1, b, isFirst ^ (FALSE ^ atLeast(0, 0)));
    }
  }
}
