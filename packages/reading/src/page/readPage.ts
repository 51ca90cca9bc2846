import type { Issue } from "halfloaf/quantity";
import { type DishForm, type DishText, MOST_TEXT } from "../dish/DishText.ts";
import { readPastedText } from "../dish/readPastedText.ts";
import { findItems, type Item } from "./Item.ts";
import { jsonLdItems } from "./jsonLdItems.ts";
import { microdataItems, rdfaItems } from "./markedItems.ts";
import { elementsOf, type PageElement, textOf } from "./PageElement.ts";
import { tidyText } from "./plainText.ts";
import { readRecipeItem } from "./readRecipeItem.ts";
import { readTree } from "./readTree.ts";

/** The dishes of a page and what kept any part of it from being read. */
export interface PageReading {
  readonly dishes: readonly DishText[];
  readonly issues: readonly Issue[];
}

/** Most dishes that are read from one page. */
const MOST_DISHES = 50;

/**
 * The dishes that a page of HTML holds: those it states as schema.org recipes in JSON-LD, microdata or RDFa Lite, the first
 * of these that has any with makings or method; else the one that its visible text may tell.
 *
 * Nothing is run, nothing is fetched, addresses stay text; no markup is in what is given. Issues besides those of
 * `readTree` and `parseLooseJson`: `no-dish` where the page tells none.
 */
export function readPage(html: string): PageReading {
  const { root, issues } = readTree(html);
  const jsonLd = jsonLdItems(root);
  const found = firstWithDishes([
    ["json-ld", () => jsonLd.items],
    ["microdata", () => microdataItems(root)],
    ["rdfa", () => rdfaItems(root)],
  ]);
  const dishes = found.length > 0 ? found : readVisible(root);
  const none: Issue = { code: "no-dish", path: [], expected: "makings and a method", received: "a page without" };
  return { dishes, issues: [...issues, ...jsonLd.issues, ...(dishes.length === 0 ? [none] : [])] };
}

function firstWithDishes(sources: readonly (readonly [DishForm, () => readonly Item[]])[]): DishText[] {
  for (const [form, read] of sources) {
    const recipes = findItems(read(), "recipe").slice(0, MOST_DISHES);
    const dishes = recipes
      .map((item) => readRecipeItem(item, form))
      .filter(({ makings, method }) => makings.length + method.length > 0);
    if (dishes.length > 0) return withoutTwins(dishes);
  }
  return [];
}

/** A page may state the same dish twice. */
function withoutTwins(dishes: readonly DishText[]): DishText[] {
  const keyOf = ({ title, makings }: DishText) => JSON.stringify([title?.text, makings.map(({ text }) => text)]);
  const keys = dishes.map(keyOf);
  return dishes.filter((_, at) => keys.indexOf(keys[at] as string) === at);
}

/** The dish of the visible text: of the main part where the page names one. */
function readVisible(root: PageElement): DishText[] {
  const elements = [...elementsOf(root)];
  const main = ["main", "article", "body"].flatMap((name) => elements.find((element) => element.name === name) ?? []);
  for (const part of [...main, root]) {
    const dish = readPastedText(tidyText(textOf(part).slice(0, MOST_TEXT)));
    if (dish !== undefined) return [dish];
  }
  return [];
}
