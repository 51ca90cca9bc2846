import { de } from "@halfloaf/web/words/de";
import type { Browser } from "playwright-core";
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

  test("text of twice its size fits a small phone in long German words, page by page, with all unfolded", async () => {
    const large = await openBrowser(["--blink-settings=defaultFontSize=32"]);
    const { page } = await openApp(large, inject("appUrl"), { storageState: inject("planned"), locale: "de-DE" });
    await page.goto(SCREENS.dishes);
    const dish = (await page.locator("main li a").first().getAttribute("href")) ?? "";
    const faults: Record<string, string[]> = {};
    for (const path of [...Object.values(SCREENS), dish]) {
      await page.goto(path);
      await seeScreen(page, de);
      await page.evaluate(unfold);
      await expect.poll(() => page.getByText(de.shell.loading).count()).toBe(0);
      const found = await page.evaluate(listCramped);
      if (found.length > 0) faults[path] = found;
    }
    expect(faults).toEqual({});
    await large.close();
  });

  test("where the browser sets the colours, what is chosen and what is drawn still stands out", async () => {
    const { page, context } = await open({ forcedColors: "active", viewport: SIZES.laptop });
    const faults: Record<string, string[]> = {};
    for (const screen of ["menu", "buying", "accounts"] as const) {
      await goTo(page, screen);
      await page.locator("main [aria-pressed], main svg").first().waitFor();
      const found = await page.evaluate(listUntold);
      if (found.length > 0) faults[screen] = found;
    }
    expect(faults).toEqual({});
    await context.close();
  });

  test("what a thumb touches is large enough, and nothing moves for those who asked for less motion", async () => {
    const { page, context } = await open({ reducedMotion: "reduce" });
    const faults: string[] = [];
    for (const screen of screens) {
      await goTo(page, screen);
      const found = [...(await page.evaluate(listSmall, 44)), ...(await page.evaluate(listMoving))];
      faults.push(...found.map((each) => `${screen}: ${each}`));
    }
    expect(faults).toEqual([]);
    await context.close();
  });
});

/** Runs in the page: opens all that can be unfolded. */
function unfold(): void {
  for (const details of document.querySelectorAll<HTMLDetailsElement>("main details")) details.open = true;
}

/** Runs in the page: that it is too wide, and words that are parted though they take less than half of it. */
function listCramped(): string[] {
  const { scrollWidth, clientWidth } = document.documentElement;
  const cramped = scrollWidth > clientWidth ? [`${scrollWidth} px wide`] : [];
  const texts = document.createTreeWalker(document.querySelector("main") as HTMLElement, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
    const holder = text.parentElement as HTMLElement;
    // What scrolls by itself is a picture; a word with a place to be parted at may be.
    if (!holder.checkVisibility() || holder.closest(".unseen, option, .ribbons-window") !== null) continue;
    for (const { 0: word, index } of (text.textContent ?? "").matchAll(/[\p{L}\p{N}\u00ad]+/gu)) {
      const range = document.createRange();
      range.setStart(text, index);
      range.setEnd(text, index + word.length);
      const parts = [...range.getClientRects()];
      const lines = new Set(parts.map(({ top }) => Math.round(top))).size;
      const width = parts.reduce((sum, part) => sum + part.width, 0);
      if (lines > 1 && width < clientWidth / 2 && !word.includes("\u00ad")) cramped.push(`${word} on ${lines} lines`);
    }
  }
  return cramped;
}

/** Runs in the page: what looks like what it is told apart from, or has no colour but that of the page. */
function listUntold(): string[] {
  const look = (each: Element) => getComputedStyle(each);
  const probe = document.body.appendChild(document.createElement("i"));
  probe.style.color = "Canvas";
  const canvas = look(probe).color;
  probe.remove();
  const isSeen = (colour: string) => !["none", "transparent", "rgba(0, 0, 0, 0)", canvas].includes(colour);
  const chosen = [...document.querySelectorAll("main .button[aria-pressed=true]")].filter(
    (each) => look(each).backgroundColor === canvas || look(each).backgroundColor === look(each).color,
  );
  const main = [...document.querySelectorAll("main .button.main")].filter(
    (each) => look(each).backgroundColor === look(each).color,
  );
  const here = document.querySelector("nav [aria-current=page]") as Element;
  const other = document.querySelector("nav a:not([aria-current])") as Element;
  const isLost = look(here).borderLeftColor === look(other).borderLeftColor;
  const shapes = [...document.querySelectorAll("main svg :is(rect, path, circle):not(defs *)")].filter(
    (each) => each.getAttribute("fill") !== "transparent" && ![look(each).fill, look(each).stroke].some(isSeen),
  );
  return [
    ...[...chosen, ...main].map((each) => `${each.textContent}`),
    ...(isLost ? ["the way that one is on"] : []),
    ...shapes.map((each) => `${each.tagName}.${each.getAttribute("class")}`),
  ];
}

/** Runs in the page: what has a transition or an animation that takes time. */
function listMoving(): string[] {
  return [...document.querySelectorAll("*")].flatMap((each) => {
    const { transitionDuration, animationDuration } = getComputedStyle(each);
    const times = `${transitionDuration},${animationDuration}`.split(",").map((time) => Number.parseFloat(time));
    return times.some((seconds) => seconds > 0.01) ? [`${each.tagName}.${each.className}`] : [];
  });
}
