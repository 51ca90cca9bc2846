import type { SheetCatalogue } from "../../SheetCatalogue.ts";
import { tellPublishedCost } from "./costWords.ts";
import { AGAINST_WORDS, accountsWords, frontierWords, priceHistoryWords, ribbonWords } from "./pictureWords.ts";
import { sheetWords } from "./sheetWords.ts";
import { timelineWords } from "./timelineWords.ts";

/** The catalogue in the English of a kitchen. */
export function sheetCatalogueEn(english: "british" | "american"): SheetCatalogue {
  return {
    sheet: sheetWords(english),
    ribbons: ribbonWords,
    timeline: timelineWords,
    accounts: accountsWords,
    prices: priceHistoryWords,
    frontier: frontierWords,
    tellAgainst: (against, value) => AGAINST_WORDS[against].tell(value),
    publishedCost: tellPublishedCost,
  };
}
