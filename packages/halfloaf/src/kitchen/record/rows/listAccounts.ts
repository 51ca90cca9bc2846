import type { CivilDate } from "../../../quantity/index.ts";
import { type AccountLine, accountsBy } from "../account/accountsBy.ts";
import type { Stretch } from "../account/calendar.ts";
import type { RecordState } from "../recordState.ts";

/** A line of the accounts with what was planned beside it, in whole minor units; planned sums are absent without a plan. */
export interface AccountRow extends Omit<AccountLine, "planned"> {
  readonly plannedTillMinor?: number;
  readonly plannedFaresMinor?: number;
  readonly plannedPlatesMinor?: number;
  readonly plannedWasteMinor?: number;
}

/** The accounts from one day to another as plain rows, one a day, a week or a month (`accountsBy`). */
export function listAccounts(state: RecordState, stretch: Stretch, from: CivilDate, to: CivilDate): AccountRow[] {
  return accountsBy(state, stretch, from, to).map(({ planned, ...line }): AccountRow => {
    if (planned === undefined) return line;
    return {
      ...line,
      plannedTillMinor: planned.tillMinor,
      plannedFaresMinor: planned.faresMinor,
      plannedPlatesMinor: planned.platesMinor,
      plannedWasteMinor: planned.wasteMinor,
    };
  });
}
