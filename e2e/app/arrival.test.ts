import { en } from "@halfloaf/web/words";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, openApp, SIZES } from "./openApp.ts";

describe.skipIf(!hasBrowser)("going from page to page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test.each(Object.entries(SIZES))(
    "on a %s a page begins at its top under its own title, and going back finds the place that was left",
    async (_, viewport) => {
      const { page, context } = await openApp(browser, inject("appUrl"), {
        storageState: inject("planned"),
        viewport,
      });
      const top = (): Promise<number> => page.evaluate(() => Math.round(scrollY));
      await goTo(page, "dishes");
      await expect.poll(() => page.title()).toBe(`${en.screens.dishes} – Halfloaf`);
      const dish = page.locator(".dish-line").nth(60);
      await dish.evaluate((link) => link.scrollIntoView({ block: "center" }));
      const left = await top();
      expect(left).toBeGreaterThan(500);
      const title = await dish.locator(".dish-title").textContent();
      await dish.click();
      await page.getByRole("heading", { level: 1, name: title ?? "" }).waitFor();
      await expect.poll(top).toBe(0);
      // The link that was touched is gone; the next press of the tabulator goes on within the page.
      await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("page");
      await page.goBack();
      await expect.poll(top).toBe(left);
      await context.close();
    },
  );
});
