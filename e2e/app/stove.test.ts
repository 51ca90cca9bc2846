import { en } from "@halfloaf/web/words";
import { de } from "@halfloaf/web/words/de";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, type OpenApp, openApp } from "./openApp.ts";

const { stove } = furtherEn;

/** What the page has asked of the device. */
interface Asked {
  readonly shakes: { readonly pattern: readonly number[]; readonly isDone: boolean }[];
  /** The state of the sound at each tone. */
  readonly tones: string[];
  /** How each request to keep the screen awake came out. */
  readonly locks: string[];
}

describe.skipIf(!hasBrowser)("by the stove", () => {
  let browser: Browser;
  let app: OpenApp;
  beforeAll(async () => {
    browser = await openBrowser();
    app = await openApp(browser, inject("appUrl"), {
      storageState: inject("planned"),
      permissions: ["screen-wake-lock"],
      now: "2027-03-01T18:00:00",
    });
    await app.context.addInitScript(listen);
  });
  afterAll(() => browser?.close());

  test("what to measure out stands there before the cook begins, and with the step that takes it first", async () => {
    const { page } = app;
    await page.goto("/work?dish=creamy-macaroni-broccoli-cheddar&portions=6");
    const main = page.getByRole("main");
    await main.getByRole("heading", { name: furtherEn.dishes.makings }).waitFor();
    await expect
      .poll(() => main.getByRole("listitem").filter({ hasText: "broccoli" }).first().textContent())
      .toMatch(/^750 g /);
    await page.getByRole("button", { name: en.work.begin }).click();
    await expect.poll(() => page.locator(".next-step .taken").textContent()).toMatch(/^750 g \S*broccoli$/);
    await page.getByText(en.work.allSteps).click();
    await page.getByText("1.05 L of water").waitFor();
    await page.getByRole("button", { name: en.work.end }).click();
  });

  test.each([
    ["English", "en-IE", en],
    ["German", "de-DE", de],
  ] as const)(
    "what tells a step done is in sight above the ways, at one place, however long the cautions are, in %s",
    async (_, locale, words) => {
      const told = await openApp(browser, inject("appUrl"), { storageState: inject("planned"), locale });
      const { page } = told;
      await page.goto("/work?dish=pork-oat-dumplings-tomato-broth&portions=2");
      await page.getByRole("button", { name: words.work.begin }).click();
      const text = page.locator(".next-text");
      const done = page.locator(".tell-steps").getByRole("button", { name: words.work.done, exact: true });
      const caution = page.locator(".next-step .caution").last();
      // Cautions about raw meat and what the dish asks for come with its first two steps.
      for (let step = 0; step < 2; step++) {
        const before = (await text.textContent()) ?? "";
        await expect.poll(() => done.evaluate(isInSight)).toBe(true);
        expect(await caution.evaluate(isInSight)).toBe(false);
        await caution.evaluate((element) => element.scrollIntoView({ block: "center" }));
        expect(await caution.evaluate(isInSight)).toBe(true);
        expect(await text.evaluate(isInSight)).toBe(false);
        expect(await done.evaluate(isInSight)).toBe(true);
        await done.click();
        await expect.poll(() => text.textContent()).not.toBe(before);
        await expect.poll(() => text.evaluate(isInSight)).toBe(true);
      }
      expect(told.errors).toEqual([]);
      await told.context.close();
    },
  );

  test("the screen is kept awake once the cook begins", async () => {
    const { page } = app;
    await page.goto("/work?dish=red-lentil-cumin-soup-pitta&portions=2");
    await page.getByRole("button", { name: en.work.begin }).waitFor();
    expect((await readAsked(page)).locks).toEqual([]);
    await page.getByRole("button", { name: en.work.begin }).click();
    await expect.poll(async () => (await readAsked(page)).locks).toEqual(["taken"]);
  });

  test("who is late has the rest timed anew, who is done early is ready sooner", async () => {
    const { page } = app;
    const before = await readReady(page);
    await page.clock.fastForward("10:00");
    await page.getByText(stove.behind(10)).waitFor();
    await page.getByRole("button", { name: en.work.late }).click();
    await expect.poll(() => readReady(page)).toBe(before + 10);
    await page.getByRole("button", { name: en.work.done, exact: true }).click();
    await expect.poll(() => readReady(page)).toBeLessThan(before + 10);
  });

  test("what goes on by itself rings and shakes while another screen is open, and again until it is told done", async () => {
    const { page } = app;
    const started = page.getByRole("button", { name: en.work.started });
    const done = page.getByRole("button", { name: en.work.done, exact: true });
    const text = page.locator(".next-text");
    while (!(await started.isVisible())) {
      const told = await text.textContent();
      await done.first().click();
      await expect.poll(() => text.textContent()).not.toBe(told);
    }
    await started.click();
    const timer = page.getByRole("timer");
    const [minutes = 0, seconds = 0] = ((await timer.textContent()) ?? "").split(":").map(Number);
    expect(minutes * 60 + seconds).toBeGreaterThan(0);
    // The kettle of a soup for four, which is cooked for two.
    const water = page.getByRole("listitem").filter({ has: timer }).getByText("650 mL of water");
    await water.waitFor();
    await goTo(page, "buying");
    const bar = page.getByRole("link", { name: en.work.goesOn });
    await bar.getByText("650 mL of water").waitFor();
    expect((await readAsked(page)).shakes).toEqual([]);
    await page.clock.fastForward((minutes * 60 + seconds) * 1000);
    await bar.filter({ hasText: en.work.left(0) }).waitFor();
    await expect.poll(async () => (await readAsked(page)).shakes.length).toBe(1);
    const { shakes, tones } = await readAsked(page);
    expect(shakes[0]?.isDone).toBe(true);
    expect(tones).toEqual(["running", "running", "running"]);
    await page.clock.fastForward("00:31");
    await expect.poll(async () => (await readAsked(page)).shakes.length).toBe(2);
    await bar.click();
    await page.getByText(stove.over, { exact: true }).waitFor();
    const ringing = page.getByRole("region", { name: stove.over });
    await expect.poll(() => ringing.getByRole("timer").evaluate(isInSight)).toBe(true);
    await expect
      .poll(() => ringing.getByRole("button", { name: en.work.done, exact: true }).evaluate(isInSight))
      .toBe(true);
    await page.getByRole("button", { name: stove.longer }).click();
    await expect.poll(async () => (await timer.textContent()) ?? "").toMatch(/^(2:00|1:5\d)$/);
    await page
      .getByRole("listitem")
      .filter({ has: timer })
      .getByRole("button", { name: en.work.done, exact: true })
      .click();
    await timer.waitFor({ state: "detached" });
    await page.clock.fastForward("05:00");
    expect((await readAsked(page)).shakes.length).toBe(2);
    expect(app.errors).toEqual([]);
  });
});

/** Runs in the page: true where nothing lies over any corner of an element and all of it is on the screen. */
function isInSight(element: Element): boolean {
  const { left, right, top, bottom } = element.getBoundingClientRect();
  // Corners are round.
  const inset = 12;
  return [left + inset, right - inset].every((x) =>
    [top + inset, bottom - inset].every((y) => element.contains(document.elementFromPoint(x, y))),
  );
}

/** Runs in the page before the app: notes what is asked of the device, and lets the device do it. */
function listen(): void {
  const asked: Asked = { shakes: [], tones: [], locks: [] };
  Object.assign(window, { asked });
  const shake = navigator.vibrate.bind(navigator);
  navigator.vibrate = (pattern) => {
    const times = typeof pattern === "number" ? [pattern] : [...pattern];
    const isDone = shake(times);
    asked.shakes.push({ pattern: times, isDone });
    return isDone;
  };
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (when) {
    asked.tones.push(this.context.state);
    start.call(this, when);
  };
  const request = navigator.wakeLock.request.bind(navigator.wakeLock);
  navigator.wakeLock.request = async (type) => {
    try {
      const lock = await request(type);
      asked.locks.push("taken");
      return lock;
    } catch (error) {
      asked.locks.push(String(error));
      throw error;
    }
  };
}

function readAsked(page: Page): Promise<Asked> {
  return page.evaluate(() => (window as unknown as { asked: Asked }).asked);
}

/** When all is ready, in minutes since midnight. */
async function readReady(page: Page): Promise<number> {
  const [, hours, minutes] = (await page.getByRole("main").textContent())?.match(/ready at (\d+):(\d+)/) ?? [];
  return Number(hours) * 60 + Number(minutes);
}
