import { atLeast } from "../solver/literal.ts";
import type { BoardWashes } from "./addBoard.ts";
import type { KitWash } from "./addKit.ts";
import type { WorkModel } from "./WorkModel.ts";

const FULL = 2;

/** The hands: 2 for each cook; washes take both. Two steps that ask for too much come one after the other. */
export function addHands(model: WorkModel, board: BoardWashes | undefined, kit: readonly KitWash[]): void {
  const { problem, constraints } = model;
  const capacity = FULL * problem.cooks;
  const steps = problem.steps.flatMap(({ hands, minutes }, i) => (hands > 0 && minutes > 0 ? [i] : []));
  const handsOf = (i: number) => problem.steps[i]?.hands as number;
  const boardWashes = (board?.starts ?? []).map((start, k) => ({
    start,
    startOffset: 0,
    end: start,
    endOffset: problem.board?.washMinutes ?? 0,
    demand: FULL,
    when: atLeast(board?.count as number, k + 1),
  }));
  const kitWashes = kit.map(({ start, minutes }) => ({
    start,
    startOffset: 0,
    end: start,
    endOffset: minutes,
    demand: FULL,
    when: atLeast(start, 1),
  }));
  const intervals = steps.map((i) => model.intervalOf(i, handsOf(i)));
  const all = [...intervals, ...boardWashes, ...kitWashes];
  constraints.addCumulative(capacity, all);
  constraints.addEnergyLimit(
    capacity,
    all.map(({ start, endOffset, demand, when }) => ({ start, minutes: endOffset, demand, when })),
  );
  for (const [k, i] of steps.entries()) {
    for (const j of steps.slice(k + 1)) if (handsOf(i) + handsOf(j) > capacity) model.isBefore(i, j);
  }
}
