import { loadDemoKitchens } from "@halfloaf/data";
import { en } from "@halfloaf/web/words";
import { de } from "@halfloaf/web/words/de";
import { FAULT_WORDS_DE } from "@halfloaf/words/de/faults";
import { FAULT_WORDS_EN } from "@halfloaf/words/en/faults";
import { tellIssue } from "@halfloaf/words/faults";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { openApp } from "./openApp.ts";

describe.skipIf(!hasBrowser)("a kitchen's file that can't be opened", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test.each([
    ["en-IE", en, FAULT_WORDS_EN],
    ["de-DE", de, FAULT_WORDS_DE],
  ] as const)(
    "is refused with all that is wrong in it at once, each with its remedy (%s)",
    async (locale, words, faults) => {
      const { page, context, errors } = await openApp(browser, inject("appUrl"), { locale });
      const content = faultyKitchen();
      await page
        .getByLabel(words.first.restoreChoose)
        .setInputFiles({ name: "k.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(content)) });
      await page.getByText(words.first.restoreFailed).waitFor();
      const issues = [
        { code: "min_value", path: ["limits", "budgetMinor"], expected: ">=0", received: "-5" },
        { code: "food-unknown", path: ["packs", 0, "food"], expected: "a food of the table", received: "moon-cheese" },
      ];
      for (const issue of issues) {
        const { sentence, remedy } = tellIssue(issue, content, faults);
        await page.getByText(sentence).waitFor();
        await page.getByText(remedy, { exact: true }).first().waitFor();
      }
      expect(await judgePage(page)).toEqual([]);
      expect(errors).toEqual([]);
      await context.close();
    },
  );
});

/** The demo's kitchen with a budget below nothing and a pack of a food that nobody knows. */
function faultyKitchen(): unknown {
  const content = structuredClone(loadDemoKitchens().find(({ name }) => name === "one-ring")?.content) as {
    limits: { budgetMinor: number };
    packs: { food: string }[];
  };
  content.limits.budgetMinor = -5;
  for (const pack of content.packs.slice(0, 1)) pack.food = "moon-cheese";
  return content;
}
