import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { type Project, solveProject } from "halfloaf/work";
import { readProject } from "./readProject.ts";
import { type Reference, readReferences } from "./readReference.ts";
import { medianOf } from "./statistics.ts";

/** How a solver fared on one instance; `trace` has each length with the moment it was found. */
export interface Run {
  readonly kind: "optimal" | "feasible" | "impossible" | "stopped";
  readonly length?: number;
  readonly start?: ArrayLike<number>;
  readonly milliseconds: number;
  readonly trace: readonly { readonly milliseconds: number; readonly length: number }[];
}

export type ProjectSolver = (project: Project, limitMs: number) => Run;

const MOMENTS_S = [0.1, 1, 10] as const;

/** One project of a set and what is known of it. */
export interface Instance {
  readonly name: string;
  readonly project: Project;
  readonly reference: Reference;
}

/** Every project of a folder with a reference value, in the order of their numbers. */
export function readSet(folder: string): Instance[] {
  const references = readReferences(readFileSync(join(folder, "optimum.csv"), "utf8"));
  const names = readdirSync(folder).filter((name) => references.has(name.toLowerCase()));
  names.sort(new Intl.Collator("en", { numeric: true }).compare);
  return names.map((name) => ({
    name,
    project: readProject(name, readFileSync(join(folder, name), "latin1")),
    reference: references.get(name.toLowerCase()) as Reference,
  }));
}

/** Runs every instance of a folder with a reference value, one thread, and sums up. */
export function runSet(folder: string, limitMs: number, solve: ProjectSolver) {
  const projects = readSet(folder);
  // The first run also compiles the code; it is not counted.
  if (projects[0]) solve(projects[0].project, 200);
  const runs = projects.map((each) => ({ ...each, run: solve(each.project, limitMs) }));
  const provenAt = (seconds: number) =>
    runs.filter(({ run }) => isProven(run) && run.milliseconds <= 1000 * seconds).length / runs.length;
  return {
    set: basename(folder),
    instances: runs.length,
    limitS: limitMs / 1000,
    proven: Object.fromEntries(MOMENTS_S.map((seconds) => [seconds, provenAt(seconds)])),
    provenAtLimit: runs.filter(({ run }) => isProven(run)).length / runs.length,
    meanGap: Object.fromEntries(MOMENTS_S.map((seconds) => [seconds, meanGap(runs, 1000 * seconds)])),
    medianMs: medianOf(runs.map(({ run }) => run.milliseconds)),
    contradictions: runs.flatMap((each) => findContradictions(each, each.run)),
    open: runs.filter(({ run }) => !isProven(run)).map(({ name }) => name),
  };
}

/** Mean share above the reference among closed instances with a schedule by then; null where there is none. */
function meanGap(runs: readonly { reference: Reference; run: Run }[], byMs: number): number | null {
  const gaps = runs.flatMap(({ reference, run }) => {
    if (reference === "unsat" || reference.lower !== reference.upper) return [];
    const lengths = run.trace.filter(({ milliseconds }) => milliseconds <= byMs).map(({ length }) => length);
    return lengths.length === 0 ? [] : [Math.min(...lengths) / reference.upper - 1];
  });
  return gaps.length === 0 ? null : gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
}

/** True where nothing is left to prove: the best length, or that there is no schedule. */
export function isProven({ kind }: Run): boolean {
  return kind === "optimal" || kind === "impossible";
}

/** Where a run breaks a rule of its project or goes against what is known of it, in sentences. */
export function findContradictions({ name, project, reference }: Instance, run: Run): string[] {
  const found: string[] = [];
  if (run.start && !isValid(project, run.start)) found.push(`${name}: the schedule breaks a rule`);
  if (reference === "unsat") {
    if (run.length !== undefined) found.push(`${name}: a schedule of ${run.length}, but none is said to exist`);
  } else {
    const { lower, upper } = reference;
    if (run.kind === "impossible") found.push(`${name}: said to be impossible, but ${upper} is known`);
    if (run.length !== undefined && run.length < lower) found.push(`${name}: ${run.length} is below ${lower}`);
    if (run.kind === "optimal" && (run.length as number) > upper)
      found.push(`${name}: ${run.length} is above ${upper}`);
  }
  return found;
}

function isValid({ minutes, lags, resources }: Project, start: ArrayLike<number>): boolean {
  if (lags.some(({ from, to, lag }) => (start[to] as number) < (start[from] as number) + lag)) return false;
  const isRunning = (i: number, t: number) =>
    (start[i] as number) <= t && t < (start[i] as number) + (minutes[i] as number);
  return resources.every(({ capacity, demands }) =>
    minutes.every((_, job) => {
      const t = start[job] as number;
      return demands.reduce((sum, demand, i) => sum + (isRunning(i, t) ? demand : 0), 0) <= capacity;
    }),
  );
}

/** Our solver, timed. */
export function runOurs(project: Project, limitMs: number): Run {
  const began = performance.now();
  const elapsed = () => performance.now() - began;
  const trace: { milliseconds: number; length: number }[] = [];
  const outcome = solveProject(project, {
    seed: 1,
    shouldStop: () => elapsed() > limitMs,
    onSchedule: (length) => trace.push({ milliseconds: elapsed(), length }),
  });
  const milliseconds = elapsed();
  if (outcome.kind === "impossible" || outcome.kind === "stopped") return { kind: outcome.kind, milliseconds, trace };
  const { start, length } = outcome.schedule;
  return { kind: outcome.kind, length, start, milliseconds, trace };
}
