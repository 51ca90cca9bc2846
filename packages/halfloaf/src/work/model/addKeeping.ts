import type { BoardWashes } from "./addBoard.ts";
import type { WorkModel } from "./WorkModel.ts";

/**
 * The cost of keeping, as terms and a constant:
 *
 *     sum over dishes of weight (serve - end(last)) + sum over waits of weight (start(to) - end(from))
 *       + weight x board washes.
 */
function keepingTerms(model: WorkModel, board: BoardWashes | undefined) {
  const { problem } = model;
  const weights = new Map<number, number>();
  let constant = 0;
  const add = (variable: number, weight: number) => weights.set(variable, (weights.get(variable) ?? 0) + weight);
  const addSpan = (from: number, to: number, weight: number) => {
    add(model.startOf(to), weight);
    add(model.startOf(from), -weight);
    constant -= weight * model.minutesOf(from);
  };
  for (const { last, holdWeight } of problem.dishes) addSpan(last, model.serving, holdWeight);
  for (const { from, to, weight } of problem.waits) if (weight) addSpan(from, to, weight);
  if (board && problem.board) add(board.count, problem.board.washWeight);
  const terms = [...weights].filter(([, weight]) => weight !== 0).map(([variable, weight]) => ({ variable, weight }));
  return { terms, constant };
}

/** A variable of the keeping, at most so much. */
export function addKeeping(model: WorkModel, board: BoardWashes | undefined, most: number): number {
  const { terms, constant } = keepingTerms(model, board);
  const keeping = model.constraints.addVariable(0, most);
  model.constraints.addLimit([...terms, { variable: keeping, weight: -1 }], -constant);
  return keeping;
}

/** The keeping of a solution. */
export function countKeeping(model: WorkModel, board: BoardWashes | undefined, values: ArrayLike<number>): number {
  const { terms, constant } = keepingTerms(model, board);
  return terms.reduce((sum, { variable, weight }) => sum + weight * (values[variable] as number), constant);
}
