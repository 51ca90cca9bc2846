import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, makeDemo, ON_DEVICE, openApp, openAt, planDays, SCREENS, seeScreen, waitUntilKept } from "./openApp.ts";

describe.skipIf(!hasBrowser)("without a network", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("the first visit is enough to plan, shop, cook and account, to load anew, for another tab and for every screen", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), ON_DEVICE);
    await waitUntilKept(page);
    await context.setOffline(true);
    await page.reload();
    await makeDemo(page, "one-ring");
    await planDays(page);
    await goTo(page, "buying");
    const line = page.locator(".buying-line").first();
    const price = (await line.locator("label > .figure").textContent()) ?? "";
    await line.getByRole("checkbox").click();
    await goTo(page, "today");
    const cooked = page.getByRole("button", { name: en.today.cooked });
    const jobs = await cooked.count();
    await cooked.first().click();
    await expect.poll(() => cooked.count()).toBe(jobs - 1);
    const other = await context.newPage();
    for (const each of [page, other]) {
      await openAt(each, "/accounts");
      const spent = each.locator("section tr", { hasText: furtherEn.accounts.spent });
      await expect.poll(() => spent.getByRole("cell").textContent()).toBe(price);
      const eaten = each.locator("section tr", { hasText: furtherEn.accounts.eaten }).last();
      await expect.poll(() => eaten.getByRole("cell").textContent()).toMatch(/^-€(?!0\.00)/);
    }
    for (const screen of Object.keys(SCREENS)) await goTo(other, screen as keyof typeof SCREENS);
    await page.goto("/stores?from=elsewhere");
    await seeScreen(page);
    await expect.poll(() => page.getByRole("heading", { level: 1 }).textContent()).toBe(en.screens.stores);
    expect(errors).toEqual([]);
    await context.close();
  });
});
