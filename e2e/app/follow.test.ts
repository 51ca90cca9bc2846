import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp } from "./openApp.ts";

const { accounts, follow, mended, otherwise, shelf } = furtherEn;

describe.skipIf(!hasBrowser)("what comes out otherwise than planned", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("a pack told not to be there counts by itself when the plan is to follow, until the week does without it", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "buying");
    const line = page.locator(".buying-line").last();
    const label = ((await line.locator(".tick-words > span").first().textContent()) ?? "").replace(/^\d+ × /, "");
    await line.getByRole("button", { name: shelf.kinds.gone }).click();
    await line.getByText(shelf.notThere).waitFor();
    await line.getByRole("button", { name: shelf.leave }).click();
    await goTo(page, "today");
    const news = page.locator("section[aria-labelledby=follow]");
    await news.getByText(follow.count(1)).waitFor();
    await news.getByText(follow.news.gone(label), { exact: true }).waitFor();
    await news.getByRole("button", { name: mended.ask }).click();
    await news.getByRole("button", { name: mended.accept }).waitFor();
    await expect.poll(() => news.textContent()).toContain(label);
    expect(await judgePage(page)).toEqual([]);
    await news.getByRole("button", { name: mended.accept }).click();
    await news.waitFor({ state: "detached" });
    await goTo(page, "buying");
    await page.locator(".buying-line").first().waitFor();
    await expect.poll(() => page.locator(".buying-line", { hasText: label }).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("what eating elsewhere cost is in the accounts, apart from the till and beside the sitting", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "today");
    const job = page.locator("section[aria-labelledby=jobs] > ul > li").filter({ hasText: otherwise.title }).last();
    await job.getByText(otherwise.title).click();
    await job.getByLabel(otherwise.cost).fill("4.50");
    await job.getByRole("button", { name: otherwise.ateOut }).click();
    await page.getByRole("heading", { name: follow.title }).waitFor();
    await goTo(page, "accounts");
    const sums = page.locator("section", { hasText: accounts.sums });
    await sums.getByRole("row", { name: accounts.ateOut }).getByText("€4.50").waitFor();
    const sitting = page.locator(".plate-line", { hasText: accounts.elsewhere("€4.50") });
    await expect.poll(() => sitting.textContent()).toContain(accounts.nobody);
    await expect.poll(() => sums.getByRole("row", { name: accounts.spent }).textContent()).toContain("€0.00");
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("link", { name: en.screens.today }).first().click();
    await page.getByRole("button", { name: en.today.undo }).click();
    await page.getByRole("heading", { name: follow.title }).waitFor({ state: "detached" });
    expect(errors).toEqual([]);
    await context.close();
  });
});
