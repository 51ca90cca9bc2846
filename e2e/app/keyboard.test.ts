import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, openApp, openAt, SCREENS, SIZES, seeScreen } from "./openApp.ts";
import { tabTo } from "./tabTo.ts";
import { touchAll } from "./touchAll.ts";

/** So many presses lead past all that most screens have; a longer list goes on alike. */
const MOST = 120;

describe.skipIf(!hasBrowser)("the keyboard alone", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("goes to every screen and to all that can be touched there; what has the focus is seen", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), {
      storageState: inject("planned"),
      viewport: SIZES.laptop,
    });
    const faults: Record<string, string[]> = {};
    for (const screen of Object.keys(SCREENS) as (keyof typeof SCREENS)[]) {
      await page.goto(screen === "today" ? SCREENS.menu : SCREENS.today);
      await seeScreen(page);
      const way = page.getByRole("navigation", { name: en.shell.ways }).locator(`a[href="${SCREENS[screen]}"]`);
      await tabTo(page, way, "Shift+Tab");
      await page.keyboard.press("Enter");
      await page.waitForURL(SCREENS[screen]);
      await seeScreen(page);
      const found = await walk(page);
      if (found.length > 0) faults[screen] = found;
    }
    expect(faults).toEqual({});
    expect(errors).toEqual([]);
    await context.close();
  });

  test("never loses its place, whatever goes away when it is touched, and goes back to what opened a form", async () => {
    const { page, context } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await openAt(page, SCREENS.kitchen);
    const { kitchen, cancel } = furtherEn;
    const part = page.locator("details", { has: page.getByRole("heading", { name: kitchen.eaters }) });
    await tabTo(page, part.locator("summary"));
    await page.keyboard.press("Enter");
    const add = part.getByRole("button", { name: kitchen.addEater });
    await tabTo(page, add);
    await page.keyboard.press("Enter");
    const isOn = (place: Locator) => place.evaluate((each) => each === document.activeElement);
    await expect.poll(() => isOn(part.getByLabel(kitchen.eaterName))).toBe(true);
    await tabTo(page, part.getByRole("button", { name: cancel }));
    await page.keyboard.press("Enter");
    await expect.poll(() => isOn(add)).toBe(true);
    for (const screen of ["buying", "stores"] as const) {
      await goTo(page, screen);
      await page.keyboard.press("Tab");
      const { count, lost } = await touchAll(page, [], true);
      expect(count).toBeGreaterThan(5);
      expect(lost).toEqual([]);
    }
    await context.close();
  });
});

/** Goes by Tab through the page; what has no outline or is out of sight while it has the focus, and what is never reached. */
async function walk(page: Page): Promise<string[]> {
  await page.evaluate(() => {
    document.querySelector("main")?.focus();
  });
  const faults: string[] = [];
  for (let presses = 0; presses < MOST; presses++) {
    await page.keyboard.press("Tab");
    const told = await page.evaluate(markFocus);
    if (told === undefined) return [...faults, ...(await page.evaluate(listUnreached))];
    if (told !== "") faults.push(told);
  }
  return faults;
}

/** Runs in the page: what is wrong with the focus; undefined once it has left the page's main part. */
function markFocus(): string | undefined {
  const focused = document.activeElement;
  if (!(focused instanceof HTMLElement) || focused.closest("main") === null) return undefined;
  focused.dataset.wasReached = "yes";
  const name = `${focused.tagName} "${(focused.textContent || focused.getAttribute("aria-label") || "").slice(0, 40)}"`;
  // A box that is laid over what can be touched shows the outline in its place.
  const shown = [focused, focused.parentElement, focused.closest("label")].some((each) => {
    if (each === null) return false;
    const { outlineStyle, outlineWidth } = getComputedStyle(each);
    return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
  });
  if (!shown) return `${name} has no outline`;
  const { left, top, right, bottom } = focused.getBoundingClientRect();
  const isIn = right > 0 && left < innerWidth && bottom > 0 && top < innerHeight;
  return isIn ? "" : `${name} is out of sight`;
}

/** Runs in the page: what can be touched and never had the focus; of radio buttons one a group is enough. */
function listUnreached(): string[] {
  const touched = document.querySelectorAll<HTMLElement>("main :is(a[href], button, input, select, textarea, summary)");
  return [...touched].flatMap((each) => {
    const isOpen = each.checkVisibility() && !each.matches(":disabled, [type=radio]");
    return isOpen && each.dataset.wasReached === undefined
      ? [`${each.tagName} "${each.textContent?.slice(0, 40)}" is never reached`]
      : [];
  });
}
