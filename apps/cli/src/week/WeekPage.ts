import { tellMoney } from "@halfloaf/words/en";
import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import type { Page } from "../output/Page.ts";
import type { Names } from "../words/Names.ts";

/** A lot of the stores that is past its time before the first day. */
type GoneOffLot = Pick<Kitchen["stores"][number], "id" | "food" | "massG" | "costMinor">;

/** A week's plan to be laid out as a page. */
export interface WeekPage extends Page {
  readonly plan: WeekPlan;
  readonly names: Names;
  /** Part of the stores, but of no plan and of no sum. */
  readonly goneOff: readonly GoneOffLot[];
  /** Dishes of which something is done hours before or the evening before. */
  readonly begunAhead: ReadonlySet<string>;
}

/** Money of the plan without its currency, which the page says at its head. */
export function moneyOf(page: Pick<WeekPage, "plan">, minor: number): string {
  return tellMoney(minor, page.plan.currency);
}

/** A heading in capitals, with what goes for the whole part at its right. */
export function headingOf({ paint }: Page, text: string): string {
  return paint.heading(text.toUpperCase());
}
