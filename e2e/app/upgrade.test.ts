import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildApp } from "@halfloaf/web/build";
import { en } from "@halfloaf/web/words";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, type KeptState, ON_DEVICE, openApp, reloadPage, SCREENS, seeScreen, waitUntilKept } from "./openApp.ts";
import { saveBackup } from "./saveBackup.ts";
import { serveApp } from "./serveApp.ts";

const RECORD = new URL("../../packages/halfloaf/src/kitchen/record/frozen/record-1.json", import.meta.url);
/** What a browser kept of that record, byte by byte, as version 1 of the app had written it; frozen for ever. */
const KEPT = new URL("frozen/kept-1.json", import.meta.url);

describe.skipIf(!hasBrowser)("an app that is newer than what was there", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("opens what version 1 left in the browser: every row is there, every screen shows, and more can be written", async () => {
    const storageState = atOrigin(JSON.parse(readFileSync(KEPT, "utf8")), inject("appUrl"));
    const { kitchen, events } = JSON.parse(readFileSync(RECORD, "utf8"));
    const app = await openApp(browser, inject("appUrl"), { storageState, now: "2026-12-08T09:00:00" });
    const { page, context, errors } = app;
    const before = await saveBackup(page);
    expect(before.filter(isEvent)).toEqual(events);
    await page.getByText(kitchen.eaters[0].name).first().waitFor();
    for (const screen of Object.keys(SCREENS)) await goTo(page, screen as keyof typeof SCREENS);
    await goTo(page, "stores");
    await page.locator("details.lot", { hasText: "onion" }).locator("summary").click();
    await page.getByRole("button", { name: en.stores.allWasted }).click();
    await page.locator("details.lot", { hasText: "onion" }).waitFor({ state: "detached" });
    await reloadPage(page);
    await page.getByRole("heading", { level: 1, name: en.screens.stores }).waitFor();
    await expect.poll(() => page.locator("details.lot", { hasText: "onion" }).count()).toBe(0);
    const after = await saveBackup(page);
    expect(after.slice(0, -1)).toEqual(before);
    expect(after.at(-1)).toMatchObject({ kind: "wasted", on: "2026-12-08" });
    expect(errors).toEqual([]);
    await context.close();
  });

  test("is told with a kitchen open, waits until it is asked for, and nothing told meanwhile is lost", async () => {
    const folder = mkdtempSync(join(tmpdir(), "halfloaf-newer-"));
    cpSync(buildApp(), folder, { recursive: true });
    const served = await serveApp(folder);
    const storageState = atOrigin(inject("planned"), served.url);
    const { page, context, errors } = await openApp(browser, served.url, { storageState, ...ON_DEVICE });
    await waitUntilKept(page);
    await goTo(page, "buying");
    const box = (at: number) => page.locator(".buying-line").nth(at).getByRole("checkbox");
    await box(0).click();
    await expect.poll(() => box(0).isChecked()).toBe(true);
    await expect.poll(() => page.getByText(en.shell.newer).count()).toBe(0);
    makeNewer(folder);
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await page.getByText(en.shell.newer).waitFor();
    // The older app goes on: its parts that were never loaded come from the device, though the server has them no more.
    rmSync(join(folder, "assets"), { recursive: true });
    for (const screen of ["prices", "dishes", "accounts", "buying"] as const) await goTo(page, screen);
    await box(1).click();
    await expect.poll(() => box(1).isChecked()).toBe(true);
    expect(await page.evaluate(isNewer)).toBe(false);
    await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: en.shell.loadNewer }).click()]);
    await seeScreen(page);
    await expect.poll(() => page.evaluate(isNewer)).toBe(true);
    await expect.poll(() => box(0).isChecked()).toBe(true);
    await expect.poll(() => box(1).isChecked()).toBe(true);
    await expect.poll(() => page.getByText(en.shell.newer).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
    await served.close();
    rmSync(folder, { recursive: true });
  });
});

/** What a browser keeps, as if it had come from there. */
function atOrigin({ origins, ...rest }: KeptState, url: string): KeptState {
  const { origin } = new URL(url);
  return { ...rest, origins: origins.map((each) => ({ ...each, origin })) };
}

function isEvent(row: unknown): boolean {
  return (row as { readonly kind: string }).kind !== "edited";
}

/** Puts a newer app into the folder: its first page is another, and its service worker knows. */
function makeNewer(folder: string): void {
  const page = readFileSync(join(folder, "index.html"), "utf8");
  const worker = readFileSync(join(folder, "sw.js"), "utf8");
  const newer = worker.replace(/(url:"index\.html",revision:")\w+/, "$1newer");
  expect(newer).not.toBe(worker);
  for (const name of ["index.html.gz", "sw.js.gz"]) rmSync(join(folder, name));
  writeFileSync(join(folder, "index.html"), page.replace("<head>", '<head><meta name="newer" content="yes">'));
  writeFileSync(join(folder, "sw.js"), newer);
}

/** Runs in the page: whether it is that of the newer app. */
function isNewer(): boolean {
  return document.querySelector("meta[name=newer]") !== null;
}
