import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp, takePlan } from "./openApp.ts";

const { week } = furtherEn;

describe.skipIf(!hasBrowser)("days that begin later", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("are planned, another plan of them is shown, and what is taken is seen beside the menu of today", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "menu");
    const first = page.getByLabel(week.first);
    await first.selectOption({ index: 2 });
    const label = await first.locator("option").nth(2).textContent();
    await page.getByLabel(week.daysFrom(label ?? "")).selectOption("1");
    await page.getByRole("button", { name: en.menu.planAnew }).click();
    const planned = page.getByText(/^(Best so far:|Here is the plan\.)/);
    const another = page.getByRole("button", { name: week.another });
    await planned.waitFor();
    await page.getByRole("button", { name: en.menu.stop }).or(another).first().click();
    await another.waitFor();
    await another.click();
    await another.waitFor({ state: "detached" });
    await planned.waitFor();
    await takePlan(page);
    const toCome = page.getByRole("button", { name: week.toCome(label ?? "") });
    await toCome.and(page.locator("[aria-pressed=true]")).waitFor();
    await expect.poll(() => page.locator(".ribbons-station").count()).toBeLessThan(8);
    expect(await judgePage(page)).toEqual([]);
    await toCome.click();
    await expect.poll(() => page.locator(".ribbons-station").count()).toBeGreaterThan(8);
    expect(errors).toEqual([]);
    await context.close();
  });
});
