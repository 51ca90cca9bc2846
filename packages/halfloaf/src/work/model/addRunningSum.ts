import type { WorkModel } from "./WorkModel.ts";

/**
 * A variable that is at least the sum of the parts, all of them at least 0, and never needs to be more than `most`.
 *
 *     t_2 >= y_1 + y_2,   t_3 >= t_2 + y_3,   ...
 *
 * One sum would say the same, but what is learned from a conflict could then only name the single parts or the whole;
 * running totals give it words for "these few dishes together", which is how most proofs go.
 * With no part it is a constant 0.
 * **Source**: Abío, Stuckey 2012, "Conflict directed lazy decomposition", CP 2012 (from memory), for partial sums in
 * learned clauses; the chain itself is our own choice.
 */
export function addRunningSum(model: WorkModel, parts: readonly number[], most: number): number {
  const { constraints } = model;
  return parts.reduce((sum, part, k) => {
    if (k === 0) return part;
    const total = constraints.addVariable(0, most);
    constraints.addLimit(
      [
        { variable: sum, weight: 1 },
        { variable: part, weight: 1 },
        { variable: total, weight: -1 },
      ],
      0,
    );
    return total;
  }, 0);
}
