import { atLeast, atMost } from "./literal.ts";
import type { SearchEnd, Solver } from "./Solver.ts";

export interface FromBelowOptions {
  /** The value of a solution that is known and need not be found again. */
  readonly known: number;
  /** Conflicts of one question after which ever better solutions are looked for instead. */
  readonly patience: number;
  /** Told of every better solution as it is found. */
  readonly onSolution: (values: Int32Array) => void;
}

/**
 * The least value of a variable, from below: what is certainly too little grows step by step until there is a solution,
 * then the range between is halved. Every refusal is a proof, a small value is refused soon, and what is learned from
 * one question is kept for the next. Never "infeasible": a solution is known. Where it is stopped, the lower bound of
 * the variable is what was proven.
 */
export function minimiseFromBelow(
  solver: Solver,
  objective: number,
  { known, patience, onSolution }: FromBelowOptions,
): Exclude<SearchEnd, "infeasible"> {
  let high = known;
  let step = 1;
  let isPatient = true;
  while (solver.isConsistent && solver.trail.low(objective) < high) {
    const low = solver.trail.low(objective);
    const most = isPatient ? Math.min(low + step - 1, (low + high - 1) >> 1) : high - 1;
    const end = solver.searchSupposing(atMost(objective, most), isPatient ? patience : Number.POSITIVE_INFINITY);
    if (end === "stopped") return end;
    if (end === "solved") {
      high = solver.solution[objective] as number;
      onSolution(solver.solution);
    } else if (end === "infeasible") {
      solver.require(atLeast(objective, most + 1));
      step *= 2;
    } else {
      isPatient = false;
    }
  }
  return "solved";
}
