import { KIT_PARTS, type KitPart } from "../../dish/index.ts";
import type { TimedCooking } from "./solveCooking.ts";

/** A part of the kit at a step; numbered from 1 on where the kitchen has more than one of it. */
export interface NumberedPart {
  readonly part: KitPart;
  readonly number?: number;
}

/**
 * Which ring, pan and pot each step of the problem uses. A piece goes to the use that begins first, where it can to the
 * dish that had it last, so that a pot seldom changes its ring. Parts that are not limited carry no number.
 */
export function shareKit({ cooking, plan }: TimedCooking): NumberedPart[][] {
  const { problem, steps, parts } = cooking;
  const numbers = problem.uses.map(() => 1);
  for (const [kind, { count }] of problem.kit.entries()) {
    const uses = [...problem.uses.keys()].filter((use) => problem.uses[use]?.kind === kind);
    const startOf = (use: number) => plan.starts[problem.uses[use]?.from as number] as number;
    const endOf = (use: number) => {
      const to = problem.uses[use]?.to as number;
      return (plan.starts[to] as number) + (problem.steps[to]?.minutes as number);
    };
    const pieces = Array.from({ length: count }, () => ({ free: 0, dish: -1 }));
    for (const use of uses.sort((a, b) => startOf(a) - startOf(b) || a - b)) {
      const dish = problem.steps[problem.uses[use]?.from as number]?.dish as number;
      const free = [...pieces.keys()].filter((piece) => (pieces[piece]?.free as number) <= startOf(use));
      const piece =
        free.find((each) => pieces[each]?.dish === dish) ??
        free.find((each) => pieces[each]?.dish === -1) ??
        free[0] ??
        0;
      pieces[piece] = { free: endOf(use), dish };
      numbers[use] = piece + 1;
    }
  }
  return steps.map(({ step }, i) =>
    KIT_PARTS.filter((part) => step?.kit.includes(part)).flatMap((part): NumberedPart[] => {
      const kind = parts.indexOf(part);
      if ((problem.kit[kind]?.count ?? 1) < 2) return [{ part }];
      const held = numbersAt(cooking, plan.starts, numbers, kind, i);
      return held.length === 0 ? [{ part }] : held.map((number) => ({ part, number }));
    }),
  );
}

/** Numbers of the pieces of a kind that the uses of a step's own dish hold while it goes on. */
function numbersAt(
  { problem }: TimedCooking["cooking"],
  starts: readonly number[],
  numbers: readonly number[],
  kind: number,
  step: number,
): number[] {
  const uses = problem.uses.flatMap((use, k) => (use.kind === kind ? [{ ...use, number: numbers[k] as number }] : []));
  const own = uses.filter(({ from, to }) => from === step || to === step);
  if (own.length > 0)
    return [...new Set(own.filter(({ from }) => from === step || own.length === 1).map(({ number }) => number))];
  const start = starts[step] as number;
  const within = uses.filter(
    ({ from, to }) =>
      problem.steps[from]?.dish === problem.steps[step]?.dish &&
      (starts[from] as number) <= start &&
      start <= (starts[to] as number),
  );
  return within.slice(0, 1).map(({ number }) => number);
}
