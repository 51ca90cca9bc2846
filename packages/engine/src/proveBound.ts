import type { MenuProblem } from "halfloaf/menu";
import { buildWeeklyModel, type WeeklyModel } from "halfloaf/menu/bound";
import { BoundTree } from "./BoundTree.ts";
import { dropSolver, loadSolver } from "./loadSolver.ts";

/** Part of its size, and least amount, by which a bound is taken back for the rounding of sums. */
const SAFE_SHARE = 1e-6;
const SAFE_MINOR = 0.01;
/** Milliseconds of work between two looks at the clock of others. */
const BREATH_MS = 40;

export interface BoundRequest {
  /** Money of the best plan known, in minor units, or where to ask for it; the bound is not pushed above it. */
  readonly incumbentMinor?: number | (() => number | undefined);
  /** Seconds to work; a solve under way is finished, and the first one is always made. */
  readonly seconds: number;
  /** Called with each better bound. */
  readonly onProgress?: (progress: BoundProgress) => void;
  readonly signal?: AbortSignal;
  /** Dishes to which plans are narrowed; absent means all. */
  readonly dishes?: ReadonlySet<number>;
}

export interface BoundProgress {
  /** No plan costs less, in minor units. */
  readonly boundMinor: number;
  /** Seconds since the call. */
  readonly elapsed: number;
}

/**
 * `proven` once no plan is cheaper than the incumbent (or the weekly model is solved out); `stopped` when time was up or the signal
 * came; `impossible` where not even the week without its days has a menu. `boundMinor` is absent where nothing was proven.
 */
export type BoundOutcome =
  | {
      readonly status: "proven" | "stopped";
      readonly boundMinor?: number;
      readonly elapsed: number;
      readonly parts: number;
    }
  | { readonly status: "impossible"; readonly elapsed: number }
  | { readonly status: "failed"; readonly reason: string; readonly elapsed: number };

/**
 * Proves how little any plan of a menu problem can cost, better and better while time lasts: the first bound after one
 * solve, then cuts, then branch and bound. Every bound reported holds, however early the work is stopped.
 */
export async function proveBound(problem: MenuProblem, request: BoundRequest): Promise<BoundOutcome> {
  const started = performance.now();
  const elapsed = (): number => (performance.now() - started) / 1000;
  let tree: BoundTree | undefined;
  try {
    const highs = await loadSolver();
    const weekly = buildWeeklyModel(problem, request.dishes);
    if (weekly.model.columns.length === 0) return { status: "impossible", elapsed: elapsed() };
    tree = new BoundTree(highs, weekly);
    return await grow(tree, weekly, request, elapsed);
  } catch (error) {
    dropSolver();
    return { status: "failed", reason: error instanceof Error ? error.message : String(error), elapsed: elapsed() };
  } finally {
    tree?.dispose();
  }
}

async function grow(
  tree: BoundTree,
  weekly: WeeklyModel,
  request: BoundRequest,
  elapsed: () => number,
): Promise<BoundOutcome> {
  let boundMinor: number | undefined;
  let breath = performance.now();
  let isFirst = true;
  while (!tree.isDone && !request.signal?.aborted && (isFirst || elapsed() < request.seconds)) {
    isFirst = false;
    const incumbent = readIncumbent(request);
    tree.step(incumbent - weekly.offsetMinor);
    const reached = Math.min(incumbent, takeBack(tree.bound + weekly.offsetMinor));
    if (Number.isFinite(reached) && (boundMinor === undefined || reached > boundMinor)) {
      boundMinor = reached;
      request.onProgress?.({ boundMinor, elapsed: elapsed() });
    }
    if (performance.now() - breath > BREATH_MS) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      breath = performance.now();
    }
  }
  const status = tree.isDone ? "proven" : "stopped";
  const hasNoMenu = tree.isDone && tree.bound === Number.POSITIVE_INFINITY;
  if (hasNoMenu && readIncumbent(request) === Number.POSITIVE_INFINITY)
    return { status: "impossible", elapsed: elapsed() };
  return { status, ...(boundMinor === undefined ? {} : { boundMinor }), elapsed: elapsed(), parts: tree.parts };
}

function readIncumbent({ incumbentMinor }: BoundRequest): number {
  const value = typeof incumbentMinor === "function" ? incumbentMinor() : incumbentMinor;
  return value ?? Number.POSITIVE_INFINITY;
}

function takeBack(boundMinor: number): number {
  return boundMinor - SAFE_MINOR - SAFE_SHARE * Math.abs(boundMinor);
}
