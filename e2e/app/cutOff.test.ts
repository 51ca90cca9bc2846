import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { type OpenApp, openApp, openAt, SCREENS, seeScreen } from "./openApp.ts";
import { touchAll } from "./touchAll.ts";

/** What a first visit is like before the app is kept on the device: all that was not asked for yet needs the network. */
const UNKEPT = { serviceWorkers: "block" } as const;
/** What leaves the screen by right, or asks the browser for something. */
const SPARED = [furtherEn.kitchen.another, furtherEn.kitchen.openIt, furtherEn.kitchen.language];

describe.skipIf(!hasBrowser)("a network that goes before the app is kept", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  const open = async (path: string): Promise<OpenApp> => {
    const app = await openApp(browser, inject("appUrl"), { storageState: inject("planned"), ...UNKEPT });
    await openAt(app.page, path);
    await seeScreen(app.page);
    await app.page.waitForLoadState("networkidle");
    return app;
  };

  test("is told in the place that waits; what was typed beside it stays, and the rest comes by itself with the network", async () => {
    const { page, context } = await open("/buying");
    await page.locator(".at-shelf button").nth(1).click();
    const price = page.locator(".at-shelf input").first();
    await price.fill("1.23");
    await context.setOffline(true);
    const boxes = page.locator(".buying-line").getByRole("checkbox");
    await boxes.last().click();
    await expect.poll(() => boxes.last().isChecked()).toBe(true);
    const late = page.locator(".buying-line .late");
    await expect.poll(() => late.textContent()).toContain(en.shell.late);
    await expect.poll(() => price.inputValue()).toBe("1.23");
    await context.setOffline(false);
    await late.waitFor({ state: "detached" });
    await page.locator(".buying-line").last().getByText(furtherEn.packDate.tell).waitFor();
    await expect.poll(() => price.inputValue()).toBe("1.23");
    await context.close();
  });

  test("is told over the screen where a worker or a whole kitchen waits, which go on by themselves", async () => {
    const first = await openApp(browser, inject("appUrl"), UNKEPT);
    await first.page.waitForLoadState("networkidle");
    await first.context.setOffline(true);
    await first.page.getByRole("button", { name: en.first.demos["one-ring"] as string }).click();
    await first.page.getByText(en.shell.late).waitFor();
    await first.context.setOffline(false);
    await first.page.getByText(en.today.noMenu).waitFor();
    await first.page.locator(`nav a[href="${SCREENS.menu}"]`).click();
    await seeScreen(first.page);
    await first.context.setOffline(true);
    await first.page.getByRole("button", { name: en.menu.plan }).click();
    await first.page.getByText(en.shell.late).waitFor();
    await first.context.setOffline(false);
    await first.page.getByText(en.menu.legend).waitFor();
    await expect.poll(() => first.page.locator(".late").count()).toBe(0);
    await first.context.close();
  });

  test("a part that its server has no more is told apart, and comes on a tap once it is there again", async () => {
    const { page, context } = await open("/stores");
    await context.route("**/assets/**", (route) => route.fulfill({ status: 404 }));
    await page.getByRole("button", { name: furtherEn.foundHere.begin }).click();
    const late = page.locator("main .late");
    await late.getByText(en.shell.late).waitFor();
    await late.getByRole("button", { name: en.shell.tryAgain }).click();
    await late.getByText(en.shell.gone).waitFor();
    await expect.poll(() => late.getByRole("button", { name: en.shell.loadAgain }).count()).toBe(1);
    await context.unroute("**/assets/**");
    await late.getByRole("button", { name: en.shell.tryAgain }).click();
    await page.getByLabel(furtherEn.foundHere.find).waitFor();
    await expect.poll(() => late.count()).toBe(0);
    await context.close();
  });

  test.each(["today", "kitchen"] as const)("whatever is touched on %s, screen and focus stand", async (screen) => {
    const { page, context } = await open(SCREENS[screen]);
    // What keeps the focus of the keyboard comes with its first key.
    await page.keyboard.press("Tab");
    await page.waitForLoadState("networkidle");
    await context.setOffline(true);
    await watchTitle(page);
    const { count, lost } = await touchAll(page, SPARED, true);
    expect(count).toBeGreaterThan(5);
    expect(lost).toEqual([]);
    expect(await page.evaluate(titleWasLost)).toBe(false);
    await context.close();
  });
});

/** Notes from now on whether the title of the screen goes away. */
async function watchTitle(page: Page): Promise<void> {
  await page.evaluate(() => {
    const main = document.querySelector("main") as HTMLElement;
    new MutationObserver(() => {
      if (main.querySelector("h1") === null) document.documentElement.dataset.lost = "";
    }).observe(main, { childList: true, subtree: true });
  });
}

/** Runs in the page. */
function titleWasLost(): boolean {
  return "lost" in document.documentElement.dataset;
}
