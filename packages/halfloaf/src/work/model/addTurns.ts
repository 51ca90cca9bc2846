import { FALSE, type Literal, negate, TRUE } from "../solver/literal.ts";
import type { WorkModel } from "./WorkModel.ts";

/**
 * How often the cook turns to another dish. The steps that take both hands of the one cook stand in a row; with n of
 * them, n - 1 follow another, and those that follow one of the same dish are no turn:
 *
 *     turns = n - 1 - sum over dishes of L_d,   L_d = sum of c_ij over the steps of d,   L_d <= n_d - 1,
 *     c_ij => i before j,   c_ij => k before i or j before k   for every other k,
 *
 * and of each step at most one c_ij goes out and one comes in, which follows but is said outright.
 * Gives the variable of the turns; undefined where there is nothing to count.
 */
export function addTurns(model: WorkModel): number | undefined {
  const { problem, constraints } = model;
  const row = stepsInRow(model);
  if (problem.cooks !== 1 || row.length < 2) return undefined;
  const links = problem.dishes.map((_, dish) => {
    const own = row.filter((i) => problem.steps[i]?.dish === dish);
    return own.length < 2 ? undefined : addLinks(model, own, row);
  });
  const turns = constraints.addVariable(0, row.length - 1);
  const terms = links.flatMap((variable) => (variable === undefined ? [] : [{ variable, weight: -1 }]));
  constraints.addLimit([...terms, { variable: turns, weight: -1 }], 1 - row.length);
  return turns;
}

/** The turns of a solution; 0 with two cooks. */
export function countTurns(model: WorkModel, values: ArrayLike<number>): number {
  const { problem } = model;
  if (problem.cooks !== 1) return 0;
  const startIn = (i: number) => values[model.startOf(i)] as number;
  const row = stepsInRow(model).sort((i, j) => startIn(i) - startIn(j));
  return row.filter((i, k) => k > 0 && problem.steps[i]?.dish !== problem.steps[row[k - 1] as number]?.dish).length;
}

function stepsInRow({ problem }: WorkModel): number[] {
  return problem.steps.flatMap(({ hands, minutes }, i) => (hands === 2 && minutes > 0 ? [i] : []));
}

/** The number of steps of one dish that directly follow another of it, as a variable. */
function addLinks(model: WorkModel, own: readonly number[], row: readonly number[]): number {
  const { constraints } = model;
  const out = new Map<number, Literal[]>(own.map((i) => [i, []]));
  const into = new Map<number, Literal[]>(own.map((i) => [i, []]));
  for (const i of own) {
    for (const j of own) {
      const follows = i === j ? undefined : addLink(model, i, j, row);
      if (follows === undefined) continue;
      out.get(i)?.push(follows);
      into.get(j)?.push(follows);
    }
  }
  const termsOf = (literals: readonly Literal[]) =>
    literals.map((literal) => ({ variable: literal >>> 17, weight: 1 }));
  for (const literals of [...out.values(), ...into.values()]) {
    if (literals.length > 1) constraints.addLimit(termsOf(literals), 1);
  }
  const links = constraints.addVariable(0, own.length - 1);
  const less = [...out.values()].flat().map((literal) => ({ variable: literal >>> 17, weight: -1 }));
  constraints.addLimit([{ variable: links, weight: 1 }, ...less], 0);
  return links;
}

/** A literal that says step j directly follows step i; none where it cannot. */
function addLink(model: WorkModel, i: number, j: number, row: readonly number[]): Literal | undefined {
  const { constraints } = model;
  const isBefore = model.isBefore(i, j);
  const others = row.filter((k) => k !== i && k !== j);
  if (isBefore === FALSE || others.some((k) => model.isKnownBefore(i, k) && model.isKnownBefore(k, j)))
    return undefined;
  const follows = constraints.addSwitch();
  constraints.addClause([negate(follows), isBefore]);
  for (const k of others) {
    const clause = [negate(follows), model.isBefore(k, i), model.isBefore(j, k)];
    if (!clause.includes(TRUE)) constraints.addClause(clause);
  }
  return follows;
}
