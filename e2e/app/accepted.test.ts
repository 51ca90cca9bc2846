import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp } from "./openApp.ts";

const { week, kitchen, save, saved } = furtherEn;

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
    const count = await stations.count();
    const plate = stations.nth(Math.min(count - 1, 7));
    await plate.click();
    await page.getByRole("button", { name: week.why, exact: true }).click();
    await page.getByText(week.asThen).waitFor();
    await page.getByText(week.withoutAnywhere).first().waitFor();
    expect(await page.getByText(week.strange).count()).toBe(0);
    await page.getByRole("button", { name: week.move, exact: true }).click();
    const target = page.locator(".move-targets input").last();
    await target.click();
    const told = page.getByRole("status").filter({ hasText: week.moveThen });
    await told.waitFor();
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
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
