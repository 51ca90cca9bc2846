import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { drawBars } from "./drawBars.ts";
import { goTo, type OpenApp, openApp, reloadPage } from "./openApp.ts";

const { scan } = furtherEn;
const NUMBER = "2000000000008";

describe.skipIf(!hasBrowser)("a camera before a pack", () => {
  const folder = mkdtempSync(join(tmpdir(), "halfloaf-camera-"));
  let browser: Browser;
  beforeAll(async () => {
    const film = join(folder, "bars.y4m");
    writeFileSync(film, drawBars(NUMBER));
    browser = await openBrowser(["--use-fake-device-for-media-stream", `--use-file-for-fake-video-capture=${film}`]);
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true });
  });

  /** The app with its scanner open; whatever is not permitted the browser denies. */
  const open = async (permissions: string[]): Promise<OpenApp> => {
    const app = await openApp(browser, inject("appUrl"), { storageState: inject("planned"), permissions });
    await goTo(app.page, "buying");
    await app.page.getByRole("button", { name: scan.open }).click();
    await app.page.getByRole("button", { name: scan.look }).click();
    return app;
  };

  test("is told of where it was refused, and the number can be typed all the same; allowed later, it is asked for anew", async () => {
    const { page, context, errors } = await open([]);
    await page.getByText(scan.refused).waitFor();
    await page.getByLabel(scan.typed).fill("2000000000009");
    await page.getByRole("button", { name: scan.find, exact: true }).click();
    await page.getByText(scan.invalid).waitFor();
    await page.getByLabel(scan.typed).fill(NUMBER);
    await page.getByRole("button", { name: scan.find, exact: true }).click();
    await page.getByText(scan.unknown(NUMBER)).waitFor();
    await context.grantPermissions(["camera"]);
    await page.getByRole("button", { name: scan.look }).click();
    await page.getByText(scan.unknown(NUMBER)).waitFor({ state: "detached" });
    await page.getByText(scan.unknown(NUMBER)).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("has its number read; told once which pack it is, it is found on the list by its bars", async () => {
    const { page, context, errors } = await open(["camera"]);
    await page.getByText(scan.unknown(NUMBER)).waitFor();
    const options = await page.getByLabel(scan.whose).locator("option").allTextContents();
    const lines = await page.locator(".buying-line .tick-words > span:first-child").allTextContents();
    const onList = lines.map((line) => line.replace(/^\d+ × /, ""));
    // Packs that have a number already are not offered.
    const label = options.find((option) => onList.includes(option)) ?? options[1] ?? "none";
    const found = onList.includes(label) ? ".buying-line.found" : "section[aria-labelledby=besides] li";
    await page.getByLabel(scan.whose).selectOption({ label });
    await page.getByRole("button", { name: scan.remember }).click();
    await page.locator(found, { hasText: label }).waitFor();
    await reloadPage(page);
    await expect.poll(() => page.locator(".buying-line.found").count()).toBe(0);
    await page.getByRole("button", { name: scan.open }).click();
    await page.getByRole("button", { name: scan.look }).click();
    await page.getByText(scan.found(label), { exact: true }).waitFor();
    await page.locator(found, { hasText: label }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
