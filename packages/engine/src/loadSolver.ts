import type { Highs } from "highs";

let runtime: Promise<Highs> | undefined;

/**
 * The solver's runtime: its code and WASM are loaded by the first call, once, and warmed up, since its first solve is
 * many times slower than all others.
 */
export function loadSolver(): Promise<Highs> {
  runtime ??= import("highs").then(({ default: loadHighs }) => loadHighs()).then(warmUp);
  return runtime;
}

/** Forgets a runtime that broke down, since its memory may be unusable; the next solve loads a new one. */
export function dropSolver(): void {
  runtime = undefined;
}

/** Bytes that the solver has taken in this thread; it never gives any back. 0 where it is not loaded. */
export async function readSolverMemory(): Promise<number> {
  return runtime === undefined ? 0 : (await runtime).memoryBytes;
}

function warmUp(highs: Highs): Highs {
  const matrix = { format: "csr", numRows: 1, numCols: 2, starts: [0, 2], indices: [0, 1], values: [1, 2] } as const;
  const bounds = { colLower: [0, 0], colUpper: [4, 4], rowLower: [3], rowUpper: [highs.infinity] };
  highs.withModel({ numCols: 2, numRows: 1, colCost: [1, 1], ...bounds, matrix }, (solver) => {
    solver.options.set({ output_flag: false });
    solver.run();
  });
  return highs;
}
