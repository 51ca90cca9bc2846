import { furtherEn } from "@halfloaf/web/words/further";
import type { Page } from "playwright-core";
import type { TestProject } from "vitest/node";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, type KeptState, keepState, makeDemo, openApp, planDays } from "./openApp.ts";
import { serveApp } from "./serveApp.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the app is served. */
    appUrl: string;
    /** What the browser keeps of a demo kitchen whose days are planned, with a list of several packs to buy today. */
    planned: KeptState;
  }
}

/** Tests buy two packs of that list, miss a third, and come back to it with some of it open. */
const FEWEST_LINES = 4;

/** Builds the app, serves it and plans the days of a demo kitchen, once for all tests of the app. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const served = await serveApp();
  project.provide("appUrl", served.url);
  if (hasBrowser) {
    const browser = await openBrowser();
    const app = await openApp(browser, served.url);
    await planDemo(app.page);
    project.provide("planned", await keepState(app.context));
    await browser.close();
  }
  return () => served.close();
}

/** Plans the demo kitchen so that the list shown at first has several lines on whatever weekday the tests run. */
async function planDemo(page: Page): Promise<void> {
  await makeDemo(page, "one-ring");
  // It is shut on Sundays, and what is bought at the corner then may be a single pack.
  await openOnSundays(page, "Turnstone Discount");
  await planDays(page);
  await goTo(page, "buying");
  const lines = page.locator(".buying-line");
  await lines.first().waitFor();
  if ((await lines.count()) < FEWEST_LINES) throw new Error(`the first list has ${await lines.count()} lines alone`);
}

/** Lets a shop be open on Sundays as well. */
async function openOnSundays(page: Page, shop: string): Promise<void> {
  const { edit, kitchen, save, weekdaysShort } = furtherEn;
  await goTo(page, "kitchen");
  await page.getByRole("heading", { name: kitchen.shops, exact: true }).click();
  await page.getByRole("button", { name: `${edit} ${shop}` }).click();
  await page.getByRole("button", { name: weekdaysShort[6], exact: true, pressed: false }).click();
  await page.getByRole("button", { name: save, exact: true }).click();
  await page.getByRole("button", { name: `${edit} ${shop}` }).waitFor();
}
