import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Locator } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp, reloadPage, seeScreen } from "./openApp.ts";

const { follow, foundHere, mended, packDate } = furtherEn;

describe.skipIf(!hasBrowser)("the date on a pack", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("is told after the tick, which stays one touch; one too early names the plates in danger, and the plan follows it", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "buying");
    const today = await page.evaluate(() => {
      const now = new Date();
      return `${now.getFullYear()}-${`${now.getMonth() + 1}`.padStart(2, "0")}-${`${now.getDate()}`.padStart(2, "0")}`;
    });
    const lines = page.locator(".buying-line");
    const danger = page.locator(".in-danger");
    const line = await findNeeded(lines, danger, today);
    await danger.getByRole("listitem").first().waitFor();
    expect(await judgePage(page)).toEqual([]);
    await danger.getByRole("button", { name: mended.ask }).click();
    await danger.getByRole("button", { name: mended.accept }).waitFor();
    await goTo(page, "today");
    const news = page.locator("section[aria-labelledby=follow]");
    await news.getByText(follow.count(1)).waitFor();
    await news.getByRole("button", { name: mended.ask }).click();
    await news.getByRole("button", { name: mended.accept }).click();
    await news.waitFor({ state: "detached" });
    await goTo(page, "buying");
    await line.getByRole("checkbox").waitFor();
    await expect.poll(() => danger.count()).toBe(0);
    await reloadPage(page);
    await seeScreen(page);
    await line.getByRole("button", { name: packDate.mustGo("").split(" .")[0] }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("of a lot in the stores is changed by the keyboard and taken away again", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "stores");
    const lot = page.locator("details.lot").filter({ hasText: "egg" }).first();
    await lot.locator("summary").press("Enter");
    const button = lot.getByRole("button", { name: packDate.of("egg") });
    await button.press("Enter");
    await lot.getByLabel(packDate.date, { exact: true }).fill("2050-03-04");
    await lot.getByLabel(foundHere.dateKind).selectOption(foundHere.dateKinds.bestBefore);
    expect(await judgePage(page)).toEqual([]);
    await lot.getByRole("button", { name: packDate.note }).press("Enter");
    await button.filter({ hasText: packDate.atItsBest("4 Mar 2050") }).waitFor();
    await expect.poll(() => button.evaluate((each) => each === document.activeElement)).toBe(true);
    await button.press("Enter");
    await lot.getByRole("button", { name: packDate.none }).press("Enter");
    await button.filter({ hasText: packDate.tell }).waitFor();
    await page.getByRole("button", { name: en.today.undo }).click();
    await button.filter({ hasText: packDate.atItsBest("4 Mar 2050") }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** Ticks lines and says of each that it must be used by that day, until one is needed later; that line, wherever the list has it. */
async function findNeeded(lines: Locator, danger: Locator, date: string): Promise<Locator> {
  for (let at = 0; at < (await lines.count()); at++) {
    const line = lines.nth(at);
    await line.getByRole("checkbox").click();
    const tell = line.getByRole("button", { name: packDate.tell });
    await tell.click();
    await line.getByLabel(packDate.date, { exact: true }).fill(date);
    await line.getByLabel(foundHere.dateKind).selectOption(foundHere.dateKinds.useBy);
    await line.getByRole("button", { name: packDate.note }).click();
    await tell.waitFor({ state: "detached" });
    if ((await danger.count()) === 0) continue;
    const label = (await line.locator(".tick-words > span").first().textContent()) ?? "";
    return lines.filter({ hasText: label.replace(/^\d+ × /, "") }).first();
  }
  throw new Error("nothing that is bought is needed later");
}
