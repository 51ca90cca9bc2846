import { loadDemoKitchens } from "@halfloaf/data";
import {
  parseKitchen,
  sittingKitchen,
  solveCooking,
  type TimelineBar,
  toWorkProblem,
  toWorkSheet,
} from "halfloaf/kitchen";
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
    expect(pages.join("\n")).not.toMatch(/\d\.\d+ g<|Min\.\./);
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

test("an order of work in German names steps by what is done, since their ids are English", () => {
  const tables = readTables();
  const read = parseKitchen(loadDemoKitchens().find(({ name }) => name === "six-flat")?.content);
  if (!read.ok) throw new Error("the demo cannot be read");
  const dishes = tables.dishes.slice(0, 2).map((dish) => ({ dish, portions: 2 }));
  const stated = toWorkProblem({ ...sittingKitchen(read.value, tables), cooks: 1, dishes });
  const outcome = stated.ok ? solveCooking(stated.cooking, { shouldStop: () => false }) : undefined;
  if (outcome?.kind !== "timed") throw new Error("there is no order of work");
  const sheet = toWorkSheet(outcome.timed);
  const words = SHEET_CATALOGUE_DE.timeline(sheet);
  const bars: TimelineBar[] = sheet.rows.flatMap((row) => row.bars);
  const ids = new Set(dishes.flatMap(({ dish }) => dish.method.map(({ id }) => id)));
  expect(bars.filter(({ label }) => ids.has(label)).length).toBeGreaterThan(5);
  expect(bars.map(words.barName).filter((name) => ids.has(name) || /wash/.test(name))).toEqual([]);
  expect([...ids].filter((id) => new RegExp(`\\b${id}\\b`).test(words.description))).toEqual([]);
});
