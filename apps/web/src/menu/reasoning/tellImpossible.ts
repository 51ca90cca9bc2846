import type { KitchenProblem } from "halfloaf/kitchen";
import type { Gap, LimitReading, Relaxation, WhyImpossible } from "halfloaf/menu";
import type { ImpossibleTold, WayOut } from "./Told.ts";
import { type KnobKitchen, keepShort, toWayOut } from "./toKnobs.ts";

type GapsTold = Extract<ImpossibleTold, { kind: "gaps" }>;

/** The ways out of a collision, each made by `toWay`, without those that ask for more than another. */
export function toWays<Way extends WayOut>(
  { alone, jointly }: Extract<WhyImpossible, { kind: "collision" }>,
  toWay: (relaxation: Relaxation) => Way,
): Way[] {
  return keepShort([...alone, ...(jointly === undefined ? [] : [jointly])].map(toWay));
}

/** Sittings without any dish, and the minutes that would give each one, where minutes are all that is lacking. */
export function tellGaps(gaps: readonly Gap[], kitchen: KnobKitchen, stated: KitchenProblem): GapsTold {
  const told = gaps.flatMap(({ sitting, ...lacks }) => {
    const { date, kind } = stated.sittings[sitting] ?? {};
    return date === undefined || kind === undefined ? [] : [{ date, sitting: kind, ...lacks }];
  });
  const readings = gaps.flatMap(({ sitting, moreMinutes }): LimitReading[] => {
    if (moreMinutes === undefined) return [];
    const allowed = stated.problem.sittings[sitting]?.minutes ?? 0;
    return [{ limit: { kind: "elapsed", sitting }, allowed, reached: allowed + moreMinutes, excess: moreMinutes }];
  });
  const isEnough = readings.length === gaps.length && gaps.every(({ isBeforeTrips }) => isBeforeTrips !== true);
  return { kind: "gaps", gaps: told, ...(isEnough && { way: toWayOut(readings, kitchen, stated) }) };
}
