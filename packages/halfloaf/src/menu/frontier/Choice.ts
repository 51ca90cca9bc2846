import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";

/** A plan among those that money is weighed against something else by. */
export interface Choice {
  readonly plan: MenuPlan;
  /** Paid at the tills and for trips, less what the stock at the end is worth more than that at the start. */
  readonly moneyMinor: number;
  /** Hands-on minutes and those of the trips. */
  readonly minutes: number;
  /** Different dishes at the sittings that count for variety. */
  readonly distinct: number;
  /** Price of what falls short of the references or goes beyond them; 0 where all are kept. */
  readonly shortfallMinor: number;
}

/** What a judge says that choices are made of: `checkPlan` gives it. */
export type ChoiceJudge = (
  problem: MenuProblem,
  plan: MenuPlan,
) => {
  readonly faults: readonly unknown[];
  readonly money: {
    readonly tillMinor: number;
    readonly tripMinor: number;
    readonly creditMinor: number;
    readonly minutes: number;
    readonly shortfallMinor: number;
  };
};
