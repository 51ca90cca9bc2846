import type { CivilDate } from "../../quantity/index.ts";
import type { DayFlow, DayIntake, DaySheet, PriceSource } from "../day/DaySheet.ts";

/** Money paid against the budget of the days, fares included. */
interface BudgetLine {
  readonly budgetMinor: number;
  readonly paidMinor: number;
}

/** A week as it is printed: its days, and the sums of their lines. Money in minor units. */
export interface WeekSheet {
  readonly kitchen: string;
  readonly currency: string;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly days: readonly DaySheet[];
  /** Exactly the sum of the days' plates. */
  readonly platesMinor: number;
  readonly handsOnMinutes: number;
  /** From the first morning to the last evening. */
  readonly flow: DayFlow;
  readonly budget?: BudgetLine;
  /** A day on average. */
  readonly intake: readonly DayIntake[];
  readonly sources: readonly PriceSource[];
}
