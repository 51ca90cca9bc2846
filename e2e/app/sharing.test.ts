import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import { type Membership, type Role, toInvitationLink } from "@halfloaf/keep/sync";
import { type HostStore, openSqliteHost } from "@halfloaf/server/host";
import { answered, desk, makeKitchen, startHost, type TestHost } from "@halfloaf/server/testing/host";
import { buildApp } from "@halfloaf/web/build";
import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, ON_DEVICE, type OpenApp, reloadPage, waitUntilKept } from "./openApp.ts";
import {
  agree,
  beginJoining,
  invite,
  openGuest,
  openKeeper,
  openPart,
  openVisitor,
  seeJoined,
  seeState,
  seeTick,
  tellTill,
  tick,
} from "./shareApp.ts";

const { sharing } = furtherEn;

describe.skipIf(!hasBrowser)("a kitchen that is shared", () => {
  let browser: Browser;
  let host: TestHost;
  let folder: string;
  beforeAll(async () => {
    browser = await openBrowser();
    folder = mkdtempSync(joinPath(tmpdir(), "halfloaf-sharing-"));
    host = await startHost({ files: buildApp() });
  });
  afterAll(async () => {
    await browser?.close();
    await host?.stop();
    rmSync(folder, { recursive: true });
  });

  /** A server whose kitchens outlive it. */
  const startLasting = (name: string, port = 0): Promise<TestHost> =>
    startHost({ files: buildApp(), store: openSqliteHost(joinPath(folder, name)), port });

  test("is joined by a link, ticks are at the others at once with who ticked, in every tab; who is removed keeps all", async () => {
    const keeper = await openKeeper(browser, host);
    const cook = await openGuest(browser, host, keeper, "cook");
    const second = await openTab(keeper, "buying");
    await goTo(keeper.page, "buying");
    await goTo(cook.page, "buying");
    await keeper.page.getByText(sharing.here("Laptop (Buying)")).waitFor();
    await tick(second, 0).click();
    for (const page of [keeper.page, cook.page]) await seeTick(page, 0, true);
    await cook.page.getByText(sharing.tickedBy(sharing.otherDevice)).waitFor();
    // What another ticked is not for a cook to take back.
    await expect.poll(() => tick(cook.page, 0).isDisabled()).toBe(true);
    // What one does not find at the shelf, the other need not look for; either may find it.
    const missed = (page: Page) => page.locator(".buying-line").nth(2).getByText(furtherEn.shelf.notThere);
    await cook.page.locator(".buying-line").nth(2).getByRole("button", { name: furtherEn.shelf.kinds.gone }).click();
    await missed(second).waitFor();
    await second.getByRole("button", { name: furtherEn.shelf.isThere }).click();
    await missed(cook.page).waitFor({ state: "detached" });
    // The tab that talked is closed: the other goes on.
    await keeper.page.close();
    await tick(cook.page, 1).click();
    await seeTick(second, 1, true);
    await seeState(second, "together");
    await openPart(second);
    agree(second);
    await second.getByRole("button", { name: `${furtherEn.remove} Laptop` }).click();
    await cook.page.getByText(sharing.reasons.revoked ?? "").waitFor();
    for (const at of [0, 1]) await expect.poll(() => tick(cook.page, at).isChecked()).toBe(true);
    expect([...keeper.errors, ...cook.errors]).toEqual([]);
    await closeAll(keeper, cook);
  });

  test("goes on at both while the server is stopped; both agree once it is back, and the last of a lot used twice is to be counted", async () => {
    const first = await startLasting("stopped.sqlite");
    const keeper = await openKeeper(browser, first, ON_DEVICE);
    const cook = await openGuest(browser, first, keeper, "cook", ON_DEVICE);
    const apps = [keeper, cook];
    for (const { page } of apps) {
      await waitUntilKept(page);
      await goTo(page, "buying");
    }
    await first.stop();
    for (const [at, { page }] of apps.entries()) {
      await seeState(page, "apart");
      await tick(page, at).click();
      await goTo(page, "stores");
      await useUp(page);
      await page.getByText("entries wait to be sent").waitFor();
    }
    // How many they are is known by what is kept.
    await reloadPage(cook.page);
    await cook.page.getByText("entries wait to be sent").waitFor();
    const second = await startLasting("stopped.sqlite", first.port);
    for (const { page } of apps) {
      await seeState(page, "together");
      // Both uses stay, and what is wrong by them is told where the stores are.
      await page.getByRole("heading", { name: en.today.toCount }).waitFor();
      await expect.poll(() => page.locator("main").textContent()).not.toMatch(/[-−]\d+ g/);
    }
    await keeper.page.getByLabel(en.stores.grams).first().fill("0");
    await keeper.page.getByRole("button", { name: en.stores.counted }).first().click();
    for (const { page } of apps) {
      await page.getByRole("heading", { name: en.today.toCount }).waitFor({ state: "detached" });
      await goTo(page, "buying");
      for (const at of [0, 1]) await seeTick(page, at, true);
    }
    await expect.poll(() => tellTill(keeper.page)).toBe(await tellTill(cook.page));
    await closeAll(...apps);
    await second.stop();
  });

  test("gets back what a device may not do any more, with the reason: dropped there, or offered again once it may", async () => {
    const path = joinPath(folder, "returned.sqlite");
    const first = await startLasting("returned.sqlite");
    const keeper = await openKeeper(browser, first, ON_DEVICE);
    const cook = await openGuest(browser, first, keeper, "cook", ON_DEVICE);
    // What a tick brings on the page is loaded by then; without a server that takes an app that is kept.
    for (const { page } of [keeper, cook]) {
      await waitUntilKept(page);
      await goTo(page, "buying");
    }
    await first.stop();
    for (const at of [0, 1]) await tick(cook.page, at).click();
    await changeRole(path, cook.page, "reader");
    const sent: string[] = [];
    cook.page.on("websocket", (socket) => socket.on("framesent", ({ payload }) => sent.push(`${payload}`)));
    const second = await startLasting("returned.sqlite", first.port);
    await cook.page.getByText(sharing.roleHere.reader).first().waitFor();
    await cook.page.getByText("came back from the server").waitFor();
    for (const at of [0, 1]) await expect.poll(() => tick(keeper.page, at).isChecked()).toBe(false);
    await openPart(cook.page);
    await cook.page
      .getByText(sharing.refusals.role ?? "")
      .first()
      .waitFor();
    agree(cook.page);
    await cook.page.getByRole("button", { name: sharing.drop }).first().click();
    await expect.poll(() => cook.page.getByRole("button", { name: sharing.drop }).count()).toBe(1);
    // Offered again while it still may not, it is sent, and comes back once more.
    const countOffers = () => sent.filter((frame) => frame.includes('"bought"')).length;
    const offers = countOffers();
    await cook.page.getByRole("button", { name: sharing.offerAgain }).click();
    await expect.poll(countOffers).toBe(offers + 1);
    await cook.page.getByRole("button", { name: sharing.drop }).waitFor();
    await openPart(keeper.page);
    await keeper.page.getByLabel(sharing.mayOf("Laptop")).selectOption("cook");
    // What is left is offered again by itself as soon as the role is another.
    await cook.page.getByText(sharing.roleHere.cook).first().waitFor();
    await cook.page.getByRole("button", { name: sharing.drop }).waitFor({ state: "detached" });
    for (const { page } of [keeper, cook]) {
      await goTo(page, "buying");
      await expect.poll(() => page.locator(".buying-line input:checked").count()).toBe(1);
    }
    await keeper.page.getByText(sharing.tickedBy(sharing.otherDevice)).waitFor();
    await expect.poll(() => tellTill(keeper.page)).toBe(await tellTill(cook.page));
    await closeAll(keeper, cook);
    await second.stop();
  });

  test("is left and joined again in the copy that was kept, with what was done apart; deleted by its keeper it stays with all", async () => {
    const keeper = await openKeeper(browser, host);
    const cook = await openGuest(browser, host, keeper, "cook");
    await openPart(cook.page);
    agree(cook.page);
    await cook.page.getByRole("button", { name: sharing.leave }).click();
    await cook.page.getByText(sharing.withNobody).waitFor();
    await goTo(cook.page, "buying");
    await tick(cook.page, 0).click();
    // A device that is slow: it has said yes before its own copy is open, and that opens while it joins.
    await cook.page.addInitScript(openFirstLate);
    await beginJoining(cook.page, await invite(keeper.page, "cook"));
    await cook.page.evaluate(() => dispatchEvent(new Event("open-now")));
    await seeJoined(cook.page);
    await goTo(keeper.page, "buying");
    await seeTick(keeper.page, 0, true);
    await expect.poll(() => countKitchens(cook.page)).toBe(1);
    await openPart(keeper.page);
    agree(keeper.page);
    await keeper.page.getByRole("button", { name: sharing.deleteThere }).click();
    await cook.page.getByText(sharing.reasons.deleted ?? "").waitFor();
    await keeper.page.getByText(sharing.withNobody).waitFor();
    for (const { page } of [keeper, cook]) {
      await goTo(page, "buying");
      await seeTick(page, 0, true);
    }
    await closeAll(keeper, cook);
  });

  test("lets nobody in by an invitation that was revoked, used or is too old, and no address ever holds its secret", async () => {
    let nowMs = Date.now();
    const timed = await startHost({ files: buildApp(), now: () => nowMs });
    const membership = await makeKitchen(timed);
    const [revoked, used, old] = await Promise.all(
      [1, 2, 3].map(async () => answered(await desk.invite(membership, "cook", 1))),
    );
    if (revoked === undefined || used === undefined || old === undefined) throw new Error("no invitations");
    answered(await desk.revoke(membership, revoked.invitation));
    answered(await desk.join(used, "Somebody"));
    const visitor = await openVisitor(browser, timed);
    const asked: string[] = [];
    visitor.page.on("request", (request) => asked.push(request.url(), JSON.stringify(request.headers())));
    for (const each of [revoked, used, old]) {
      if (each === old) nowMs += 2 * 3_600_000;
      await visitor.page.goto(toInvitationLink(each));
      await visitor.page.reload();
      await visitor.page.getByRole("heading", { name: sharing.join }).waitFor();
      await visitor.page.goto(toInvitationLink(each));
      await visitor.page.getByRole("button", { name: sharing.joinIt }).click();
      await visitor.page.getByText(sharing.reasons["no-such-invitation"] ?? "").waitFor();
      expect(visitor.page.url()).toBe(`${timed.url}/join`);
      expect(JSON.stringify([asked, timed.journal])).not.toContain(each.code);
      await visitor.page.getByRole("button", { name: sharing.notNow }).click();
    }
    await closeAll(visitor);
    await timed.stop();
  });

  test("comes whole to a device whose joining was broken off, when that opens the app again", async () => {
    const keeper = await openKeeper(browser, host);
    const link = await invite(keeper.page, "cook");
    const guest = await openVisitor(browser, host);
    // The network is gone as soon as the invitation is used up.
    const cut = new Promise<void>((resolve) => {
      void guest.page.routeWebSocket(/sync/, (socket) => {
        void socket.close();
        resolve();
      });
    });
    await guest.page.goto(link);
    await guest.page.getByRole("button", { name: sharing.joinIt }).click();
    await cut;
    await guest.page.getByText(sharing.comes).waitFor();
    await guest.page.close();
    const again = await guest.context.newPage();
    await again.goto("/");
    await seeState(again, "together");
    await goTo(again, "buying");
    await goTo(keeper.page, "buying");
    await tick(again, 0).click();
    await seeTick(keeper.page, 0, true);
    await expect.poll(() => tellTill(again)).toBe(await tellTill(keeper.page));
    await closeAll(keeper, guest);
  });

  test("is told when the server can't keep anything; ticks go on, and are there once it can", async () => {
    const store = openSqliteHost(joinPath(folder, "full.sqlite"));
    let isFull = false;
    const append: HostStore["append"] = (push) =>
      isFull ? Promise.resolve({ ok: false, reason: "full", detail: "no space is left" }) : store.append(push);
    const filling = new Proxy(store, {
      get: (target, name) => {
        const value: unknown = name === "append" ? append : Reflect.get(target, name);
        return typeof value === "function" ? value.bind(target) : value;
      },
    });
    const full = await startHost({ files: buildApp(), store: filling });
    const keeper = await openKeeper(browser, full);
    const cook = await openGuest(browser, full, keeper, "cook");
    for (const { page } of [keeper, cook]) await goTo(page, "buying");
    isFull = true;
    await tick(cook.page, 0).click();
    await cook.page.getByText(sharing.reasons.storage ?? "").waitFor();
    await tick(cook.page, 1).click();
    await seeTick(cook.page, 1, true);
    await expect.poll(() => tick(keeper.page, 0).isChecked()).toBe(false);
    isFull = false;
    for (const at of [0, 1]) await seeTick(keeper.page, at, true);
    await cook.page.getByText(sharing.reasons.storage ?? "").waitFor({ state: "detached" });
    await closeAll(keeper, cook);
    await full.stop();
  });
});

/** Holds the first database that a page opens back until it is told to open now. */
function openFirstLate(): void {
  const told = new Promise((resolve) => addEventListener("open-now", resolve, { once: true }));
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function (name, version) {
    IDBFactory.prototype.open = open;
    const request = open.call(this, name, version);
    Object.defineProperty(request, "onsuccess", {
      set: (hear: () => void) => request.addEventListener("success", () => void told.then(hear)),
    });
    return request;
  };
}

/** Another tab of the same device. */
async function openTab({ context }: OpenApp, screen: Parameters<typeof goTo>[1]): Promise<Page> {
  const page = await context.newPage();
  await page.goto("/");
  await goTo(page, screen);
  return page;
}

/** Tells that the first lot is used up. */
async function useUp(page: Page): Promise<void> {
  const lot = page.locator(".lot").first();
  await lot.locator("summary").click();
  await lot.getByRole("button", { name: furtherEn.lot.usedUp }).click();
}

/** How many kitchens the device has, those taken off its list among them. */
function countKitchens(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const databases = await indexedDB.databases();
    return databases.filter(({ name }) => name?.startsWith("kitchen-")).length;
  });
}

/** Gives the device of a page another role, while its server is stopped. */
async function changeRole(path: string, page: Page, role: Role): Promise<void> {
  const shared = await page.evaluate(() => {
    const name = Object.keys(localStorage).find((each) => localStorage[each]?.includes("credential"));
    return localStorage[name ?? ""] as string;
  });
  const { kitchen, device } = JSON.parse(shared) as Membership;
  const store = openSqliteHost(path);
  expect(await store.changeRole(kitchen, device, role)).toBe("done");
  await store.close();
}

async function closeAll(...apps: readonly OpenApp[]): Promise<void> {
  for (const { context } of apps) await context.close();
}
