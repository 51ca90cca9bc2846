import { loadDishTextsDe, loadStarterDishes } from "@halfloaf/data";
import { en } from "@halfloaf/web/words";
import { de } from "@halfloaf/web/words/de";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, makeDemo, openApp, openAt, reloadPage, SCREENS, SIZES, seeScreen } from "./openApp.ts";

const TITLES = loadStarterDishes().flatMap(({ content }) => (content as { title: string }[]).map(({ title }) => title));
const DISH = "two-bean-lentil-chilli";

const screens = Object.keys(SCREENS) as (keyof typeof SCREENS)[];

describe.skipIf(!hasBrowser)("another language", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("is spoken at once on every screen, kept for the next visit, and given up the same way", async () => {
    const viewport = SIZES.laptop;
    const { page, context, errors } = await openApp(browser, inject("appUrl"), {
      storageState: inject("planned"),
      viewport,
    });
    const english = listSentences({ en, furtherEn });
    await goTo(page, "kitchen");
    expect(await languageOf(page)).toBe("en");
    expect((await page.evaluate(findTexts, english)).length).toBeGreaterThan(5);
    await speak(page, "de");
    await page.getByRole("heading", { level: 1, name: de.screens.kitchen, exact: true }).waitFor();
    await reloadPage(page);
    await seeScreen(page, de);
    const left: Record<string, string[]> = {};
    for (const screen of screens) {
      await goTo(page, screen, de);
      await expect.poll(() => languageOf(page)).toBe("de");
      // The starter dishes are told in another language a moment after the words of the app.
      await expect.poll(() => page.evaluate(findWithin, TITLES)).toEqual([]);
      const found = await page.evaluate(findTexts, english);
      if (found.length > 0) left[screen] = found;
    }
    expect(left).toEqual({});
    await speak(page, "en");
    await page.getByRole("heading", { level: 1, name: en.screens.kitchen, exact: true }).waitFor();
    // The page says its language a moment after its texts are in it.
    await expect.poll(() => languageOf(page)).toBe("en");
    expect(errors).toEqual([]);
    await context.close();
  });

  test("is that of the starter dishes, too, and of one that is cooked already", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    const english = loadStarterDishes()
      .flatMap(({ content }) => content as { id: string; title: string; method: { text: string }[] }[])
      .find(({ id }) => id === DISH);
    const german = loadDishTextsDe().dishes[DISH] as { title: string; steps: Record<string, string> };
    await openAt(page, `/work?dish=${DISH}&portions=2`);
    const next = page.locator(".timeline");
    await next.waitFor();
    const step = (text: string | undefined) => page.getByText(text ?? "no such step").first();
    await page.getByText(en.work.allSteps).click();
    await step(english?.method[0]?.text).waitFor();
    await goTo(page, "kitchen");
    await speak(page, "de");
    await goTo(page, "work", de);
    await page.getByText(de.work.allSteps).click();
    await step(Object.values(german.steps)[0]).waitFor();
    await openAt(page, `/dishes/${DISH}`);
    await page.getByRole("heading", { level: 1, name: german.title }).waitFor();
    // What a step pours goes with the portions.
    const poured = /\d/;
    for (const text of Object.values(german.steps).filter((each) => !poured.test(each))) await step(text).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("is that of the packs and notes that a new kitchen begins with, which are its own from then on", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { locale: "de-DE" });
    await makeDemo(page, "one-ring", de);
    await openAt(page, "/dishes/savoury-oats-leek-cheddar");
    await page.getByText("Haferflocken, 500 g").first().waitFor();
    await goTo(page, "kitchen", de);
    await speak(page, "en");
    await openAt(page, "/dishes/savoury-oats-leek-cheddar");
    await page.getByRole("heading", { level: 1, name: "Savoury oats with leek and cheddar" }).waitFor();
    await page.getByText("Haferflocken, 500 g").first().waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** Chooses a language in Kitchen, which is open; its field is found by its choices, as its label is in any of them. */
async function speak(page: Page, language: string): Promise<void> {
  const field = page.locator('select:has(option[value="de"])');
  const fold = page.locator("details", { has: field });
  if (!(await field.isVisible())) await fold.locator("summary").click();
  await field.selectOption(language);
}

function languageOf(page: Page): Promise<string> {
  return page.evaluate(() => document.documentElement.lang);
}

/** The texts of a catalogue that no other language or name is likely to have: those of several words. */
function listSentences(texts: object): string[] {
  return Object.values(texts).flatMap((text: unknown) =>
    typeof text === "object" && text !== null
      ? listSentences(text)
      : typeof text === "string" && text.trim().includes(" ")
        ? [text]
        : [],
  );
}

/** Which of the texts stand on the page, within others as well. */
function findWithin(texts: readonly string[]): string[] {
  return texts.filter((text) => document.body.textContent?.includes(text));
}

/** Which of the texts stand on the page, to be seen or to be heard. */
function findTexts(texts: readonly string[]): string[] {
  const nodes = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const said = new Set<string>();
  while (nodes.nextNode()) said.add(nodes.currentNode.textContent?.trim() ?? "");
  for (const each of document.querySelectorAll("[aria-label]")) said.add(each.getAttribute("aria-label") ?? "");
  return texts.filter((text) => said.has(text));
}
