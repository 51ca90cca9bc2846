import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import { openSqliteHost } from "@halfloaf/server/host";
import { startHost, type TestHost } from "@halfloaf/server/testing/host";
import { buildApp } from "@halfloaf/web/build";
import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, type KeptState, type OpenApp, openApp, seeScreen } from "./openApp.ts";

const { sharing } = furtherEn;

describe.skipIf(!hasBrowser)("a kitchen that is shared", () => {
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

  /** What the browser keeps of the planned kitchen, as if it had come from that server. */
  const plannedAt = (origin: string): KeptState => {
    const { origins, ...rest } = inject("planned");
    return { ...rest, origins: origins.map((each) => ({ ...each, origin })) };
  };

  test("is invited to and joined by a link, and ticks are at the other at once; who is removed is told and keeps all", async () => {
    const keeper = await openApp(browser, host.url, { storageState: plannedAt(host.url) });
    await share(keeper.page);
    const link = await invite(keeper.page, "cook");
    const cook = await join(browser, host, link);
    expect(cook.page.url()).not.toContain("#");
    await goTo(keeper.page, "buying");
    await goTo(cook.page, "buying");
    await keeper.page.getByText(sharing.here("Laptop (Buying)")).waitFor();
    await tick(keeper.page, 0).click();
    await expect.poll(() => tick(cook.page, 0).isChecked()).toBe(true);
    await cook.page.getByText(sharing.tickedBy(sharing.otherDevice)).waitFor();
    await openPart(keeper.page);
    keeper.page.once("dialog", (dialog) => void dialog.accept());
    await keeper.page.getByRole("button", { name: `${furtherEn.remove} Laptop` }).click();
    await cook.page.getByText(sharing.reasons.revoked ?? "").waitFor();
    expect(await tick(cook.page, 0).isChecked()).toBe(true);
    expect([...keeper.errors, ...cook.errors]).toEqual([]);
    await keeper.context.close();
    await cook.context.close();
  });

  test("goes on at both while the server is stopped, and both agree once it is back", async () => {
    const folder = mkdtempSync(joinPath(tmpdir(), "halfloaf-sharing-"));
    const open = (port: number) =>
      startHost({ files: buildApp(), store: openSqliteHost(joinPath(folder, "kitchens.sqlite")), port });
    const first = await open(0);
    const keeper = await openApp(browser, first.url, { storageState: plannedAt(first.url) });
    await share(keeper.page);
    const cook = await join(browser, first, await invite(keeper.page, "cook"));
    await goTo(keeper.page, "buying");
    await goTo(cook.page, "buying");
    await first.stop();
    await state(keeper.page, "apart");
    await state(cook.page, "apart");
    await tick(keeper.page, 0).click();
    await tick(cook.page, 1).click();
    await cook.page.getByText(sharing.unsent(1)).or(cook.page.getByText("entries wait")).waitFor();
    expect(await tick(keeper.page, 1).isChecked()).toBe(false);
    const second = await open(first.port);
    for (const { page } of [keeper, cook])
      for (const at of [0, 1]) await expect.poll(() => tick(page, at).isChecked()).toBe(true);
    expect(await told(keeper.page)).toBe(await told(cook.page));
    await keeper.context.close();
    await cook.context.close();
    await second.stop();
    rmSync(folder, { recursive: true });
  });

  test("is read by a device that reads only, which is told so and changes nothing; an invitation lets in once", async () => {
    const keeper = await openApp(browser, host.url, { storageState: plannedAt(host.url) });
    await share(keeper.page);
    const link = await invite(keeper.page, "reader");
    const reader = await join(browser, host, link);
    await reader.page.getByText(sharing.roleHere.reader).waitFor();
    await goTo(reader.page, "stores");
    const lot = reader.page.locator(".lot").first();
    const before = await lot.locator("summary").textContent();
    await lot.locator("summary").click();
    await lot.getByRole("button", { name: en.stores.allWasted }).click();
    await reader.page.getByText(sharing.forbidden.reader).waitFor();
    expect(await lot.locator("summary").textContent()).toBe(before);
    await reader.page.getByRole("button", { name: sharing.understood }).click();
    await goTo(reader.page, "buying");
    expect(await tick(reader.page, 0).isDisabled()).toBe(true);
    expect([...keeper.errors, ...reader.errors]).toEqual([]);
    const late = await openApp(browser, host.url);
    await late.page.goto(link);
    await late.page.getByRole("button", { name: sharing.joinIt }).click();
    await late.page.getByText(sharing.reasons["no-such-invitation"] ?? "").waitFor();
    for (const { context } of [keeper, reader, late]) await context.close();
  });
});

/** Shares the open kitchen, and waits until the server has all of it. */
async function share(page: Page): Promise<void> {
  await openPart(page);
  await page.getByRole("button", { name: sharing.share }).click();
  await together(page);
}

async function together(page: Page): Promise<void> {
  await state(page, "together");
}

async function state(page: Page, kind: "apart" | "together"): Promise<void> {
  await page.getByRole("link", { name: sharing.states[kind], exact: true }).waitFor();
}

/** What the till says. */
function told(page: Page): Promise<string | null> {
  return page.locator(".till").textContent();
}

/** Opens "Shared with" in Kitchen. */
async function openPart(page: Page): Promise<void> {
  await goTo(page, "kitchen");
  await page.getByRole("heading", { name: sharing.title }).click();
}

/** Makes an invitation, and gives its link. */
async function invite(page: Page, role: "keeper" | "cook" | "reader"): Promise<string> {
  await page.getByLabel(sharing.may).selectOption(role);
  await page.getByRole("button", { name: sharing.makeInvitation }).click();
  await page.getByRole("img", { name: sharing.qr }).waitFor();
  return page.getByLabel(sharing.link).inputValue();
}

/** Opens the link in another browser, and says yes. */
async function join(browser: Browser, host: TestHost, link: string): Promise<OpenApp> {
  const app = await openApp(browser, host.url, { viewport: { width: 1280, height: 800 } });
  await app.page.goto(link);
  await app.page.getByText(sharing.joinSure(new URL(host.url).host)).waitFor();
  expect(app.page.url()).toBe(`${host.url}/join`);
  await app.page.getByRole("button", { name: sharing.joinIt }).click();
  await together(app.page);
  await seeScreen(app.page);
  expect(await app.page.getByText(en.today.noMenu).count()).toBe(0);
  return app;
}

/** A tick of the list. */
function tick(page: Page, at: number) {
  return page.locator(".buying-line input[type=checkbox]").nth(at);
}
