import type { WorkPlan } from "../../work/plan.ts";
import type { WorkProblem } from "../../work/problem.ts";

/** A stretch of work that takes hands. */
interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly hands: number;
}

/** Cooks, from 1 on, for every step of the problem, each wash of the board and each of the kit, in the plan's order. */
export interface HandShares {
  readonly steps: readonly (readonly number[])[];
  readonly boardWashes: readonly (readonly number[])[];
  readonly kitWashes: readonly (readonly number[])[];
}

const FULL = 2;

/**
 * Who does what. Work for both hands goes to whoever did the dish's work last and is free, an eye is kept by whoever has
 * one left and handed over where that changes. The plan must keep to the hands there are.
 */
export function shareHands(problem: WorkProblem, plan: WorkPlan): HandShares {
  const { steps, cooks, board, kit, uses } = problem;
  const at = (start: number, minutes: number, hands: number): Stretch => ({ start, end: start + minutes, hands });
  const stretches = [
    ...steps.map(({ minutes, hands }, i) => at(plan.starts[i] as number, minutes, hands)),
    ...plan.boardWashes.map((start) => at(start, board?.washMinutes ?? 0, FULL)),
    ...plan.kitWashes.map(({ use, startMinutes }) =>
      at(startMinutes, kit[uses[use]?.kind as number]?.washMinutes ?? 0, FULL),
    ),
  ];
  const full = giveFull(stretches, cooks, (k) => steps[k]?.dish);
  const shares = stretches.map((stretch, k): number[] => {
    if (stretch.hands === 0 || stretch.end === stretch.start) return [];
    return stretch.hands === FULL ? [full.get(k) as number] : [];
  });
  giveEyes(stretches, cooks, full, shares);
  const boardEnd = steps.length + plan.boardWashes.length;
  return {
    steps: shares.slice(0, steps.length),
    boardWashes: shares.slice(steps.length, boardEnd),
    kitWashes: shares.slice(boardEnd),
  };
}

function inTurn(stretches: readonly Stretch[], hands: number): number[] {
  const works = (k: number) =>
    stretches[k]?.hands === hands && (stretches[k] as Stretch).end > (stretches[k] as Stretch).start;
  return [...stretches.keys()]
    .filter(works)
    .sort((a, b) => (stretches[a] as Stretch).start - (stretches[b] as Stretch).start || a - b);
}

function giveFull(stretches: readonly Stretch[], cooks: number, dishOf: (k: number) => number | undefined) {
  const given = new Map<number, number>();
  const freeFrom = Array.from({ length: cooks }, () => 0);
  const lastDish: (number | undefined)[] = Array.from({ length: cooks });
  for (const k of inTurn(stretches, FULL)) {
    const { start, end } = stretches[k] as Stretch;
    const free = freeFrom.flatMap((from, cook) => (from <= start ? [cook] : []));
    const cook = free.find((each) => lastDish[each] !== undefined && lastDish[each] === dishOf(k)) ?? free[0] ?? 0;
    freeFrom[cook] = end;
    lastDish[cook] = dishOf(k);
    given.set(k, cook + 1);
  }
  return given;
}

/** From change to change each eye goes to a cook who is not at work with both hands, the one who had it first. */
function giveEyes(stretches: readonly Stretch[], cooks: number, full: ReadonlyMap<number, number>, shares: number[][]) {
  const changes = [...new Set(stretches.flatMap(({ start, end }) => [start, end]))].sort((a, b) => a - b);
  const isOn = (k: number, moment: number) =>
    (stretches[k] as Stretch).start <= moment && moment < (stretches[k] as Stretch).end;
  for (const moment of changes) {
    const left = Array.from({ length: cooks }, () => FULL);
    for (const [k, cook] of full) if (isOn(k, moment)) left[cook - 1] = 0;
    for (const k of inTurn(stretches, 1).filter((each) => isOn(each, moment))) {
      const share = shares[k] as number[];
      const had = share.at(-1);
      const cook = had !== undefined && (left[had - 1] as number) > 0 ? had : left.findIndex((some) => some > 0) + 1;
      if (cook === 0) continue;
      left[cook - 1] = (left[cook - 1] as number) - 1;
      if (!share.includes(cook)) share.push(cook);
    }
  }
}
