import { appendFileSync, cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildApp } from "@halfloaf/web/build";
import { en } from "@halfloaf/web/words";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, makeDemo, openApp, planDays, SCREENS, seeScreen, waitUntilKept } from "./openApp.ts";
import { serveApp } from "./serveApp.ts";

describe.skipIf(!hasBrowser)("without a network", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("the first visit is enough for every screen and for planning", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"));
    await waitUntilKept(page);
    await context.setOffline(true);
    await page.reload();
    await makeDemo(page, "one-ring");
    await planDays(page);
    for (const screen of Object.keys(SCREENS)) await goTo(page, screen as keyof typeof SCREENS);
    await page.goto("/stores?from=elsewhere");
    await seeScreen(page);
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(en.screens.stores);
    expect(errors).toEqual([]);
    await context.close();
  }, 60_000);

  test("a newer app is told, and loaded when it is asked for", async () => {
    const folder = mkdtempSync(join(tmpdir(), "halfloaf-newer-"));
    cpSync(buildApp(), folder, { recursive: true });
    const served = await serveApp(folder);
    const { page, context } = await openApp(browser, served.url);
    await waitUntilKept(page);
    expect(await page.getByText(en.shell.newer).count()).toBe(0);
    for (const name of ["sw.js", "sw.js.gz"]) rmSync(join(folder, name), { force: name.endsWith(".gz") });
    cpSync(join(buildApp(), "sw.js"), join(folder, "sw.js"));
    appendFileSync(join(folder, "sw.js"), "\n// newer\n");
    await page.reload();
    await page.evaluate(() => Object.assign(window, { isFirstPage: true }));
    await page.getByText(en.shell.newer).waitFor();
    expect(await page.evaluate(() => "isFirstPage" in window)).toBe(true);
    await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: en.shell.loadNewer }).click()]);
    expect(await page.evaluate(() => "isFirstPage" in window)).toBe(false);
    await seeScreen(page);
    expect(await page.getByText(en.shell.newer).count()).toBe(0);
    await context.close();
    await served.close();
    rmSync(folder, { recursive: true });
  });
});
