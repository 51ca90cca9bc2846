import { loadDemoKitchens } from "@halfloaf/data";
import { parseKitchen } from "halfloaf/kitchen";
import { EU_ALLERGEN_NAMES } from "halfloaf/safety";
import { cardHtml, dishLesson, lessonHtml, toCardSheet } from "halfloaf/sheet";
import { readTables } from "halfloaf/sheet/testing";
import { expect, test } from "vitest";
import { EU_ALLERGEN_NAMES_DE } from "../allergenWordsDe.ts";
import { SHEET_CATALOGUE_DE } from "./sheetCatalogueDe.ts";

const MOST_DISHES = 12;

test("pages in German tell cautions and allergens in German, whose texts the library has in English", () => {
  const tables = readTables();
  const read = parseKitchen(loadDemoKitchens().find(({ name }) => name === "six-flat")?.content);
  if (!read.ok) throw new Error("the demo cannot be read");
  const names = { dish: String, food: String, eater: String, shop: String };
  const { sheet: words } = SHEET_CATALOGUE_DE;
  const seen = new Set<string>();
  for (const dish of tables.dishes.slice(0, MOST_DISHES)) {
    const source = { kitchen: read.value, tables, names, dish };
    const card = toCardSheet(source);
    const pages = [cardHtml(card, words), lessonHtml(dishLesson(source, words.language), words)];
    for (const { code, text, authority } of card.cautions) {
      seen.add(code);
      for (const html of pages) {
        expect(html).toContain(words.cautions.tellAuthority(authority));
        if (code !== "dish") expect(html).not.toContain(text);
      }
    }
    for (const allergen of [...card.allergens.eu.sure, ...card.allergens.eu.possible]) {
      seen.add(allergen);
      expect(pages[0]).toContain(EU_ALLERGEN_NAMES_DE[allergen]);
      expect(pages[0]).not.toMatch(new RegExp(`>${EU_ALLERGEN_NAMES[allergen].name}<`));
    }
  }
  expect(seen.size).toBeGreaterThan(MOST_DISHES);
});
