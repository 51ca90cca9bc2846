import { addDays, type CivilDate } from "../../../quantity/index.ts";
import type { EditedKitchen } from "../kitchenRecord.ts";
import type { RecordState } from "../recordState.ts";
import { accountsBy } from "./accountsBy.ts";
import { startOf } from "./calendar.ts";

/** The money of one week, in minor units. */
export interface BudgetOfWeek {
  /** Monday and Sunday of the week. */
  readonly from: CivilDate;
  readonly to: CivilDate;
  /** Paid at the tills and for ways to shops. */
  readonly spentMinor: number;
  /** What eating elsewhere cost, as far as it is known; no part of what is spent. */
  readonly ateOutMinor: number;
  readonly budgetMinor?: number;
  /** Negative where more was spent; absent with the budget. */
  readonly leftMinor?: number;
}

/** What is spent and what is left of the week's money in the ISO week of a day, all of the week that is recorded. */
export function budgetOf(edited: Pick<EditedKitchen, "limits">, state: RecordState, day: CivilDate): BudgetOfWeek {
  const from = startOf(day, "week");
  const to = addDays(from, 6);
  const { budgetMinor } = edited.limits;
  const [line] = accountsBy({ ...state, menus: [] }, "week", from, to);
  const { tillMinor, faresMinor, ateOutMinor } = line as NonNullable<typeof line>;
  const spentMinor = tillMinor + faresMinor;
  const base = { from, to, spentMinor, ateOutMinor };
  return budgetMinor === undefined ? base : { ...base, budgetMinor, leftMinor: budgetMinor - spentMinor };
}
