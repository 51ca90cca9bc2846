import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import type { MenuProblem } from "halfloaf/menu";
import { toSketchInstance } from "./toSketchInstance.ts";

/** What the trial sketch reached on one problem. */
interface SketchResult {
  readonly firstS: number | undefined;
  readonly costMinor: number | undefined;
  /** Proven gap as a share of its plan's cost, in percent. */
  readonly gapPct: number | undefined;
}

/** The trial sketch: its search for so many seconds, and its pipeline of search and proof. */
export interface Sketch {
  search(problem: MenuProblem, seed: number, seconds: number): SketchResult;
  prove(problem: MenuProblem, seed: number, seconds: number): SketchResult;
}

/** Of ten seconds its pipeline searches for 2, proves for 4.6 and searches for 3.5 again. */
const SEARCH_S = 2;
const SEARCH_AGAIN_S = 3.5;

/**
 * The trial sketch as a peer, when its folder is there: its search with its linear bound for steering, as its own
 * pipeline runs them. Undefined where the folder or the solver package is missing.
 */
export async function loadSketch(folder: string): Promise<Sketch | undefined> {
  const file = join(resolve(folder), "plan.js");
  if (!existsSync(file)) return undefined;
  const require = createRequire(import.meta.url);
  const { plan } = require(file);
  // The sketch brings no solver of its own: it gets the one of the engine's package.
  const engine = createRequire(require.resolve("@halfloaf/engine"));
  const highs = await engine("highs")({});
  const run = (problem: MenuProblem, seed: number, times: object): SketchResult => {
    const { best, first, lbMip, lb1 } = plan(highs, toSketchInstance(problem, seed), times);
    if (!Number.isFinite(best)) return { firstS: undefined, costMinor: undefined, gapPct: undefined };
    const gapPct = (100 * (best - (lbMip ?? lb1))) / best;
    return { firstS: first ?? undefined, costMinor: best * 100, gapPct };
  };
  return {
    search: (problem, seed, seconds) => run(problem, seed, { t1: seconds }),
    prove: (problem, seed, seconds) => {
      const proofS = seconds - SEARCH_S - SEARCH_AGAIN_S;
      return run(problem, seed, proofS > 0 ? { t1: SEARCH_S, tm: proofS } : { t1: seconds });
    },
  };
}
