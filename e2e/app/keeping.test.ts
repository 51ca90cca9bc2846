import { en } from "@halfloaf/web/words";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, mayLeave, type OpenApp, openApp, openAt } from "./openApp.ts";

describe.skipIf(!hasBrowser)("a kitchen kept in the browser", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  const openPlanned = (): Promise<OpenApp> => openApp(browser, inject("appUrl"), { storageState: inject("planned") });

  test("what is ticked in one tab is ticked in the other", async () => {
    const { context, page } = await openPlanned();
    const other = await context.newPage();
    for (const each of [page, other]) await openAt(each, "/buying");
    const [here, there] = [boxOf(page), boxOf(other)];
    await here.click();
    await expect.poll(() => there.isChecked()).toBe(true);
    await there.click();
    await expect.poll(() => here.isChecked()).toBe(false);
    await context.close();
  });

  test("storage that is full is told, nothing told is lost, and it is kept once there is room", async () => {
    const { context, page } = await openPlanned();
    await goTo(page, "buying");
    const devtools = await context.newCDPSession(page);
    const { origin } = new URL(page.url());
    await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
    // The browser asks only every half minute how much room there is.
    await page.waitForTimeout(31_000);
    await boxOf(page).click();
    await page.getByRole("alert").getByText(en.opening.full).waitFor();
    await expect.poll(() => boxOf(page).isChecked()).toBe(true);
    await goTo(page, "stores");
    await page.getByRole("alert").getByText(en.opening.full).waitFor();
    expect(await page.evaluate(mayLeave)).toBe(false);
    await devtools.send("Storage.overrideQuotaForOrigin", { origin });
    await page.getByRole("button", { name: en.opening.tryAgain }).click();
    await page.getByRole("alert").waitFor({ state: "detached" });
    await expect.poll(() => page.evaluate(mayLeave)).toBe(true);
    await openAt(page, "/buying");
    await expect.poll(() => boxOf(page).isChecked()).toBe(true);
    await context.close();
  });

  test("a kitchen of a newer Halfloaf is told and left as it is", async () => {
    const { context, page } = await openPlanned();
    await goTo(page, "stores");
    const before = await raiseVersion(page);
    await page.reload();
    await page.getByRole("heading", { name: en.opening.newer }).waitFor();
    expect(await readDatabase(page)).toEqual(before);
    expect(before.rows).toBeGreaterThan(0);
    await context.close();
  });

  test("a kitchen that the browser has thrown away is told, not made anew", async () => {
    const { context, page } = await openPlanned();
    await goTo(page, "stores");
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const { open } = JSON.parse(localStorage.getItem("halfloaf-device") ?? "{}");
          const request = indexedDB.deleteDatabase(open);
          request.onsuccess = () => resolve();
          request.onerror = () => reject(request.error);
        }),
    );
    await page.reload();
    await page.getByRole("heading", { name: en.opening.missing }).waitFor();
    expect(await page.evaluate(async () => (await indexedDB.databases()).length)).toBe(0);
    await context.close();
  });
});

function boxOf(page: Page) {
  return page.locator(".buying-line").first().getByRole("checkbox");
}

interface Database {
  readonly version: number;
  readonly rows: number;
}

/** Opens the kitchen's database as a newer Halfloaf would. */
function raiseVersion(page: Page): Promise<Database> {
  return page.evaluate(openDatabase, 99);
}

function readDatabase(page: Page): Promise<Database> {
  return page.evaluate(openDatabase, undefined);
}

/** Runs in the page: the version of the kitchen's database and how many rows it has. */
function openDatabase(version: number | undefined): Promise<Database> {
  return new Promise((resolve, reject) => {
    const { open } = JSON.parse(localStorage.getItem("halfloaf-device") ?? "{}");
    const request = indexedDB.open(open, version);
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const database = request.result;
      const count = database.transaction("chunks").objectStore("chunks").count();
      count.onsuccess = () => {
        database.close();
        resolve({ version: database.version, rows: count.result });
      };
    };
  });
}
