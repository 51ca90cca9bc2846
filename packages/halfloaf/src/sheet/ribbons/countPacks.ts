import type { WeekPlan } from "../../kitchen/index.ts";

/** How many packs of a week are used, how many of these are finished, and of how many something is thrown away. */
export interface PackCounts {
  readonly packs: number;
  readonly finished: number;
  readonly wasted: number;
}

/** Counts the packs that the ribbons of a week show; one that is not touched is not counted. */
export function countPacks({ lots }: Pick<WeekPlan, "lots">): PackCounts {
  const used = lots.filter(({ usedG, wastedG }) => usedG > 0 || wastedG > 0);
  return {
    packs: used.length,
    finished: used.filter(({ leftG, wastedG }) => leftG === 0 && wastedG === 0).length,
    wasted: used.filter(({ wastedG }) => wastedG > 0).length,
  };
}
