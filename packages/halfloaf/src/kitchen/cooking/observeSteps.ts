import type { DishToCook } from "./Cooking.ts";
import type { Happening } from "./Happening.ts";
import type { ObservedStep } from "./pace.ts";
import type { TimedCooking } from "./solveCooking.ts";

/**
 * What the happenings of a cooking say about the pace of its cook: each step of which both begin and end are known, with
 * the minutes its dish states for so many portions. Steps still going on and washes say nothing.
 */
export function observeSteps({ cooking }: TimedCooking, happened: readonly Happening[]): ObservedStep[] {
  return happened.flatMap((each): ObservedStep[] => {
    if (each.kind !== "step" || each.doneMinutes === undefined) return [];
    const at = cooking.steps[each.step];
    if (at?.step === undefined) return [];
    const { portions } = cooking.wish.dishes[at.dish] as DishToCook;
    const { kind, minutes } = at.step;
    const statedMinutes = minutes.fixed + minutes.perPortion * portions;
    return [{ kind, statedMinutes, observedMinutes: each.doneMinutes - each.begunMinutes }];
  });
}
