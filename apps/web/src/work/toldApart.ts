import type { StepTold } from "../thinking/Thinker.ts";

/** Steps told done closer together than this were told in one go (min); our own choice, no source. */
const APART_MINUTES = 0.25;

/**
 * The steps that are done of which it is known how long they took: those that were told as they were done. Of several that were
 * told in one go only the first is, since the others were done at some time before.
 */
export function toldApart(told: readonly StepTold[]): StepTold[] {
  const done = told.filter(({ doneMinutes }) => doneMinutes !== undefined);
  const doneAt = ({ doneMinutes = 0 }: StepTold): number => doneMinutes;
  return done
    .toSorted((a, b) => doneAt(a) - doneAt(b))
    .filter((step, at, all) => {
      const before = all[at - 1];
      const isApart = before === undefined || doneAt(step) - doneAt(before) >= APART_MINUTES;
      return isApart && doneAt(step) - step.begunMinutes >= APART_MINUTES;
    });
}
