import { expect, test } from "vitest";
import { loadSolver, readSolverMemory } from "./loadSolver.ts";
import { solveLinear } from "./solveLinear.ts";

test("the solver is loaded when it is first needed, once, and keeps its memory bounded over many models", async () => {
  expect(await readSolverMemory()).toBe(0);
  const most = 400;
  const columns = Array.from({ length: most }, (_, at) => ({ name: `c${at}`, cost: 1 + at, lower: 0, upper: 9 }));
  const entries = columns.map(({ name }, at) => [name, 1 + (at % 7)] as const);
  const rows = Array.from({ length: 20 }, (_, at) => ({ name: `r${at}`, lower: at, upper: 1e6, entries }));
  const solve = () => solveLinear({ sense: "min", columns, rows });
  expect((await solve()).status).toBe("optimal");
  const highs = await loadSolver();
  await solve();
  const early = await readSolverMemory();
  for (let at = 0; at < 100; at++) await solve();
  expect(await loadSolver()).toBe(highs);
  expect(await readSolverMemory()).toBe(early);
});
