import type { ReplanOptions, ReplanOutcome } from "../../menu/index.ts";
import { settleTogether } from "../cooking/settleTogether.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { ChangedKitchenWeek } from "./changeWeek.ts";

/** A changed week planned again, and the same week with what was learned of its cookings, for `writeWeek`. */
export interface ReplannedWeek {
  readonly changed: ChangedKitchenWeek;
  readonly outcome: ReplanOutcome;
}

/** Plans a changed week again until all that it cooks at once is done in time by an order of work (`settleTogether`). */
export function replanWeek(
  kitchen: Kitchen,
  tables: Tables,
  changed: ChangedKitchenWeek,
  options: ReplanOptions,
): ReplannedWeek {
  const { stated, outcome } = settleTogether({ stated: changed.stated, kitchen, tables }, changed.week, options);
  return { changed: { ...changed, stated, week: { ...changed.week, problem: stated.problem } }, outcome };
}
