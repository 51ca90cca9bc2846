import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { readTables, toNumber } from "../sheet/readTables.ts";
import { goTo, type OpenApp, openApp, reloadPage, SIZES } from "./openApp.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const { sheets } = furtherEn;

describe.skipIf(!hasBrowser)("print or save", () => {
  let browser: Browser;
  let app: OpenApp;
  beforeAll(async () => {
    browser = await openBrowser();
    const storageState = inject("planned");
    app = await openApp(browser, inject("appUrl"), { storageState, viewport: SIZES.laptop });
  });
  afterAll(() => browser?.close());

  test("the week sheet adds up as it is printed, and to what the screen says of the plates", async () => {
    const { page } = app;
    await openFold(page, "menu");
    await page.getByRole("button", { name: sheets.weekSheet }).click();
    const html = await readPreview(page);
    let checked = 0;
    for (const { rows, sums } of readTables(html)) {
      for (const [column, text] of (sums[0] ?? []).entries()) {
        const sum = toNumber(text);
        const cells = rows.map((row) => toNumber(row[column] ?? ""));
        if (sum === undefined || cells.every((cell) => cell === undefined)) continue;
        expect(cells.reduce<number>((all, cell) => all + (cell ?? 0), 0)).toBe(sum);
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(20);
    const [overview] = readTables(html);
    const plates = overview?.sums[0]?.at(-1) ?? "none";
    await expect.poll(() => page.getByRole("main").textContent()).toContain(plates);
  });

  test("the day sheet keeps WCAG 2.2 AA, has its own style under the server's policy, and is sent to print", async () => {
    const { page } = app;
    await page.getByRole("button", { name: sheets.daySheet }).click();
    await readPreview(page);
    const frame = page.frames().find((each) => each.parentFrame() !== null);
    if (frame === undefined) throw new Error("the sheet has no frame");
    expect(await frame.evaluate(() => getComputedStyle(document.body).margin)).toBe("0px");
    await page.evaluate(AXE);
    const { violations } = await page.evaluate(
      (values) =>
        (window as unknown as { axe: { run(where: string, options: object): Promise<AxeResults> } }).axe.run("main", {
          runOnly: { type: "tag", values },
          resultTypes: ["violations"],
        }),
      ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"],
    );
    expect(violations.map(({ id, nodes }) => `${id} ${nodes.map(({ target }) => target)}`)).toEqual([]);
    await frame.evaluate(() => {
      window.addEventListener("beforeprint", () => {
        document.body.dataset.wasPrinted = "yes";
      });
    });
    await page.getByRole("button", { name: sheets.print, exact: true }).click();
    await expect.poll(() => frame.evaluate(() => document.body.dataset.wasPrinted)).toBe("yes");
  });

  test("a claim that is not true is told by its lines, and nothing is printed", async () => {
    const { page } = app;
    await page.getByLabel(sheets.claimOf.plate).fill("0.01");
    await page.getByRole("button", { name: sheets.weekSheet }).click();
    await page.getByRole("alert").getByText(sheets.refused).waitFor();
    await expect.poll(() => page.getByRole("alert").getByRole("listitem").count()).toBeGreaterThan(0);
    await expect.poll(() => page.locator("iframe").count()).toBe(0);
  });

  test("the ribbons are saved as a PNG that the browser draws, the days as a calendar", async () => {
    const { page } = app;
    const png = await save(page, `${sheets.ribbons} PNG`);
    expect(png.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
    expect(png.length).toBeGreaterThan(20_000);
    const calendar = (await save(page, sheets.calendar)).toString();
    expect(calendar).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(calendar.match(/BEGIN:VEVENT/g)?.length).toBeGreaterThan(0);
    // The times at which people sit down are said once, and kept on the device.
    await page.getByLabel(en.sittings.evening, { exact: true }).fill("20:15");
    const later = (await save(page, sheets.calendar)).toString();
    expect(later).not.toBe(calendar);
    await reloadPage(page);
    await openFold(page, "menu");
    await expect.poll(() => page.getByLabel(en.sittings.evening, { exact: true }).inputValue()).toBe("20:15");
    expect(eventsOf(await save(page, sheets.calendar))).toEqual(eventsOf(later));
  });

  test("the stores are saved as a table that has the lots of the screen", async () => {
    const { page } = app;
    await openFold(page, "stores");
    const lots = await page.locator("details.lot").count();
    const lines = (await save(page, sheets.tables.stores)).toString().trimEnd().split("\r\n");
    expect(lines.length - 1).toBe(lots);
    const widths = new Set(lines.map((line) => line.match(/("(?:[^"]|"")*"|[^,]*)(,|$)/g)?.length));
    expect(widths.size).toBe(1);
  });

  test("a dish is shown as a costing card with its order of work", async () => {
    const { page } = app;
    await goTo(page, "dishes");
    await page.locator("a.dish-line").first().click();
    await page.getByText(sheets.title).click();
    await page.getByRole("button", { name: sheets.card }).click();
    const html = await readPreview(page);
    expect(html).toContain("<svg");
    expect(html).toContain("1169/2011");
  });

  test("nothing went wrong unnoticed", () => {
    expect(app.errors).toEqual([]);
  });
});

async function openFold(page: Page, screen: "menu" | "stores"): Promise<void> {
  await goTo(page, screen);
  await page.getByText(sheets.title).click();
}

/** What a calendar holds but for the moment it was written. */
function eventsOf(calendar: Buffer | string): string[] {
  return calendar
    .toString()
    .split("\r\n")
    .filter((line) => !line.startsWith("DTSTAMP"));
}

/** The text of the page that is shown to be printed. */
async function readPreview(page: Page): Promise<string> {
  const frame = page.locator("iframe.page-preview");
  await frame.waitFor();
  return (await frame.getAttribute("srcdoc")) ?? "";
}

/** What is saved by a button. */
async function save(page: Page, name: string): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name, exact: true }).click(),
  ]);
  return readFileSync(await download.path());
}
