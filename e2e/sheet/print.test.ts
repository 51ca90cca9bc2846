import { SHEET_CATALOGUE_DE } from "@halfloaf/words/de/sheets";
import { sheetCatalogueEn } from "@halfloaf/words/en/sheets";
import axe from "axe-core";
import {
  cardHtml,
  type DaySheet,
  type DayTrip,
  dayHtml,
  dayLesson,
  lessonHtml,
  type Paper,
  toCardSheet,
  toWeekSheet,
  type WeekSource,
  weekHtml,
} from "halfloaf/sheet";
import { findWeek } from "halfloaf/sheet/testing";
import type { Browser, BrowserContext } from "playwright-core";
import { extractText, getDocumentProxy } from "unpdf";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { hostileWeek } from "./hostileWeek.ts";
import { readTables, toNumber } from "./readTables.ts";

const words = sheetCatalogueEn("british").sheet;
const demo = findWeek("port-ansel");
const six = findWeek("six-flat", { days: 3 });
const hostile = hostileWeek(findWeek("port-ansel", { days: 3 }));

function week(source: WeekSource, paper: Paper, language = words): string {
  const printed = weekHtml(toWeekSheet(source), language, { paper, claims: [{ kind: "plate", below: 9_999_999 }] });
  if (printed.kind !== "printed") throw new Error("a true claim was refused");
  return printed.html;
}

function card(source: WeekSource, id: string): string {
  const dish = source.tables.dishes.find((one) => one.id === id);
  if (dish === undefined) throw new Error(`${id} is no dish`);
  return cardHtml(toCardSheet({ ...source, dish }), words);
}

const dish = demo.week.batches[0]?.dish ?? "";
const pages: readonly { readonly name: string; readonly page: string }[] = [
  { name: "the week", page: week(demo, "a4") },
  { name: "the week with names and prices that are hard to print", page: week(hostile, "letter") },
  { name: "the week of six", page: week(six, "a4") },
  { name: "the card", page: card(demo, dish) },
  { name: "the lesson", page: lessonHtml(dayLesson(demo, demo.week.from), words) },
];

const LONG_BILL = 40;

/** The day with the bill of one trip drawn out to so many lines; the till is still their sum. */
function withLongBill(day: DaySheet): DaySheet {
  const all = toWeekSheet(six).days.flatMap(({ trips }) => trips);
  const lines = all.flatMap((trip) => trip.lines);
  const long = Array.from({ length: LONG_BILL }, (_, at) => lines[at % lines.length] as (typeof lines)[number]);
  const trip = all[0] as DayTrip;
  return { ...day, trips: [{ ...trip, lines: long, tillMinor: add(long.map(({ priceMinor }) => priceMinor)) }] };
}

const add = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

describe.each(pages)("$name, read back from its HTML", ({ page }) => {
  test("each sum of a table is the sum of the figures above it, as they are printed", () => {
    let checked = 0;
    for (const { rows, sums } of readTables(page)) {
      for (const [column, text] of (sums[0] ?? []).entries()) {
        const sum = toNumber(text);
        const cells = rows.map((row) => toNumber(row[column] ?? ""));
        if (sum === undefined || cells.every((cell) => cell === undefined)) continue;
        expect(add(cells.map((cell) => cell ?? 0)), `${text} below ${rows.map((row) => row[column])}`).toBe(sum);
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(0);
  });

  test("asks for nothing from anywhere and holds no script", () => {
    expect(page).not.toMatch(/<script|<link|<img|<iframe|@import|\bsrc=|\son\w+=|javascript:/i);
    expect(page).toContain("default-src 'none'");
  });
});

describe.runIf(hasBrowser)("printed by a browser", () => {
  let browser: Browser;
  let context: BrowserContext;
  beforeAll(async () => {
    browser = await openBrowser();
    context = await browser.newContext({ bypassCSP: true });
  });
  afterAll(() => browser?.close());

  async function open(content: string) {
    const page = await context.newPage();
    await page.setContent(content);
    return page;
  }

  async function print(content: string): Promise<string[]> {
    const page = await open(content);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    await page.close();
    return (await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: false })).text;
  }

  const weeks = [
    { name: "two at Port Ansel, A4", source: demo, paper: "a4" },
    { name: "two at Port Ansel, Letter", source: demo, paper: "letter" },
    { name: "six, A4", source: six, paper: "a4" },
  ] as const;
  test.each(weeks)("a page for the week and one for each day: $name", async ({ source, paper }) => {
    const sheet = toWeekSheet(source);
    const printed = await print(week(source, paper));
    expect(printed).toHaveLength(1 + sheet.days.length);
    sheet.days.forEach(({ date, platesMinor, flow, trips }, at) => {
      const text = printed[at + 1] as string;
      expect(text).toContain(words.figures.day(date));
      const after = (label: string) => {
        const found = new RegExp(`${label}\\s+(\\d+\\.\\d\\d)`).exec(text)?.[1];
        return Math.round(Number(found) * 100);
      };
      const read = [words.day.opening, words.day.toTills, words.day.onPlates, words.day.wasted, words.day.left].map(
        after,
      );
      const [opening = 0, till = 0, plates = 0, waste = 0, left = 0] = read;
      expect(opening + till).toBe(plates + waste + left);
      expect(read).toEqual([flow.openingMinor, flow.tillMinor, platesMinor, flow.wasteMinor, flow.leftMinor]);
      const tills = [...text.matchAll(/Till\s+(\d+\.\d\d)/g)].map((found) => Math.round(Number(found[1]) * 100));
      expect(add(tills)).toBe(till);
      expect(tills).toHaveLength(trips.length);
    });
  });

  const german = {
    name: "two at Port Ansel, in German",
    source: demo,
    paper: "a4",
    language: SHEET_CATALOGUE_DE.sheet,
  } as const;
  test.each([...weeks, german])(
    "letters are as large as the pages hold, none is left half empty, nothing is parted that belongs together: $name",
    async ({ source, paper, ...told }) => {
      const page = await open(week(source, paper, "language" in told ? told.language : words));
      await page.emulateMedia({ media: "print" });
      const [width, height] = paper === "a4" ? [210 - 24, 297 - 20] : [8.5 * 25.4 - 24, 11 * 25.4 - 20];
      const px = (mm: number) => (mm / 25.4) * 96;
      await page.setViewportSize({ width: Math.floor(px(width)), height: 1000 });
      const pages = await page.$$eval(".sheet", (sheets) =>
        sheets.map((sheet) => {
          const { height: filled } = sheet.getBoundingClientRect();
          // What goes on in the next column has a box in each; a sum stands below a line that it sums up.
          const parted = [...sheet.querySelectorAll(".flow :is(.wide, h2, h3)")].filter(
            (each) => each.getClientRects().length > 1,
          );
          const alone = [...sheet.querySelectorAll(".flow tfoot tr:first-child")].filter((sum) => {
            const above = sum.closest("table")?.querySelector("tbody tr:last-child") ?? sum;
            return above.getBoundingClientRect().left !== sum.getBoundingClientRect().left;
          });
          const broken = [...parted, ...alone].map(({ textContent }) => textContent);
          return { filled, points: Number.parseFloat(getComputedStyle(sheet).fontSize) * 0.75, broken };
        }),
      );
      await page.close();
      for (const { filled, points, broken } of pages) {
        expect(broken).toEqual([]);
        expect(filled).toBeLessThanOrEqual(px(height));
        expect(points).toBeGreaterThan(6.5);
        if (points < 10.4) expect(filled).toBeGreaterThan(0.75 * px(height));
      }
    },
  );

  test("a day of six with a bill of forty lines stays on its page, on Letter too", async () => {
    const fullest = toWeekSheet(six).days.map(withLongBill);
    for (const [at, day] of fullest.entries()) {
      const printed = dayHtml(day, words, { paper: "letter" });
      if (printed.kind !== "printed") throw new Error("a sheet without claims was refused");
      const pages = await print(printed.html);
      expect(pages, `day ${at + 1}`).toHaveLength(1);
      expect(pages[0]).toContain(
        `${words.day.till} ${words.figures.money(day.trips[0]?.tillMinor ?? 0, day.currency)}`,
      );
    }
  });

  test("long names, prices of seven figures and names from right to left run out of no column and off no page", async () => {
    const printed = await print(week(hostile, "letter"));
    const all = printed.join("\n");
    for (const { costMinor } of toWeekSheet(hostile).days.flatMap(({ eaters }) => eaters)) {
      expect(all).toContain(words.figures.money(costMinor, hostile.week.currency));
    }
    const page = await open(week(hostile, "letter"));
    await page.emulateMedia({ media: "print" });
    // Letter within its margins, at 96 px an inch.
    await page.setViewportSize({ width: Math.floor((8.5 - (2 * 12) / 25.4) * 96), height: 1000 });
    const wide = await page.evaluate(() => {
      const most = document.documentElement.clientWidth;
      const nodes = [...document.querySelectorAll("h1, h2, p, li, th, td")];
      return nodes
        .filter((node) => node.scrollWidth > node.clientWidth + 1 || node.getBoundingClientRect().right > most + 1)
        .map((node) => node.textContent);
    });
    await page.close();
    expect(wide).toEqual([]);
  });

  test("what is folded on a screen is unfolded on paper, and no table leaves the line that it unfolds from", async () => {
    for (const source of [demo, six]) {
      const lesson = dayLesson(source, source.week.from);
      const printed = await print(lessonHtml(lesson, words));
      const text = printed.join("\n");
      for (const { packs } of lesson.cookings)
        for (const { label } of packs) expect(text).toContain(label.slice(0, 12));
      expect(printed.filter((page) => page.trimStart().startsWith(words.lesson.pack))).toEqual([]);
    }
  });

  // Every kind of page once; the whole week has nothing on it that the shorter ones have not.
  test.each(pages.slice(1))("$name has nothing that axe finds fault with", async ({ page: content }) => {
    const page = await open(content);
    await page.evaluate(axe.source);
    const found = await page.evaluate(async () => {
      const { axe } = globalThis as unknown as {
        axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      };
      const { violations } = await axe.run();
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
    });
    await page.close();
    expect(found).toEqual([]);
  });
});
