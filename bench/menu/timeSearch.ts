import { type MenuPlan, type MenuProblem, MenuSearch } from "halfloaf/menu";

/** What the planner reached on one problem within some seconds. */
export interface TimedSearch {
  readonly firstS: number | undefined;
  readonly costMinor: number | undefined;
  readonly moves: number;
  readonly plan: MenuPlan | undefined;
}

/** Moves of the search that tells how fast one is: in the cold moves are made faster, so it goes through all of its phases. */
const PROBE_MOVES = 200_000;

/** Moves a second on this problem and machine, so that a search can be told how long it will be. */
export function measurePace(problem: MenuProblem): number {
  const probe = new MenuSearch(problem, 0, { expectedMoves: PROBE_MOVES });
  const from = performance.now();
  let moves = 0;
  while (moves < PROBE_MOVES) moves = probe.advance().moves;
  return (moves / (performance.now() - from)) * 1000;
}

/** Searches for so many seconds, the set-up of the search included. */
export function timeSearch(problem: MenuProblem, seed: number, seconds: number, movesPerS: number): TimedSearch {
  const from = performance.now();
  const elapsedS = (): number => (performance.now() - from) / 1000;
  const search = new MenuSearch(problem, seed, { expectedMoves: Math.round(movesPerS * seconds) });
  let firstS: number | undefined;
  let report = search.advance();
  for (;;) {
    if (firstS === undefined && report.costMinor !== undefined) firstS = elapsedS();
    if (elapsedS() >= seconds) break;
    report = search.advance();
  }
  return { firstS, costMinor: report.costMinor, moves: report.moves, plan: search.best() };
}
