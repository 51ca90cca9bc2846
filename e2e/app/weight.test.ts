import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { SCREENS } from "./openApp.ts";
import { weighScript } from "./weighScript.ts";

const MOST_KB = 130;

describe.skipIf(!hasBrowser)("script of a first load weighs at most 130 kB compressed", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("for a new visitor", async () => {
    const { pageKb, workersKb } = await weighScript(browser, inject("appUrl"), "/");
    expect(pageKb).toBeGreaterThan(20);
    expect(pageKb + workersKb).toBeLessThanOrEqual(MOST_KB);
  });

  test.concurrent.each(Object.entries(SCREENS))("for %s with an open kitchen", async (name, path) => {
    const { pageKb, workersKb } = await weighScript(browser, inject("appUrl"), path, inject("planned"));
    expect(pageKb).toBeGreaterThan(60);
    expect(pageKb).toBeLessThanOrEqual(MOST_KB);
    // At the shelf an answer is due at once, so that Buying alone gets the worker ready that plans the week again.
    if (name !== "buying") expect(workersKb).toBe(0);
  });
});
