import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, ON_DEVICE, openApp, reloadPage, SIZES } from "./openApp.ts";

const FROZEN = new URL("../../packages/halfloaf/src/kitchen/record/frozen/kitchen-1.json", import.meta.url);
const { first } = furtherEn;

describe.skipIf(!hasBrowser)("a first use", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test.each(Object.entries(SIZES))("of four pages on a %s leads to a plan on the screen", async (_, viewport) => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { viewport, ...ON_DEVICE });
    await page.getByRole("button", { name: en.first.make }).click();
    for (const title of first.steps) {
      await page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor();
      await page.getByRole("button", { name: title === first.steps.at(-1) ? first.done : furtherEn.next }).click();
    }
    await page.getByText(en.menu.legend).waitFor();
    await expect.poll(() => page.locator(".ribbons-station").count()).toBeGreaterThan(10);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("with nothing in the cupboard says that the first trip comes too late, and leads to a plan by an earlier one", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { now: "2027-03-01T08:00:00" });
    await page.getByRole("button", { name: en.first.make }).click();
    for (const title of first.steps) {
      await page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor();
      const ticked = page.getByRole("group", { name: first.cupboard }).getByRole("checkbox", { checked: true });
      while ((await ticked.count()) > 0) await ticked.first().uncheck();
      await page.getByRole("button", { name: title === first.steps.at(-1) ? first.done : furtherEn.next }).click();
    }
    const { goEarlier } = furtherEn.impossible;
    await page.getByText(furtherEn.impossible.putDown).waitFor();
    await page.getByRole("button", { name: goEarlier(first.shops[0] ?? "", en.sittings.morning) }).click();
    await page.getByText(en.menu.legend).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("opens a kitchen as version 1 wrote it", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"));
    const { name, eaters } = JSON.parse(readFileSync(FROZEN, "utf8"));
    await page.getByLabel(en.first.restoreChoose).setInputFiles(fileURLToPath(FROZEN));
    await page.getByText(en.today.noMenu).waitFor();
    await reloadPage(page);
    await goTo(page, "kitchen");
    await page.getByText(name).first().waitFor();
    await page.getByText(eaters[0].name).first().waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
