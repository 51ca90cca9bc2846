import type { WorkBoard } from "../problem.ts";
import { atLeast, FALSE, negate, TRUE } from "../solver/literal.ts";
import type { WorkModel } from "./WorkModel.ts";

/** Washes of the board: their number and the start of each, as variables. */
export interface BoardWashes {
  readonly count: number;
  readonly starts: readonly number[];
}

/**
 * The board. With one, K = min(raw steps, ready steps) washes are enough: a wash is only of use between a raw step and
 * a later ready one. They come in order, and cut the time into sections 0..K; with s_i the section of step i, u the
 * number of washes made and W_k the start of the k-th,
 *
 *     [s_i >= k] => W_k + wash <= start_i,    not [s_i >= k] => end_i <= W_k,    [s_i >= k] => [u >= k],
 *     raw i before ready j  =>  s_j >= s_i + 1.
 *
 * With more boards one is for what is raw, the others for what is ready to eat, and nothing needs a wash in between.
 */
export function addBoard(model: WorkModel, board: WorkBoard): BoardWashes | undefined {
  const { constraints, problem } = model;
  const stepsOf = (kind: "raw" | "ready") => problem.steps.flatMap((step, i) => (step.board === kind ? [i] : []));
  const [raw, ready] = [stepsOf("raw"), stepsOf("ready")];
  const share = (count: number, steps: readonly number[]) => {
    if (steps.length > count)
      constraints.addCumulative(
        count,
        steps.map((i) => model.intervalOf(i, 1)),
      );
  };
  if (board.count > 1) {
    share(1, raw);
    share(board.count - 1, ready);
    return undefined;
  }
  const most = Math.min(raw.length, ready.length);
  if (most === 0) {
    share(1, [...raw, ...ready]);
    return undefined;
  }
  const washes = addWashes(model, board, most);
  const section = new Map<number, number>();
  for (const i of [...raw, ...ready]) section.set(i, addSection(model, i, washes, board.washMinutes));
  for (const i of raw) {
    for (const j of ready) {
      const isFirst = model.isBefore(i, j);
      const [si, sj] = [section.get(i) as number, section.get(j) as number];
      if (isFirst !== FALSE) constraints.addEdge(si, sj, 1, isFirst);
      if (isFirst !== FALSE)
        constraints.addEdge(model.startOf(i), model.startOf(j), model.minutesOf(i) + board.washMinutes, isFirst);
      if (isFirst !== TRUE) constraints.addEdge(sj, si, 0, negate(isFirst));
    }
  }
  constraints.addCumulative(1, [
    ...[...raw, ...ready].map((i) => model.intervalOf(i, 1)),
    ...washes.starts.map((start, k) => ({
      start,
      startOffset: 0,
      end: start,
      endOffset: board.washMinutes,
      demand: 1,
      when: atLeast(washes.count, k + 1),
    })),
  ]);
  return washes;
}

function addWashes(model: WorkModel, board: WorkBoard, most: number): BoardWashes {
  const { constraints, horizon } = model;
  const count = constraints.addVariable(0, most);
  const starts = Array.from({ length: most }, (_, k) => {
    const start = constraints.addVariable(0, horizon);
    const isMade = atLeast(count, k + 1);
    // A wash that is not made lies at the very end, so that it is one thing and not many.
    constraints.addClause([isMade, atLeast(start, horizon)]);
    constraints.addEdge(start, model.serve, board.washMinutes, isMade);
    return start;
  });
  for (let k = 1; k < most; k++) {
    constraints.addEdge(starts[k - 1] as number, starts[k] as number, board.washMinutes, atLeast(count, k + 1));
  }
  return { count, starts };
}

function addSection(model: WorkModel, step: number, washes: BoardWashes, minutes: number): number {
  const { constraints } = model;
  const section = constraints.addVariable(0, washes.starts.length);
  for (const [k, start] of washes.starts.entries()) {
    const isAfter = atLeast(section, k + 1);
    constraints.addClause([negate(isAfter), atLeast(washes.count, k + 1)]);
    constraints.addEdge(start, model.startOf(step), minutes, isAfter);
    constraints.addEdge(model.startOf(step), start, model.minutesOf(step), negate(isAfter));
  }
  return section;
}
