import type { HoldExcess, WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";
import { addBoard, type BoardWashes } from "./addBoard.ts";
import { addHands } from "./addHands.ts";
import { addHolds, type SoftHold } from "./addHolds.ts";
import { addKeeping, countKeeping } from "./addKeeping.ts";
import { addKit, type KitWash } from "./addKit.ts";
import { addOven } from "./addOven.ts";
import { addOverlaps } from "./addOverlaps.ts";
import { addTurns, countTurns } from "./addTurns.ts";
import { type RuleId, WorkModel } from "./WorkModel.ts";

/** What is asked of a model beyond the rules of the kitchen. */
export interface WorkQuestion {
  readonly horizon: number;
  /** Range of the time of serving. */
  readonly serveFrom: number;
  readonly serveUntil: number;
  /** Most minutes beyond holds in all; 0 = the holds are kept. */
  readonly mostExcess: number;
  /** Most keeping; absent = it is not counted. */
  readonly mostKeeping?: number;
  readonly countTurns?: boolean;
  readonly ignored?: ReadonlySet<RuleId>;
}

/** A model with the variables that are asked for, and the way back from values to a plan. */
export interface BuiltModel {
  readonly model: WorkModel;
  readonly excess?: number;
  readonly keeping?: number;
  readonly turns?: number;
  /** Variables to settle after the starts, in order. */
  readonly afterwards: readonly number[];
  /** Starts of the washes that are made, as variables. */
  washesIn(values: ArrayLike<number>): readonly number[];
  /** A wash of kit never starts at 0, which stands for none. */
  earliestWash(variable: number): number;
  excessesOf(values: ArrayLike<number>): readonly HoldExcess[];
  keepingOf(values: ArrayLike<number>): number;
  turnsOf(values: ArrayLike<number>): number;
  toPlan(values: ArrayLike<number>): WorkPlan;
}

/** The rules of the kitchen as a constraint model. */
export function buildWorkModel(problem: WorkProblem, question: WorkQuestion): BuiltModel {
  const ignored: ReadonlySet<RuleId> = question.ignored ?? new Set();
  const model = new WorkModel(problem, question.horizon, ignored);
  const { constraints } = model;
  constraints.lows[model.serve] = question.serveFrom;
  constraints.highs[model.serve] = question.serveUntil;
  const { holds, total } = addHolds(model, question.mostExcess, ignored);
  model.closePaths();
  const board = problem.board && !ignored.has("board") ? addBoard(model, problem.board) : undefined;
  const kit = addKit(model, ignored);
  if (!ignored.has("hands")) {
    addHands(model, board, kit);
    addOverlaps(model, board, kit);
  }
  if (problem.oven && !ignored.has("oven")) addOven(model, problem.oven);
  const keeping = question.mostKeeping === undefined ? undefined : addKeeping(model, board, question.mostKeeping);
  const turns = question.countTurns ? addTurns(model) : undefined;
  const isWashed = (values: ArrayLike<number>) => (wash: KitWash) => (values[wash.start] as number) > 0;
  return {
    model,
    ...(total === undefined ? {} : { excess: total }),
    ...(keeping === undefined ? {} : { keeping }),
    ...(turns === undefined ? {} : { turns }),
    afterwards: [...(board ? [board.count, ...board.starts] : []), ...kit.map(({ start }) => start)],
    washesIn: (values) => [
      ...(board ? board.starts.slice(0, values[board.count] as number) : []),
      ...kit.filter(isWashed(values)).map(({ start }) => start),
    ],
    earliestWash: (variable) => (kit.some(({ start }) => start === variable) ? 1 : 0),
    excessesOf: (values) => excessesOf(holds, values),
    keepingOf: (values) => countKeeping(model, board, values),
    turnsOf: (values) => countTurns(model, values),
    toPlan: (values) => toPlan(model, board, kit, values),
  };
}

/** More excess than any order of work within the horizon has. */
export function boundlessExcess({ waits, dishes }: WorkProblem, horizon: number): number {
  return horizon * (waits.length + dishes.length);
}

function excessesOf(holds: readonly SoftHold[], values: ArrayLike<number>): readonly HoldExcess[] {
  return holds.flatMap(({ dish, wait, excess }) => {
    const minutes = values[excess] as number;
    return minutes > 0 ? [{ dish, ...(wait === undefined ? {} : { wait }), minutes }] : [];
  });
}

function toPlan(
  model: WorkModel,
  board: BoardWashes | undefined,
  kit: readonly KitWash[],
  values: ArrayLike<number>,
): WorkPlan {
  const at = (variable: number) => values[variable] as number;
  return {
    starts: model.start.map(at),
    serveMinutes: at(model.serve),
    boardWashes: board ? board.starts.slice(0, at(board.count)).map(at) : [],
    kitWashes: kit.flatMap(({ use, start }) => (at(start) > 0 ? [{ use, startMinutes: at(start) }] : [])),
  };
}
