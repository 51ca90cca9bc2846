import type { WeekPlan } from "halfloaf/kitchen";
import type { Against, ChoiceTold } from "./reasoning/Told.ts";

/** What picture and list of choices are given. */
export interface ChoicesShown {
  readonly choices: readonly ChoiceTold[];
  readonly against: Against;
  readonly shown: WeekPlan | undefined;
  readonly currency: string;
  readonly onPick: (week: WeekPlan) => void;
}
