import type { WorkPlan } from "../../work/plan.ts";
import { solveWork } from "../../work/solveWork.ts";
import type { Cooking } from "./Cooking.ts";
import type { Happening } from "./Happening.ts";
import { type Remaining, restOf } from "./restOf.ts";
import type { TimedCooking } from "./solveCooking.ts";

/**
 * The cooking from now on. `same`: all went as planned, nothing changes. `timed`: timed anew. `shifted`: the search was
 * stopped before it found anything; all that is left is put off as it was, which may go beyond holds, also firm ones.
 * Steps in the answer have the minutes they really took.
 */
export interface Retimed {
  readonly kind: "same" | "timed" | "shifted";
  readonly timed: TimedCooking;
}

/**
 * Times the rest of a cooking anew from what has happened up to `nowMinutes`. What is begun stays as it was; all else
 * begins now or later, by the same rules. A hold that is past already is gone beyond as little as can be. Throws where
 * something happened after now, or a step is done before it began.
 */
export function retime(
  timed: TimedCooking,
  happened: readonly Happening[],
  nowMinutes: number,
  shouldStop: () => boolean,
): Retimed {
  checkTimes(happened, nowMinutes);
  if (isAsPlanned(timed, happened, nowMinutes)) return { kind: "same", timed };
  const rest = restOf(timed, happened, nowMinutes);
  const outcome = solveWork(rest.problem, { shouldStop });
  const cooking = asHappened(timed.cooking, rest);
  if (outcome.kind === "stopped" || outcome.kind === "impossible") {
    return { kind: "shifted", timed: { cooking, plan: shift(timed, rest, nowMinutes), excesses: [], isProven: false } };
  }
  const { plan, excesses } = outcome;
  const isProven = outcome.kind === "optimal" || !["excess", "serve"].includes(outcome.open.stage);
  const whole = toWhole(timed, rest, plan, nowMinutes);
  const told = excesses.flatMap(({ wait, ...excess }) => {
    if (wait === undefined) return [excess];
    const old = rest.waits[wait];
    return old === undefined ? [] : [{ ...excess, wait: old }];
  });
  return { kind: "timed", timed: { cooking, plan: whole, excesses: told, isProven } };
}

function checkTimes(happened: readonly Happening[], now: number): void {
  for (const each of happened) {
    const times =
      each.kind === "step" ? [each.begunMinutes, each.doneMinutes ?? each.begunMinutes] : [each.startMinutes];
    const [begun = 0, done = begun] = times;
    if (!(begun >= 0 && done >= begun && done <= now))
      throw new RangeError(`${JSON.stringify(each)} cannot have happened by ${now}`);
  }
}

/** True where every step and wash that should have begun by now did so, and ended or goes on as planned. */
function isAsPlanned({ cooking, plan }: TimedCooking, happened: readonly Happening[], now: number): boolean {
  const { steps } = cooking.problem;
  const byStep = new Map(happened.flatMap((each) => (each.kind === "step" ? [[each.step, each] as const] : [])));
  const stepsAgree = steps.every(({ minutes }, i) => {
    const start = plan.starts[i] as number;
    const found = byStep.get(i);
    if (found === undefined) return start >= now || cooking.steps[i]?.step === undefined;
    if (found.begunMinutes !== start) return false;
    const end = start + minutes;
    if (found.doneMinutes !== undefined) return found.doneMinutes === end;
    return end >= now && (found.leftMinutes ?? end - now) === end - now;
  });
  const washed = (kind: "board-wash" | "kit-wash", start: number) =>
    start >= now || happened.some((each) => each.kind === kind && each.startMinutes === start);
  return (
    stepsAgree &&
    plan.boardWashes.every((start) => washed("board-wash", start)) &&
    plan.kitWashes.every(({ startMinutes }) => washed("kit-wash", startMinutes))
  );
}

/** The problem with the minutes that steps really took, or will by what is known now. */
function asHappened(cooking: Cooking, { took }: Remaining): Cooking {
  const steps = cooking.problem.steps.map((step, i) => {
    const minutes = took.get(i)?.minutes;
    return minutes === undefined ? step : { ...step, minutes };
  });
  return { ...cooking, problem: { ...cooking.problem, steps } };
}

/** The plan of the rest, put back among what has happened. */
function toWhole({ cooking, plan: old }: TimedCooking, rest: Remaining, plan: WorkPlan, now: number): WorkPlan {
  const starts = cooking.problem.steps.map((_, i) => {
    const index = rest.index.get(i);
    return (
      rest.took.get(i)?.start ??
      (index === undefined ? (old.starts[i] as number) : now + (plan.starts[index] as number))
    );
  });
  const kitWashes = plan.kitWashes.flatMap(({ use, startMinutes }) => {
    const was = rest.uses[use];
    return was === undefined ? [] : [{ use: was, startMinutes: now + startMinutes }];
  });
  return {
    starts,
    serveMinutes: now + plan.serveMinutes,
    boardWashes: [...madeStarts(rest), ...plan.boardWashes.map((start) => now + start)],
    kitWashes: [...madeWashes(rest), ...kitWashes],
  };
}

function madeStarts({ boardWashes }: Remaining): number[] {
  return boardWashes.map(({ startMinutes }) => startMinutes).sort((a, b) => a - b);
}

function madeWashes({ kitWashes }: Remaining): WorkPlan["kitWashes"][number][] {
  return kitWashes.map(({ use, startMinutes }) => ({ use, startMinutes }));
}

/** Everything that has not begun as much later as is needed, so that nothing begins before now or before what it waits for. */
function shift({ cooking, plan }: TimedCooking, rest: Remaining, now: number): WorkPlan {
  const made = madeStarts(rest);
  const boards = plan.boardWashes.filter((start) => !made.includes(start));
  const kits = plan.kitWashes.filter(({ use }) => !rest.kitWashes.some((wash) => wash.use === use));
  const open = plan.starts.filter((_, i) => !rest.took.has(i));
  const late = cooking.problem.steps.map(({ minutes }, i) => {
    const real = rest.took.get(i);
    return real === undefined ? 0 : real.start + real.minutes - (plan.starts[i] as number) - minutes;
  });
  const waiting = [...open, ...boards, ...kits.map(({ startMinutes }) => startMinutes)];
  const by = Math.max(0, ...late, ...waiting.map((start) => now - start));
  return {
    starts: plan.starts.map((start, i) => rest.took.get(i)?.start ?? start + by),
    serveMinutes: plan.serveMinutes + by,
    boardWashes: [...made, ...boards.map((start) => start + by)],
    kitWashes: [
      ...madeWashes(rest),
      ...kits.map(({ use, startMinutes }) => ({ use, startMinutes: startMinutes + by })),
    ],
  };
}
