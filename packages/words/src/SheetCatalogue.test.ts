import { describe, expect, test } from "vitest";
import { SHEET_CATALOGUE_DE } from "./de/sheet/sheetCatalogueDe.ts";
import { sheetCatalogueEn } from "./en/sheet/sheetCatalogueEn.ts";
import type { SheetCatalogue } from "./SheetCatalogue.ts";

/** The texts of the sheets with a number in them, as the catalogue tells them. */
function tellWith(count: number, { sheet, ribbons }: SheetCatalogue): string[] {
  const { day, card, lesson } = sheet;
  return [
    day.waiting(count),
    day.otherPacks(count),
    card.forPortions("K", count, "D"),
    card.keeps(count, count, "A"),
    lesson.intro(count, "M"),
    ribbons("K", "2026-03-02", { packs: count, finished: count, wasted: 0 }).description,
  ];
}

describe("texts of sheets with a number", () => {
  test.each([
    ["English", sheetCatalogueEn("british"), /\b1 (portions|packs|days|are|wait)\b|of 1 packs/],
    ["German", SHEET_CATALOGUE_DE, /\b1 (Portionen|Packungen|Tage|werden)\b|warten/],
  ] as const)("have the form of one in %s, and of many from two on", (_, catalogue, many) => {
    const [one, several] = [1, 2].map((count) => tellWith(count, catalogue));
    for (const [at, text] of (one as string[]).entries()) {
      expect(text).not.toMatch(many);
      expect(text.replaceAll("1", "2")).not.toBe(several?.[at]);
    }
    expect(tellWith(1.5, catalogue)[0]).toMatch(/1[.,]5 (portions wait|Portionen warten)/);
  });

  test("of the calendar hold for every number, since a server fills it in as a text", () => {
    for (const { sheet } of [sheetCatalogueEn("american"), SHEET_CATALOGUE_DE]) {
      expect(sheet.calendar.cookDish("Soup", "1", "M").replaceAll("1", "2")).toBe(
        sheet.calendar.cookDish("Soup", "2", "M"),
      );
    }
  });
});
