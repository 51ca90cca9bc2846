import type { WorkSheet } from "halfloaf/kitchen";
import type { AccountLine } from "halfloaf/kitchen/record";
import type {
  AccountsWords,
  CardSheet,
  FrontierWords,
  PackCounts,
  PriceHistoryWords,
  RibbonWords,
  SheetWords,
  TimelineWords,
} from "halfloaf/sheet";

/** What money is weighed against. */
export type AgainstMoney = "minutes" | "variety" | "intake";

/** All that sheets, pictures and published dishes say in one language. */
export interface SheetCatalogue {
  readonly sheet: SheetWords;
  readonly ribbons: (kitchen: string, from: string, counts: PackCounts) => RibbonWords;
  readonly timeline: (sheet: WorkSheet) => TimelineWords;
  readonly accounts: (kitchen: string, currency: string, lines: readonly AccountLine[]) => AccountsWords;
  readonly prices: (
    kitchen: string,
    currency: string,
    told: readonly string[],
    line: PriceHistoryWords["line"],
  ) => PriceHistoryWords;
  readonly frontier: (kitchen: string, against: AgainstMoney, plans: readonly string[]) => FrontierWords;
  /** Writes a figure of what money is weighed against. */
  readonly tellAgainst: (against: AgainstMoney, value: number) => string;
  readonly publishedCost: (card: CardSheet) => string;
}
