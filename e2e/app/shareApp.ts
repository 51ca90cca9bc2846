import type { TestHost } from "@halfloaf/server/testing/host";
import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Locator, Page } from "playwright-core";
import { expect, inject } from "vitest";
import {
  goTo,
  type KeptState,
  type OpenApp,
  type OpenOptions,
  openApp,
  seeScreen,
  waitUntilOnDisk,
} from "./openApp.ts";

const { sharing } = furtherEn;

/** What the browser keeps of the planned kitchen, as if it had come from that server. */
function plannedAt(origin: string): KeptState {
  const { origins, ...rest } = inject("planned");
  return { ...rest, origins: origins.map((each) => ({ ...each, origin })) };
}

/** A phone with the planned kitchen, shared on that server, which has all of it. */
export async function openKeeper(browser: Browser, host: TestHost, options?: OpenOptions): Promise<OpenApp> {
  const keeper = await openApp(browser, host.url, { storageState: plannedAt(host.url), ...options });
  await openPart(keeper.page);
  await keeper.page.getByRole("button", { name: sharing.share }).click();
  await seeState(keeper.page, "together");
  return keeper;
}

/** A laptop that was let in by the keeper, in that role. */
export async function openGuest(
  browser: Browser,
  host: TestHost,
  keeper: OpenApp,
  role: "keeper" | "cook" | "reader",
  options?: OpenOptions,
): Promise<OpenApp> {
  const guest = await openVisitor(browser, host, options);
  await join(guest.page, await invite(keeper.page, role));
  return guest;
}

/** A laptop that has nothing of the app yet. */
export function openVisitor(browser: Browser, host: TestHost, options?: OpenOptions): Promise<OpenApp> {
  return openApp(browser, host.url, { viewport: { width: 1280, height: 800 }, ...options });
}

/** Waits until the page says that its device stands so to the server. */
export async function seeState(page: Page, kind: keyof typeof sharing.states): Promise<void> {
  await page.getByRole("link", { name: sharing.states[kind], exact: true }).waitFor();
}

/** Opens "Shared with" in Kitchen. */
export async function openPart(page: Page): Promise<void> {
  await goTo(page, "kitchen");
  await page.getByRole("heading", { name: sharing.title }).click();
}

/** Makes an invitation, and gives its link; "Shared with" stays open. */
export async function invite(page: Page, role: "keeper" | "cook" | "reader"): Promise<string> {
  if (!(await page.getByRole("button", { name: sharing.makeInvitation }).isVisible())) await openPart(page);
  await page.getByLabel(sharing.may).selectOption(role);
  const field = page.getByLabel(sharing.link);
  const before = (await field.isVisible()) ? await field.inputValue() : undefined;
  await page.getByRole("button", { name: sharing.makeInvitation }).click();
  await expect.poll(async () => (await field.isVisible()) && (await field.inputValue()) !== before).toBe(true);
  await page.getByRole("img", { name: sharing.qr }).waitFor();
  return field.inputValue();
}

/** Opens the link and says yes; nothing else is asked, and the secret does not stay in the address. */
async function join(page: Page, link: string): Promise<void> {
  await beginJoining(page, link);
  await seeJoined(page);
}

/** Opens the link and says yes. */
export async function beginJoining(page: Page, link: string): Promise<void> {
  const { origin, host } = new URL(link);
  await waitUntilOnDisk(page);
  await page.goto(link);
  await page.getByText(sharing.joinSure(host)).waitFor();
  expect(page.url()).toBe(`${origin}/join`);
  await page.getByRole("button", { name: sharing.joinIt }).click();
}

/** Waits until the kitchen that was joined is on the page. */
export async function seeJoined(page: Page): Promise<void> {
  await seeState(page, "together");
  await seeScreen(page);
  await expect.poll(() => page.getByText(en.today.noMenu).count()).toBe(0);
}

/** Says yes to whatever the page asks next. */
export function agree(page: Page): void {
  page.once("dialog", (dialog) => void dialog.accept());
}

/** A tick of the list. */
export function tick(page: Page, at: number): Locator {
  return page.locator(".buying-line input[type=checkbox]").nth(at);
}

/** Waits until a tick of the list stands so. */
export async function seeTick(page: Page, at: number, isTicked: boolean): Promise<void> {
  await expect.poll(() => tick(page, at).isChecked()).toBe(isTicked);
}

/** What the till says. */
export function tellTill(page: Page): Promise<string | null> {
  return page.locator(".till").textContent();
}
