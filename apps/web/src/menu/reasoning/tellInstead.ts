import { toWeekPlan, type WeekPlan } from "halfloaf/kitchen";
import type { FoundPlan } from "halfloaf/menu";
import { REASON_MOVES, SEED } from "./effort.ts";
import { nameOf, type Stage } from "./Stage.ts";
import type { Instead } from "./Told.ts";

/** Another plan for the days of a week, as a week that may be taken. */
export function tellInstead(
  { kitchen, tables, before: { stated } }: Stage,
  week: WeekPlan,
  { plan, moneyMinor }: FoundPlan,
  extraMinor: number,
): Instead {
  const search = { seed: SEED, moves: REASON_MOVES, moneyMinor };
  const written = toWeekPlan(kitchen, tables, stated, plan, search);
  return { extraMinor, week: written, changed: listChanged(week, written) };
}

/** Sittings of the new week that have another dish than they had. */
export function listChanged(before: WeekPlan, after: WeekPlan): number[] {
  const dishOf = new Map(before.sittings.map((sitting) => [nameOf(sitting), sitting.dish]));
  return after.sittings.flatMap((sitting, at) => (dishOf.get(nameOf(sitting)) === sitting.dish ? [] : [at]));
}
