import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage, listSmall } from "./judgePage.ts";
import { goTo, openApp } from "./openApp.ts";

const { kitchen, save, saved, edit, remove } = furtherEn;

describe.skipIf(!hasBrowser)("what a plan keeps to and weighs", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("rules of variety are said, refused with the reason, changed and taken away; the worth of things is set", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "kitchen");
    await unfold(page, kitchen.variety);
    await page.getByText(kitchen.noRule).waitFor();
    await page.getByRole("button", { name: kitchen.addRule }).click();
    await page.getByLabel(kitchen.alike).selectOption({ label: kitchen.same.main });
    await page.getByLabel(kitchen.daysApart).fill("");
    await press(page, save);
    await page.getByText(kitchen.ruleIssues.nothing).waitFor();
    await page.getByLabel(kitchen.mostPerWeek).fill("2");
    await page.getByLabel(kitchen.daysApart).fill("1");
    await press(page, save);
    await page.getByText(kitchen.ruleIssues.apart).waitFor();
    await page.getByLabel(kitchen.daysApart).fill("3");
    await page.getByLabel(en.sittings.evening, { exact: true }).check();
    expect(await judgePage(page)).toEqual([]);
    expect(await page.evaluate(listSmall, 48)).toEqual([]);
    await press(page, save);
    const told = [kitchen.ruleMost(2), kitchen.ruleApart(3), en.sittings.evening].join("; ");
    await page.getByText(told, { exact: true }).waitFor();
    await page.getByRole("button", { name: `${edit} ${kitchen.same.main}` }).click();
    await press(page, remove);
    await page.getByText(kitchen.noRule).waitFor();
    await page.getByRole("button", { name: en.today.undo }).last().click();
    await page.getByText(told, { exact: true }).waitFor();

    await unfold(page, kitchen.worthTitle);
    await page.getByLabel(kitchen.vesselMinutes).fill("3.5");
    await page.getByLabel(kitchen.dislikePoint).fill("0.20");
    await press(page, save);
    await page.getByText(saved, { exact: true }).waitFor();
    await goTo(page, "today");
    await goTo(page, "kitchen");
    await unfold(page, kitchen.worthTitle);
    expect(await page.getByLabel(kitchen.vesselMinutes).inputValue()).toBe("3.5");
    expect(await page.getByLabel(kitchen.dislikePoint).inputValue()).toBe("0.20");
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
});

async function unfold(page: Page, title: string): Promise<void> {
  await page.locator("summary", { has: page.getByRole("heading", { name: title, exact: true }) }).click();
}

/** Presses the one button of that name in the form that is open last. */
async function press(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name, exact: true }).last().click();
}
