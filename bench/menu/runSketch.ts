import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import type { MenuProblem } from "halfloaf/menu";
import { toSketchInstance } from "./toSketchInstance.ts";

/** What the trial sketch reached on one problem. */
interface SketchResult {
  readonly firstS: number | undefined;
  readonly costMinor: number | undefined;
}

export type RunSketch = (problem: MenuProblem, seed: number, seconds: number) => SketchResult;

/**
 * The trial sketch as a peer, when its folder is there: its search with its linear bound for steering, as its own
 * pipeline runs them. Undefined where the folder or the solver package is missing.
 */
export async function loadSketch(folder: string): Promise<RunSketch | undefined> {
  const file = join(resolve(folder), "plan.js");
  if (!existsSync(file)) return undefined;
  const require = createRequire(import.meta.url);
  const { plan } = require(file);
  // The sketch brings no solver of its own: it gets the one of the engine's package.
  const engine = createRequire(require.resolve("@halfloaf/engine"));
  const highs = await engine("highs")({});
  return (problem, seed, seconds) => {
    const result = plan(highs, toSketchInstance(problem, seed), { t1: seconds });
    const found = Number.isFinite(result.best);
    return { firstS: result.first ?? undefined, costMinor: found ? result.best * 100 : undefined };
  };
}
