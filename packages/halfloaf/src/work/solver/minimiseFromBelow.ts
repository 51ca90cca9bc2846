import { atLeast, atMost } from "./literal.ts";
import type { SearchEnd, Solver } from "./Solver.ts";

export interface FromBelowOptions {
  /** The value of a solution that is known and need not be found again. */
  readonly known: number;
  /** Conflicts of one question after which it is left open, and a larger value asked for. */
  readonly patience: number;
  /** Told of every better solution as it is found. */
  readonly onSolution: (values: Int32Array) => void;
}

/**
 * The least value of a variable, from below: what is certainly too little grows step by step until there is a solution,
 * then the range between is halved. Every refusal is a proof, a small value is refused soon, and what is learned from
 * one question is kept for the next. A question that takes too long is left open and a larger value is asked for; the
 * last one left open is then asked without end. Never "infeasible": a solution is known. Where it is stopped, the lower
 * bound of the variable is what was proven.
 */
export function minimiseFromBelow(
  solver: Solver,
  objective: number,
  { known, patience, onSolution }: FromBelowOptions,
): Exclude<SearchEnd, "infeasible"> {
  let high = known;
  let step = 1;
  /** The greatest value that was left open. */
  let open = Number.NEGATIVE_INFINITY;
  while (solver.isConsistent && solver.trail.low(objective) < high) {
    const low = solver.trail.low(objective);
    const isOpen = open >= low;
    const most = isOpen ? Math.min(high - 1, (open + high) >> 1) : Math.min(low + step - 1, (low + high - 1) >> 1);
    const isLast = isOpen && most === open;
    const end = solver.searchSupposing(atMost(objective, most), isLast ? Number.POSITIVE_INFINITY : patience);
    if (end === "stopped") return end;
    if (end === "solved") {
      high = solver.solution[objective] as number;
      onSolution(solver.solution);
    } else if (end === "infeasible") {
      solver.require(atLeast(objective, most + 1));
      step *= 2;
    } else {
      open = most;
    }
  }
  return "solved";
}
