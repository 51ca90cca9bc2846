import type { Page } from "../output/Page.ts";
import type { CardData } from "./CardData.ts";

/** A costing card to be laid out as a page. */
export interface CardPage extends Page {
  readonly card: CardData;
}
