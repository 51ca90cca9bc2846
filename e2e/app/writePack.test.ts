import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp } from "./openApp.ts";

const { prices, priced } = furtherEn;

describe.skipIf(!hasBrowser)("a pack written down by hand", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("says what it lacks, is among the prices as seen today, and can be taken away again", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "prices");
    await page.getByRole("link", { name: prices.writePack }).click();
    const lacks = [prices.packLabel, priced.food, prices.packHolds, prices.priceOfOne];
    await page.getByText(prices.packLacks(lacks)).waitFor();
    await page.getByLabel(prices.packLabel).fill("Farm eggs");
    await page.getByLabel(priced.food).selectOption({ label: "egg" });
    await page.getByLabel(prices.packUnit).selectOption("pieces");
    await page.getByLabel(prices.packHolds).fill("6");
    await page.getByLabel(prices.priceOfOne).fill("1.80");
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("button", { name: prices.writeThisPack }).click();
    await page.getByText(prices.packWritten("Farm eggs")).waitFor();
    await page.getByRole("link", { name: prices.all }).click();
    await page.getByLabel(prices.find).fill("farm eggs");
    const line = page.locator(".pack-line").filter({ hasText: "Farm eggs" });
    await expect.poll(() => line.textContent()).toMatch(/€1\.80.*seen/);
    await page.getByRole("link", { name: "egg", exact: true }).click();
    await page.getByRole("button", { name: `${prices.removePack} Farm eggs` }).click();
    await line.waitFor({ state: "detached" });
    expect(errors).toEqual([]);
    await context.close();
  });
});
