import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp, reloadPage, takePlan } from "./openApp.ts";

const { wishes, week, save } = furtherEn;

describe.skipIf(!hasBrowser)("what is wished for", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("is said, kept, taken back, kept to by the next plan, and told where it is not met", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "menu");
    await page.locator("summary", { hasText: week.wishes }).click();
    await page.getByText(wishes.empty).waitFor();

    await page.getByRole("button", { name: wishes.add }).click();
    await page.getByRole("button", { name: save, exact: true }).click();
    await page.getByText(wishes.issues.what).waitFor();
    await choose(page, wishes.manner, wishes.manners.soup);
    await page.getByRole("button", { name: save, exact: true }).click();
    await page.getByText(`${wishes.atLeast(1)}; ${wishes.must}`, { exact: true }).waitFor();

    await page.getByRole("button", { name: en.today.undo }).click();
    await page.getByText(wishes.empty).waitFor();
    await page.getByRole("button", { name: en.today.redo }).click();

    await page.getByRole("button", { name: wishes.add }).click();
    await choose(page, wishes.manner, wishes.manners.salad);
    await page.getByLabel(wishes.least).fill("7");
    await choose(page, wishes.matters, wishes.priced);
    await page.getByLabel(wishes.price).fill("0.01");
    await page.getByRole("button", { name: save, exact: true }).click();
    await page.getByText(wishes.mayCost("€0.01")).waitFor();

    await page.getByRole("button", { name: en.menu.planAnew }).click();
    const missed = page.getByRole("region", { name: wishes.missed(1) });
    await missed.waitFor();
    await takePlan(page);
    await reloadPage(page);
    await missed.waitFor();
    await expect.poll(() => missed.textContent()).toContain(wishes.manners.salad);
    await expect.poll(() => missed.textContent()).not.toContain(wishes.manners.soup);
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
});

async function choose(page: Page, field: string, choice: string): Promise<void> {
  await page.getByRole("combobox", { name: field, exact: true }).selectOption({ label: choice });
}
