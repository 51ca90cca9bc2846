import { ovenMinutes } from "../../work/problem.ts";
import { stepMinutes } from "./pace.ts";
import type { TimedCooking } from "./solveCooking.ts";

/** A job of an order of work, with those that end before it begins and the minutes in between. */
interface Job {
  readonly at: number;
  readonly earliestMinutes: number;
  readonly before: readonly { readonly at: number; readonly lagMinutes: number }[];
}

/**
 * The sequence of an order of work without its minutes: which job had ended when another began. What may then run at once
 * ran at one common moment of the order, so hands and kit suffice however long each job takes.
 */
export interface Sequence {
  readonly jobs: readonly Job[];
  /** Whole minutes of every job at so many portions: the steps of the problem, then the washes. */
  minutesAt(portions: number): readonly number[];
}

/** The sequence of an order of work, for timing it again with other minutes. */
export function fixSequence({ cooking, plan }: TimedCooking): Sequence {
  const { problem, steps, wish } = cooking;
  const boardMinutes = problem.board?.washMinutes ?? 0;
  const washes = [
    ...plan.boardWashes.map((start) => ({ start, minutes: boardMinutes })),
    ...plan.kitWashes.map(({ use, startMinutes }) => ({
      start: startMinutes,
      minutes: problem.kit[problem.uses[use]?.kind as number]?.washMinutes ?? 0,
    })),
  ];
  const starts = [...plan.starts, ...washes.map(({ start }) => start)];
  const lengths = [...problem.steps, ...washes].map(({ minutes }) => minutes);
  const endOf = (at: number) => (starts[at] as number) + (lengths[at] as number);
  const ovenOf = (at: number) => problem.steps[at]?.oven?.tempC;
  const lag = (from: number, to: number) => {
    const [fromC, toC] = [ovenOf(from), ovenOf(to)];
    return problem.oven && fromC !== undefined && toC !== undefined ? ovenMinutes(problem.oven, fromC, toC) : 0;
  };
  const heatUp = (at: number) => {
    const toC = ovenOf(at);
    return problem.oven && toC !== undefined ? ovenMinutes(problem.oven, problem.oven.roomC, toC) : 0;
  };
  const inTurn = [...starts.keys()].sort(
    (a, b) => (starts[a] as number) - (starts[b] as number) || endOf(a) - endOf(b) || a - b,
  );
  const jobs = inTurn.map((at, turn) => ({
    at,
    earliestMinutes: heatUp(at),
    before: inTurn
      .slice(0, turn)
      .filter((other) => endOf(other) <= (starts[at] as number))
      .map((other) => ({ at: other, lagMinutes: lag(other, at) })),
  }));
  const minutesAt = (portions: number) => [
    ...steps.map(({ step }) => (step === undefined ? 0 : stepMinutes(step, portions, wish.pace))),
    ...washes.map(({ minutes }) => minutes),
  ];
  return { jobs, minutesAt };
}

/** Minutes from the first step to the plate when the jobs take so long, each begun as soon as the sequence lets it. */
export function sequenceMinutes({ jobs }: Sequence, minutes: readonly number[]): number {
  const ends: number[] = [];
  let last = 0;
  for (const { at, earliestMinutes, before } of jobs) {
    let start = earliestMinutes;
    for (const { at: other, lagMinutes } of before) start = Math.max(start, (ends[other] as number) + lagMinutes);
    const end = start + (minutes[at] as number);
    ends[at] = end;
    last = Math.max(last, end);
  }
  return last;
}
