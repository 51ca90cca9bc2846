import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, type OpenApp, openApp, reloadPage, SIZES } from "./openApp.ts";
import { tabTo } from "./tabTo.ts";

const { week } = furtherEn;
/** What is said of a move that can be made: where to, what it costs, and how much changes. */
const COST = new RegExp(`^To .+: (€[\\d.]+ (more|less)|${week.same}), \\d+ plates? changes?\\.$`);

describe.skipIf(!hasBrowser)("a plate moved to another sitting", () => {
  let browser: Browser;
  /** Positions of a plate and of a sitting that it can be moved to, as the first test found them. */
  let move: { readonly from: number; readonly to: number } | undefined;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  const open = async (viewport: { width: number; height: number }): Promise<OpenApp> => {
    const app = await openApp(browser, inject("appUrl"), { storageState: inject("planned"), viewport });
    await goTo(app.page, "menu");
    return app;
  };

  test("by the keyboard: each sitting is told with its cost, Escape leaves all as it was, Enter moves it", async () => {
    const { page, context, errors } = await open(SIZES.laptop);
    const before = await readPlates(page);
    const button = page.getByRole("button", { name: week.move });
    let [from, to] = [-1, undefined as number | undefined];
    // What a dish can be moved to is the plan's affair.
    while (to === undefined && from < 8) {
      await tabTo(page, station(page, ++from), from === 0 ? "Tab" : "Shift+Tab");
      await page.keyboard.press("Enter");
      await tabTo(page, button);
      await page.keyboard.press("Enter");
      await tabTo(page, page.getByRole("radio").first());
      to = await arrowToFit(page, from);
      if (to === undefined) await page.keyboard.press("Escape");
    }
    if (to === undefined) throw new Error("no sitting takes any of the plates");
    await page.keyboard.press("Escape");
    await page.getByRole("radio").first().waitFor({ state: "detached" });
    await expect.poll(() => button.evaluate((each) => each === document.activeElement)).toBe(true);
    await expect.poll(() => readPlates(page)).toEqual(before);
    await expect.poll(() => page.getByRole("button", { name: en.menu.accept }).count()).toBe(0);

    await page.keyboard.press("Enter");
    await tabTo(page, page.getByRole("radio").first());
    expect(await arrowToFit(page, from)).toBe(to);
    await page.keyboard.press("Enter");
    const accept = page.getByRole("button", { name: en.menu.accept });
    await accept.waitFor();
    await expect.poll(() => readPlates(page)).toMatchObject({ [to]: before[from] });
    await tabTo(page, accept, "Shift+Tab");
    await page.keyboard.press("Enter");
    await accept.waitFor({ state: "detached" });
    await reloadPage(page);
    await page.locator(".ribbons-station").first().waitFor();
    await expect.poll(() => readPlates(page)).toMatchObject({ [to]: before[from] });
    expect(errors).toEqual([]);
    move = { from, to };
    await context.close();
  });

  test("by the mouse: it is told while it is held, Escape puts it back, let go it is moved", async () => {
    const { page, context, errors } = await open(SIZES.laptop);
    const { from, to } = move ?? { from: 0, to: 4 };
    const before = await readPlates(page);
    const told = page.locator(".moving");
    await drag(page, from, to);
    await told.filter({ hasText: COST }).waitFor();
    await page.keyboard.press("Escape");
    await told.waitFor({ state: "detached" });
    await page.mouse.up();
    await expect.poll(() => readPlates(page)).toEqual(before);
    await expect.poll(() => page.getByRole("button", { name: en.menu.accept }).count()).toBe(0);

    await drag(page, from, to);
    await told.filter({ hasText: COST }).waitFor();
    await page.mouse.up();
    await page.getByRole("button", { name: en.menu.accept }).waitFor();
    await expect.poll(() => readPlates(page)).toMatchObject({ [to]: before[from] });
    await page.getByRole("button", { name: en.menu.leave }).click();
    await expect.poll(() => readPlates(page)).toEqual(before);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("by a finger that rests on it, and at the edge of a small page has the other days come by", async () => {
    const { page, context, errors } = await open(SIZES.phone);
    const { from, to } = move ?? { from: 0, to: 4 };
    const before = await readPlates(page);
    const touch = await context.newCDPSession(page);
    const put = (type: "touchStart" | "touchMove" | "touchEnd", touchPoints: readonly Point[]) =>
      touch.send("Input.dispatchTouchEvent", { type, touchPoints: [...touchPoints] });
    await station(page, from).scrollIntoViewIfNeeded();
    const held = await middleOf(station(page, from));
    await put("touchStart", [held]);
    await page.locator(".ribbons-held").waitFor();
    // A finger that rests at the edge has the picture scroll by until the other sitting comes.
    const { width } = SIZES.phone;
    await put("touchMove", [{ x: width - 20, y: held.y }]);
    await expect.poll(async () => (await middleOf(station(page, to))).x).toBeLessThan(width - 60);
    // Off the edge the picture stands still, so that the sitting stays where it is seen.
    await put("touchMove", [{ x: width / 2, y: held.y }]);
    await put("touchMove", [await middleOf(station(page, to))]);
    await page.locator(".moving").filter({ hasText: COST }).waitFor();
    await put("touchEnd", []);
    await page.getByRole("button", { name: en.menu.accept }).waitFor();
    await expect.poll(() => readPlates(page)).toMatchObject({ [to]: before[from] });
    expect(errors).toEqual([]);
    await context.close();
  });
});

interface Point {
  readonly x: number;
  readonly y: number;
}

async function middleOf(where: Locator): Promise<Point> {
  const box = await where.boundingBox();
  if (box === null) throw new Error(`${where} is not shown`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Takes a plate up with the mouse and holds it over another sitting. */
async function drag(page: Page, from: number, to: number): Promise<void> {
  await station(page, from).hover();
  await page.mouse.down();
  const { x, y } = await middleOf(station(page, to));
  await page.mouse.move(x, y, { steps: 5 });
}

function station(page: Page, at: number) {
  return page.locator(`.ribbons-station[data-sitting="${at}"]`);
}

/** The dish of each sitting as the ribbons show it. */
function readPlates(page: Page): Promise<string[]> {
  return page
    .locator(".ribbons-station")
    .evaluateAll((all) =>
      all
        .toSorted((a, b) => Number(a.getAttribute("data-sitting")) - Number(b.getAttribute("data-sitting")))
        .map((each) => each.lastElementChild?.textContent ?? ""),
    );
}

/** Goes by arrows to the first sitting that the plate can be moved to, hearing of each before the next; its position, undefined where there is none. */
async function arrowToFit(page: Page, from: number): Promise<number | undefined> {
  const labels = await page
    .locator(".move-targets label > span")
    .evaluateAll((all) => all.map((each) => each.firstChild?.textContent ?? ""));
  const kinds = await page
    .locator(".ribbons-station")
    .evaluateAll((all) => all.map((each) => each.firstElementChild?.textContent?.toLowerCase() ?? ""));
  const positions = kinds.flatMap((kind, at) =>
    at !== from && labels.some((each) => each.endsWith(kind)) ? [at] : [],
  );
  expect(positions.length).toBe(labels.length);
  const status = page.locator("form p[role=status]");
  await page.keyboard.press("Space");
  for (const [at, label] of labels.entries()) {
    await status.filter({ hasText: label }).waitFor();
    if (COST.test(((await status.textContent()) ?? "").trim())) return positions[at] as number;
    await page.keyboard.press("ArrowDown");
  }
  return undefined;
}
