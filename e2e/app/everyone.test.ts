import { en } from "@halfloaf/web/words";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage, listSmall } from "./judgePage.ts";
import { goTo, openApp, SCREENS, SIZES, seeScreen } from "./openApp.ts";

const screens = Object.keys(SCREENS) as (keyof typeof SCREENS)[];

describe.skipIf(!hasBrowser)("for everyone", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  const open = (options: Parameters<typeof openApp>[2] = {}) =>
    openApp(browser, inject("appUrl"), { storageState: inject("planned"), ...options });

  describe.each(["light", "dark"] as const)("in %s colours", (colorScheme) => {
    test.each(Object.entries(SIZES))("every screen on a %s keeps WCAG 2.2 AA", async (_, viewport) => {
      const { page, context, errors } = await open({ viewport, colorScheme });
      const faults: Record<string, string[]> = {};
      for (const screen of screens) {
        await goTo(page, screen);
        const found = await judgePage(page);
        if (found.length > 0) faults[screen] = found;
      }
      expect(faults).toEqual({});
      expect(errors).toEqual([]);
      await context.close();
    });
  });

  test("a new visitor's first page keeps WCAG 2.2 AA", async () => {
    const { page, context } = await openApp(browser, inject("appUrl"));
    await page.getByRole("heading", { level: 1 }).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await context.close();
  });

  test("text of twice its size fits a small phone, page by page", async () => {
    const { page, context } = await open();
    const wide: string[] = [];
    for (const screen of screens) {
      await page.goto(SCREENS[screen]);
      await seeScreen(page);
      await enlarge(page);
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      if (width > SIZES.phone.width) wide.push(`${screen}: ${width}`);
    }
    expect(wide).toEqual([]);
    await context.close();
  });

  test("what a thumb touches is large enough", async () => {
    const { page, context } = await open();
    const small: string[] = [];
    for (const screen of screens) {
      await goTo(page, screen);
      small.push(...(await page.evaluate(listSmall, 44)).map((each) => `${screen}: ${each}`));
    }
    expect(small).toEqual([]);
    await context.close();
  });

  test("nothing moves for those who asked for less motion", async () => {
    const { page, context } = await open({ reducedMotion: "reduce" });
    for (const screen of screens) {
      await goTo(page, screen);
      expect(await page.evaluate(listMoving)).toEqual([]);
    }
    await context.close();
  });

  test("the keyboard alone goes to a screen, and what has the focus is seen", async () => {
    const { page, context } = await open({ viewport: SIZES.laptop });
    await seeScreen(page);
    const way = page.getByRole("navigation", { name: en.shell.ways }).getByRole("link", { name: en.screens.buying });
    for (let presses = 0; presses < 30; presses++) {
      await page.keyboard.press("Tab");
      const outline = await page.evaluate(() => {
        const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement ?? document.body);
        return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
      });
      expect(outline).toBe(true);
      if (await way.evaluate((link) => link === document.activeElement)) break;
    }
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 1, name: en.screens.buying }).waitFor();
    await context.close();
  });
});

async function enlarge(page: Page): Promise<void> {
  await page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
  });
}

/** Runs in the page: what has a transition or an animation that takes time. */
function listMoving(): string[] {
  return [...document.querySelectorAll("*")].flatMap((each) => {
    const { transitionDuration, animationDuration } = getComputedStyle(each);
    const times = `${transitionDuration},${animationDuration}`.split(",").map((time) => Number.parseFloat(time));
    return times.some((seconds) => seconds > 0.01) ? [`${each.tagName}.${each.className}`] : [];
  });
}
