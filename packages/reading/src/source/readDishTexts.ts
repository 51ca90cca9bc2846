import type { Issue } from "halfloaf/quantity";
import type { DishText } from "../dish/DishText.ts";
import { readPastedText } from "../dish/readPastedText.ts";
import { readPage } from "../page/readPage.ts";
import { findContentKind } from "./findContentKind.ts";

/** The dishes that a text tells, in the words of the text; `draftDish` makes drafts of them. */
export interface DishTexts {
  /** What it was read as. */
  readonly kind: "dish" | "page";
  readonly dishes: readonly DishText[];
  readonly issues: readonly Issue[];
}

/**
 * The dishes of whatever was pasted, dropped or shared: a page with its tags, JSON-LD with or without a page around it, or
 * plain text. `kind` says which where a person does; else its beginning shows it. Nothing in it is run.
 */
export function readDishTexts(content: string, kind?: "dish" | "page"): DishTexts {
  if ((kind ?? findContentKind(content.slice(0, HEAD))) === "page")
    return { kind: "page", ...readPage(toPage(content)) };
  const dish = readPastedText(content);
  return { kind: "dish", dishes: dish === undefined ? [] : [dish], issues: [] };
}

const HEAD = 65_536;

/** JSON-LD without a page is put into one. No "<" stands in JSON but within its texts, where it can be escaped. */
function toPage(content: string): string {
  if (!/^\s*[{[]/.test(content)) return content;
  return `<script type="application/ld+json">${content.replaceAll("<", "\\u003c")}</script>`;
}
