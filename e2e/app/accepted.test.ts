import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp } from "./openApp.ts";

const { week, limitPrices, kitchen, save, saved } = furtherEn;

describe.skipIf(!hasBrowser)("a menu that was taken, after the kitchen has moved on", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("still has its reasons, those of then, and its plates can be moved: what has happened since stays", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await moveOn(page);
    await goTo(page, "menu");
    const stations = page.locator("button.ribbons-station");
    // A plate of a later day, whose reasons were those of the kitchen before anything was bought or cooked.
    const plate = stations.nth(Math.min((await stations.count()) - 1, 7));
    await plate.click();
    await page.getByRole("button", { name: week.why, exact: true }).click();
    await page.getByText(week.asThen).waitFor();
    await page.getByText(week.withoutAnywhere).first().waitFor();
    await expect.poll(() => page.getByText(week.strange).count()).toBe(0);
    await page.getByRole("button", { name: week.move, exact: true }).click();
    const target = page.locator(".move-targets input").last();
    await target.click();
    const told = page.getByRole("status").filter({ hasText: week.moveThen });
    await told.waitFor();
    expect(await judgePage(page)).toEqual([]);
    // What each limit costs that the menu comes up to, by the kitchen as it was too.
    await page.getByText(limitPrices.title, { exact: true }).click();
    await page.getByRole("button", { name: limitPrices.find }).click();
    const prices = page.locator("details", { has: page.getByRole("heading", { name: limitPrices.title }) });
    await prices.getByRole("listitem").first().waitFor();
    const count = await prices.getByRole("listitem").count();
    await prices.getByText(limitPrices.count(count)).waitFor();
    for (const line of await prices.getByRole("listitem").allTextContents())
      expect(line).toMatch(/^(Saves at least €\d+\.\d\d|No saving was found): /);
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
});

test.skipIf(!hasBrowser)("as many days are planned as were asked for", async () => {
  const browser = await openBrowser();
  const { page, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
  await goTo(page, "menu");
  const stations = page.locator("button.ribbons-station");
  const before = await stations.count();
  await page
    .getByRole("combobox")
    .first()
    .selectOption({ label: week.days(2) });
  await page.getByRole("button", { name: en.menu.planAnew }).click();
  await expect.poll(() => stations.count(), { timeout: 60_000 }).toBeLessThan(before);
  await expect.poll(() => stations.count()).toBeGreaterThan(0);
  expect(errors).toEqual([]);
  await browser.close();
});

/** Buys the first thing on the list, cooks the first dish, and changes a limit of the kitchen. */
async function moveOn(page: Page): Promise<void> {
  await goTo(page, "buying");
  await page.locator(".buying-line").first().getByRole("checkbox").click();
  await goTo(page, "today");
  await page.getByRole("button", { name: en.today.cooked }).first().click();
  await goTo(page, "kitchen");
  await page.getByText(kitchen.limits, { exact: true }).click();
  await page.getByLabel(kitchen.trips).fill("3");
  await page.getByRole("button", { name: save }).click();
  await page.getByText(saved).waitFor();
}
