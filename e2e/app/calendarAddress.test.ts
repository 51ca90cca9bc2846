import { startHost, type TestHost } from "@halfloaf/server/testing/host";
import { buildApp } from "@halfloaf/web/build";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, openApp } from "./openApp.ts";

const { sharing } = furtherEn;

describe.skipIf(!hasBrowser)("the address of a calendar", () => {
  let browser: Browser;
  let host: TestHost;
  beforeAll(async () => {
    browser = await openBrowser();
    host = await startHost({ files: buildApp() });
  });
  afterAll(async () => {
    await browser?.close();
    await host?.stop();
  });

  test("is made in the app, shows the accepted menu in the app's words to whoever has it, and no more once it is revoked", async () => {
    const { origins, ...rest } = inject("planned");
    const storageState = { ...rest, origins: origins.map((each) => ({ ...each, origin: host.url })) };
    const { page, context, errors } = await openApp(browser, host.url, { storageState });
    await goTo(page, "kitchen");
    await page.getByText(sharing.title, { exact: true }).click();
    await page.getByRole("button", { name: sharing.share }).click();
    await page.getByRole("button", { name: sharing.makeCalendar }).click();
    const address = await page.getByLabel(sharing.calendarLink).inputValue();
    const link = await page.getByRole("link", { name: sharing.openCalendar }).getAttribute("href");
    expect(link).toBe(address.replace("http:", "webcal:"));
    const read = async () => (await fetch(address)).text();
    await expect.poll(read).toMatch(/^SUMMARY:Cook /m);
    expect(await read()).toMatch(/^SUMMARY:Shop at /m);
    const part = page.getByRole("region", { name: sharing.calendars });
    await part.getByRole("button", { name: sharing.revoke }).click();
    await expect.poll(async () => (await fetch(address)).status).toBe(404);
    await expect.poll(() => page.getByLabel(sharing.calendarLink).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
