import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, BrowserContext, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { meetScreen, openApp, openAt, SIZES } from "./openApp.ts";

const KEY = "halfloaf-shown /";
const SECRET = "what-another-place-may-not-hold";

describe.skipIf(!hasBrowser)("a start while the tables are still on their way", () => {
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;

  beforeAll(async () => {
    browser = await openBrowser();
    ({ context, page } = await openApp(browser, inject("appUrl"), {
      storageState: inject("planned"),
      viewport: SIZES.laptop,
      serviceWorkers: "block",
    }));
    await page.evaluate((secret) => localStorage.setItem("halfloaf-shared-elsewhere", secret), SECRET);
    await keepAnew();
  });
  afterAll(() => browser?.close());

  const readKept = (): Promise<string | null> => page.evaluate((key) => localStorage.getItem(key), KEY);
  const cooked = (within: Page | Locator): Locator =>
    within.getByRole("button", { name: en.today.cooked, exact: true });

  /** Loads Today, and waits until it is kept as it is now. */
  async function keepAnew(): Promise<void> {
    await page.evaluate((key) => localStorage.removeItem(key), KEY);
    await openAt(page, "/");
    await page.waitForFunction((key) => localStorage.getItem(key) !== null, KEY);
  }

  /** Loads Today while the tables are held back; gives what lets them through. */
  async function begin(on: Page): Promise<() => Promise<void>> {
    let release = (): void => {};
    const gate = new Promise<void>((resolve) => {
      release = resolve;
    });
    await on.route("**/foods.json", async (route) => {
      await gate;
      await route.continue();
    });
    await on.goto("/", { waitUntil: "commit" });
    return async () => {
      release();
      await meetScreen(on);
      await on.unroute("**/foods.json");
    };
  }

  const before = (): Locator => page.locator("[inert] main");

  /** Taps a place of the screen that was shown before: no more is there to be tapped. */
  async function tap(target: Locator): Promise<void> {
    await target.scrollIntoViewIfNeeded();
    const box = await target.boundingBox();
    if (box === null) throw new Error("it is not shown");
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  }

  test("shows the screen as it was shown before, in all its looks, and then the same screen drawn anew", async () => {
    const text = await page.getByRole("main").textContent();
    const finish = await begin(page);
    await before().locator("h1").waitFor();
    await expect.poll(() => before().textContent()).toBe(text);
    const early = await page.screenshot();
    await finish();
    await page.locator("[inert]").waitFor({ state: "detached" });
    await expect.poll(() => page.getByRole("main").textContent()).toBe(text);
    await expect.poll(async () => (await page.screenshot()).equals(early)).toBe(true);
  });

  test("keeps nothing with it of what else the device remembers", async () => {
    expect(await readKept()).not.toContain(SECRET);
  });

  test("follows a way that was tapped before the app was there", async () => {
    const finish = await begin(page);
    const way = page.locator('[inert] nav a[href="/buying"]');
    await way.waitFor();
    await tap(way);
    expect(new URL(page.url()).pathname).toBe("/");
    await finish();
    await page.waitForURL("**/buying");
  });

  test("does what was tapped before the app was there, on the line where it was tapped", async () => {
    const finish = await begin(page);
    // Beside them stand what is to be bought and begun.
    const dishes = { has: page.getByRole("button", { name: en.today.cooked, exact: true }) };
    const lines = before().locator("section[aria-labelledby=jobs] > ul > li").filter(dishes);
    await lines.nth(1).waitFor();
    const texts = await lines.allTextContents();
    await tap(cooked(lines.nth(1)));
    await finish();
    const live = page.locator("#app section[aria-labelledby=jobs] > ul > li").filter(dishes);
    await expect.poll(() => live.allTextContents()).toEqual(texts.toSpliced(1, 1));
    await page.getByRole("button", { name: en.today.undo, exact: true }).click();
    await expect.poll(() => live.allTextContents()).toEqual(texts);
  });

  test("shows nothing of before once anything was added to the kitchen since", async () => {
    await keepAnew();
    const stale = await readKept();
    await cooked(page).first().click();
    await page.waitForFunction(([key, kept]) => ![null, kept].includes(localStorage.getItem(key as string)), [
      KEY,
      stale,
    ] as const);
    const other = await context.newPage();
    await other.addInitScript(([key, kept]) => localStorage.setItem(key as string, kept as string), [KEY, stale]);
    const finish = await begin(other);
    await other.getByText(en.shell.loading).waitFor();
    await expect.poll(() => other.locator("[inert]").count()).toBe(0);
    await finish();
    await other.close();
  });

  test("is forgotten with the kitchen that is deleted from the device, on every screen", async () => {
    const whose = (): Promise<string[]> =>
      page.evaluate(() =>
        Object.entries(localStorage).flatMap(([key, kept]) =>
          key.startsWith("halfloaf-shown ") ? [JSON.parse(kept).kitchen] : [],
        ),
      );
    const [gone = ""] = await whose();
    await openAt(page, "/buying");
    await expect.poll(async () => (await whose()).filter((each) => each === gone).length).toBeGreaterThan(1);
    await openAt(page, "/kitchen");
    const { kitchen } = furtherEn;
    const part = page.locator("details", { has: page.getByRole("heading", { name: kitchen.device }) });
    await part.locator("summary").click();
    await part.getByRole("button", { name: kitchen.another }).click();
    await page.getByRole("button", { name: en.first.demos["one-ring"] as string }).click();
    await part.waitFor();
    await part.locator("summary").click();
    await part.getByRole("button", { name: new RegExp(`^${furtherEn.remove}`) }).click();
    page.once("dialog", (dialog) => void dialog.accept());
    await part.getByRole("button", { name: new RegExp(`^${kitchen.deleteForGood}`) }).click();
    await part.getByText(kitchen.removedKitchens).waitFor({ state: "detached" });
    await expect.poll(whose).not.toContain(gone);
  });
});
