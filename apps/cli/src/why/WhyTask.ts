import { tellMoney } from "@halfloaf/words/en";
import type { Kitchen, KitchenProblem, Tables } from "halfloaf/kitchen";
import type { MenuPlan, UnplannedWeek } from "halfloaf/menu";
import type { Names } from "../words/Names.ts";
import { sittingAt } from "../words/planFaultWords.ts";
import type { WhyReport } from "./WhyReport.ts";

/** A plan whose reasons are asked for, with the kitchen it was made for. */
export interface WhyTask {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly stated: KitchenProblem;
  readonly plan: MenuPlan;
  readonly names: Names;
  readonly currency: string;
  /** What is left of it, where some of its days are over; the limits are told of that. */
  readonly rest?: UnplannedWeek;
}

/** Seed and moves of the short searches behind the reasons. */
export const REASON_SEARCH = { seed: 1, moves: 4000 } as const;

/** A sitting by its date, kind and eaters. */
export function refer({ stated }: WhyTask, k: number): NonNullable<WhyReport["dishes"]>[number]["sitting"] {
  const sitting = stated.sittings[k];
  if (sitting === undefined) throw new RangeError(`there is no sitting ${k}`);
  return { date: sitting.date, kind: sitting.kind, eaters: [...sitting.eaters] };
}

/** "Monday 30 November, evening (Ada, Bo)". */
export function tellSitting({ stated, names }: WhyTask, k: number): string {
  return sittingAt({ stated, names }, k);
}

/** Money with its currency, without a sign. */
export function tellAmount({ currency }: WhyTask, minor: number): string {
  return `${tellMoney(Math.abs(Math.round(minor)), currency)} ${currency}`;
}

/** "0.42 EUR dearer", "0.10 EUR cheaper", "just as dear". */
export function tellExtra(task: WhyTask, extraMinor: number): string {
  const rounded = Math.round(extraMinor);
  if (rounded === 0) return "just as dear";
  return `${tellAmount(task, rounded)} ${rounded > 0 ? "dearer" : "cheaper"}`;
}
