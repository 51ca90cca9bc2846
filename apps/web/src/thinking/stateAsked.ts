import {
  type Kitchen,
  type KitchenProblem,
  leaveOutOver,
  type SittingKind,
  type Tables,
  toMenuProblem,
} from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";

/** Days that are to be planned: the first, how many, and the kinds of sittings that are over on the first. */
export interface DaysAsked {
  readonly from: CivilDate;
  readonly days: number;
  readonly over: readonly SittingKind[];
}

/** The days that are asked for as a problem, without what is over. */
export function stateAsked(kitchen: Kitchen, tables: Tables, { from, days, over }: DaysAsked): KitchenProblem {
  return leaveOutOver(toMenuProblem(kitchen, tables, from, days), kitchen, over);
}
