import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, makeDemo, type OpenApp, openApp, planDays, reloadPage, SIZES } from "./openApp.ts";

const { shelf, stove } = furtherEn;

describe.skipIf(!hasBrowser)("a day lived on a laptop", () => {
  let browser: Browser;
  let app: OpenApp;
  beforeAll(async () => {
    browser = await openBrowser();
    app = await openApp(browser, inject("appUrl"), { viewport: SIZES.laptop });
  });
  afterAll(() => browser?.close());

  test("a demo kitchen, planned and stopped early, gives Today its jobs", async () => {
    const { page } = app;
    await makeDemo(page, "one-ring");
    await planDays(page);
    await goTo(page, "today");
    await page.getByRole("heading", { name: en.today.next }).waitFor();
    await expect.poll(() => page.locator("section[aria-labelledby=jobs] li").count()).toBeGreaterThan(0);
  });

  test("a pack bought at another price is in the stores, and undo takes it back", async () => {
    const { page } = app;
    await goTo(page, "stores");
    const lots = page.locator("details.lot");
    const before = await lots.count();
    await goTo(page, "buying");
    const line = page.locator(".buying-line").first();
    await line.getByRole("button", { name: shelf.kinds.price }).click();
    await line.getByLabel(shelf.price).fill("7.77");
    // How many the week needs is the list's affair.
    const buy = new RegExp(`^(${[1, 2, 3].map((count) => shelf.buy(count)).join("|")})$`);
    await line.getByRole("button", { name: buy }).click();
    await expect.poll(() => line.getByRole("checkbox").isChecked()).toBe(true);
    await page
      .getByRole("status")
      .filter({ hasText: /7\.77|15\.54|23\.31/ })
      .waitFor();
    await goTo(page, "stores");
    await expect.poll(() => lots.count()).toBeGreaterThan(before);
    await page.getByRole("button", { name: en.today.undo }).click();
    await expect.poll(() => lots.count()).toBe(before);
    await page.getByRole("button", { name: en.today.redo }).waitFor();
  });

  test("a tick buys at the price of the list, a second one takes it back", async () => {
    const { page } = app;
    await goTo(page, "buying");
    const box = page.locator(".buying-line").first().getByRole("checkbox");
    await box.click();
    await expect.poll(() => box.isChecked()).toBe(true);
    await box.click();
    await expect.poll(() => box.isChecked()).toBe(false);
  });

  test("what is cooked leaves the list of jobs and comes back by undo", async () => {
    const { page } = app;
    await goTo(page, "today");
    const cooked = page.getByRole("button", { name: en.today.cooked });
    const count = await cooked.count();
    expect(count).toBeGreaterThan(0);
    await cooked.first().click();
    await expect.poll(() => cooked.count()).toBe(count - 1);
    await page.getByRole("button", { name: en.today.undo }).click();
    await expect.poll(() => cooked.count()).toBe(count);
  });

  test("an order of work is begun, lasts over a reload, and is done step by step", async () => {
    const { page } = app;
    await page.getByRole("main").getByRole("link", { name: en.screens.work }).last().click();
    await page.getByLabel(en.work.readyBy).fill("19:00");
    await page.getByText(/^Begin at 1[5-8]:\d\d\.$/).waitFor();
    await page.getByRole("button", { name: en.work.begin }).click();
    const next = page.locator(".next-step");
    await next.waitFor();
    const text = await next.locator(".next-text").textContent();
    await reloadPage(page);
    await expect.poll(() => next.locator(".next-text").textContent()).toBe(text);
    await goTo(page, "today");
    await page.getByRole("main").getByRole("link", { name: en.screens.work }).first().click();
    await page.getByText(en.work.kept).waitFor();
    await expect.poll(() => next.locator(".next-text").textContent()).toBe(text);
    const finish = page.getByRole("button", { name: stove.toStores });
    for (let step = 0; step < 40 && !(await finish.isVisible()); step++) {
      const open = await page.getByRole("button", { name: en.work.done, exact: true }).count();
      if (open === 0) break;
      const told = await countTold(app);
      await page.getByRole("button", { name: en.work.done, exact: true }).first().click();
      await expect.poll(() => countTold(app)).toBeGreaterThan(told);
    }
    await finish.click();
    await page.getByRole("button", { name: furtherEn.finish.book }).click();
    await page.getByRole("heading", { name: en.today.next }).waitFor();
    await goTo(page, "work");
    // What is next to cook today is chosen already.
    await expect.poll(() => page.getByRole("checkbox", { checked: true }).count()).toBeGreaterThan(0);
    await expect.poll(() => page.getByRole("button", { name: en.work.order }).isEnabled()).toBe(true);
  });

  test("nothing went wrong unnoticed", () => {
    expect(app.errors).toEqual([]);
  });
});

/** How many steps of the cooking have been told done. */
function countTold({ page }: OpenApp): Promise<number> {
  return page.evaluate(() => {
    const running = JSON.parse(localStorage.getItem("halfloaf-cooking") ?? "null");
    return (running?.told ?? []).filter((each: { doneMinutes?: number }) => each.doneMinutes !== undefined).length;
  });
}
