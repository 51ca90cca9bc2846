import { atLeast } from "../solver/literal.ts";
import type { BoardWashes } from "./addBoard.ts";
import type { KitWash } from "./addKit.ts";
import type { WorkModel } from "./WorkModel.ts";

/**
 * What one cook cannot do without, said in terms the search can learn from. Both hands do one thing at a time, and an
 * eye is kept on two things at most, so hands time is saved only where two steps i, j that need an eye overlap:
 *
 *     serve >= sum of minutes (both hands, eye, washes) - sum of o_ij,
 *     [o_ij >= v] => start_j + v <= end_i and start_i + v <= end_j,     sum over j of o_ij <= minutes_i.
 *
 * The o_ij are at most the true overlaps; nothing asks them to be less. Implied by the hands, yet without them the
 * search has to find out anew for every order of the other steps that too little overlaps.
 */
export function addOverlaps(model: WorkModel, board: BoardWashes | undefined, kit: readonly KitWash[]): void {
  const { problem, constraints } = model;
  if (problem.cooks !== 1) return;
  const busy = problem.steps.flatMap(({ hands, minutes }, i) => (hands > 0 && minutes > 0 ? [i] : []));
  const eyes = busy.filter((i) => problem.steps[i]?.hands === 1);
  const overlaps = new Map<number, number[]>(eyes.map((i) => [i, []]));
  const all: number[] = [];
  for (const [k, i] of eyes.entries()) {
    for (const j of eyes.slice(k + 1)) {
      if (model.isKnownBefore(i, j) || model.isKnownBefore(j, i)) continue;
      const overlap = addOverlap(model, i, j);
      overlaps.get(i)?.push(overlap);
      overlaps.get(j)?.push(overlap);
      all.push(overlap);
    }
  }
  for (const [i, own] of overlaps) {
    if (own.length > 1)
      constraints.addLimit(
        own.map((variable) => ({ variable, weight: 1 })),
        model.minutesOf(i),
      );
  }
  const kitMinutes = kit.length === 0 ? 0 : leastKitMinutes(model, kit);
  const minutes = busy.reduce((sum, i) => sum + model.minutesOf(i), kitMinutes);
  constraints.addLimit(
    [
      ...all.map((variable) => ({ variable, weight: -1 })),
      ...(board ? [{ variable: board.count, weight: problem.board?.washMinutes ?? 0 }] : []),
      { variable: model.serve, weight: -1 },
    ],
    -minutes,
  );
}

function addOverlap(model: WorkModel, i: number, j: number): number {
  const { constraints } = model;
  const [a, b] = [model.minutesOf(i), model.minutesOf(j)];
  const overlap = constraints.addVariable(0, Math.min(a, b));
  for (let v = 1; v <= Math.min(a, b); v++) {
    constraints.addEdge(model.startOf(j), model.startOf(i), v - a, atLeast(overlap, v));
    constraints.addEdge(model.startOf(i), model.startOf(j), v - b, atLeast(overlap, v));
  }
  return overlap;
}

/** Of m pieces and n uses, n - m are washed. */
function leastKitMinutes(model: WorkModel, kit: readonly KitWash[]): number {
  const { problem } = model;
  return problem.kit.reduce((sum, { count, washMinutes }, kind) => {
    const uses = kit.filter(({ use }) => problem.uses[use]?.kind === kind).length;
    return sum + Math.max(0, uses - count) * (washMinutes ?? 0);
  }, 0);
}
