import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Project, WorkProblem } from "halfloaf/work";
import type { Run } from "./runSet.ts";

/** An earlier trial solver kept outside this repository, run on the same instances where it is at hand. */
export interface Trial {
  solveProject(project: Project, limitMs: number): Run;
  solveMeal(problem: WorkProblem, limitMs: number): TrialMeal;
}

interface TrialMeal {
  readonly isProven: boolean;
  readonly isRelaxed: boolean;
  readonly serveMinutes: number;
  readonly keeping: number;
  readonly milliseconds: number;
}

interface TrialProject {
  solve(
    p: unknown,
    options: unknown,
  ): { status: string; ub: number; s: ArrayLike<number> | null; ms: number; trace: [number, number][] };
}

interface TrialKitchen {
  solveMeal(
    m: unknown,
    serveMs: number,
    costMs: number,
  ): { status: string; status2: string; serve: number; cost: number };
  relaxHolds(m: unknown, limitMs: number): { status: string };
}

/** Loads the trial from a folder with its `rcpsp.ts` and `kitchen.ts`; undefined where there is none. */
export async function loadTrial(folder: string): Promise<Trial | undefined> {
  const files = ["rcpsp.ts", "kitchen.ts"].map((name) => join(resolve(folder), name));
  if (!files.every(existsSync)) return undefined;
  // Its own overload check costs more than it gains and is switched off as its notes recommend.
  const [project, kitchen] = (await Promise.all(files.map((file) => import(pathToFileURL(file).href)))) as [
    TrialProject,
    TrialKitchen,
  ];
  return {
    solveProject: (problem, limitMs) => runProject(project, problem, limitMs),
    solveMeal: (problem, limitMs) => runMeal(kitchen, problem, limitMs),
  };
}

function runProject({ solve }: TrialProject, project: Project, limitMs: number): Run {
  const { minutes, lags, resources } = project;
  const instance = {
    n: minutes.length,
    dur: minutes,
    req: minutes.map((_, i) => resources.map(({ demands }) => demands[i])),
    cap: resources.map(({ capacity }) => capacity),
    arcs: lags.map(({ from, to, lag }) => [from, to, lag]),
    max: lags.some(({ from, lag }) => lag !== minutes[from]),
    name: "",
  };
  const { status, ub, s, ms, trace } = solve(instance, { limit: limitMs, heurMs: 10, disj: true, energy: false });
  const kinds: Record<string, Run["kind"]> = { optimal: "optimal", feasible: "feasible", infeasible: "impossible" };
  const kind = kinds[status] ?? "stopped";
  const found = trace.map(([milliseconds, length]) => ({ milliseconds, length }));
  return { kind, milliseconds: ms, trace: found, ...(s && kind !== "impossible" ? { length: ub, start: s } : {}) };
}

function runMeal({ solveMeal, relaxHolds }: TrialKitchen, problem: WorkProblem, limitMs: number): TrialMeal {
  const meal = toTrialMeal(problem);
  const began = performance.now();
  let result = solveMeal(meal, limitMs, limitMs);
  const isRelaxed = result.status === "infeasible";
  const isLeast = !isRelaxed || relaxHolds(meal, limitMs).status === "optimal";
  if (isRelaxed) result = solveMeal(meal, limitMs, limitMs);
  const isProven = isLeast && result.status === "optimal" && result.status2 === "optimal";
  return {
    isProven,
    isRelaxed,
    serveMinutes: result.serve,
    keeping: result.cost,
    milliseconds: performance.now() - began,
  };
}

function toTrialMeal({ steps, dishes, waits, kit, uses, oven, board }: WorkProblem) {
  const count = (id: string) => kit.find((each) => each.id === id)?.count ?? 0;
  return {
    steps: steps.map(({ id, dish, minutes, hands, board: cut, oven: bake }) => ({
      name: id,
      dish,
      dur: minutes,
      hands,
      board: cut,
      temp: bake?.tempC,
      shelf: bake?.shelves,
    })),
    spans: uses.map(({ kind, from, to }) => ({ res: kit[kind]?.id, from, to })),
    lags: waits.map(({ from, to, leastMinutes, mostMinutes, weight }) => ({
      i: from,
      j: to,
      min: leastMinutes,
      max: mostMinutes,
      hot: weight,
    })),
    dishes: dishes.map(({ id, last, holdMinutes, holdWeight }) => ({
      name: id,
      last,
      hold: holdMinutes,
      w: holdWeight,
    })),
    cap: { rings: count("ring"), pots: count("pot"), pans: count("pan"), shelves: oven?.shelves },
    wash: board?.washMinutes,
    washCost: board?.washWeight,
  };
}
