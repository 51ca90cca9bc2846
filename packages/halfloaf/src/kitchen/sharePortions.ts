import type { WeekPlan } from "./weekPlan.ts";

/** A plate of a sitting: who eats it and how many standard portions it holds. */
export interface PortionOfEater {
  readonly eater: string;
  readonly portions: number;
}

/**
 * The plates of a planned sitting, in the order of its eaters; portions add up to those of the sitting. A week keeps no portions
 * of an eater, so they follow from what each plate costs, as near as whole minor units tell; where a plate costs nothing that
 * tells nothing, and all have the same.
 */
export function sharePortions({
  eaters,
  plateMinor,
  portions,
}: Pick<WeekPlan["sittings"][number], "eaters" | "plateMinor" | "portions">): PortionOfEater[] {
  const costs = eaters.map((_, at) => plateMinor[at] ?? 0);
  const all = costs.reduce((sum, minor) => sum + minor, 0);
  const tells = costs.every((minor) => minor > 0);
  return eaters.map((eater, at) => ({
    eater,
    portions: portions * (tells ? (costs[at] as number) / all : 1 / eaters.length),
  }));
}
