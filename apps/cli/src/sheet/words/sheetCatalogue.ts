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
import { toSvgWords } from "../../work/svgWords.ts";
import { tellPublishedCost } from "./costWords.ts";
import { AGAINST_WORDS, accountsWords, frontierWords, priceHistoryWords, ribbonWords } from "./pictureWords.ts";
import { sheetWords } from "./sheetWords.ts";

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

/** The catalogue in the English of a kitchen. */
export function sheetCatalogue(english: "british" | "american"): SheetCatalogue {
  return {
    sheet: sheetWords(english),
    ribbons: ribbonWords,
    timeline: toSvgWords,
    accounts: accountsWords,
    prices: priceHistoryWords,
    frontier: frontierWords,
    tellAgainst: (against, value) => AGAINST_WORDS[against].tell(value),
    publishedCost: tellPublishedCost,
  };
}
