import type { Page } from "../output/Page.ts";
import { layDishes, layMakingsOnly } from "./dish/layDishes.ts";
import { layPriceList, layReceipt } from "./price/layPrices.ts";
import type { ReadPart } from "./ReadReport.ts";
import { layOfficial, layOwnFoods } from "./table/layTables.ts";

/** What one file was understood as, as lines of a page. */
export function layPart(part: ReadPart, page: Page): string[] {
  switch (part.kind) {
    case "makings":
      return layMakingsOnly(part, page);
    case "dish":
    case "page":
      return layDishes(part, page);
    case "table":
      return layOfficial(part, page);
    case "prices":
      return layPriceList(part, page);
    case "receipt":
      return layReceipt(part, page);
    case "foods":
      return layOwnFoods(part, page);
  }
}
