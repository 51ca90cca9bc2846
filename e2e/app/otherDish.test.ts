import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp, reloadPage, takePlan } from "./openApp.ts";

const { other, week } = furtherEn;
/** What is said of a dish that can be had: what it costs, and how much changes. */
const COST = new RegExp(`: (€[\\d.]+ (more|less)|${week.same}), \\d+ plates? changes?\\.`);
const SITTING = 2;

describe.skipIf(!hasBrowser)("any dish of the kitchen", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("is had at a sitting by the keyboard, once it is told what it costs; one that is missed is told why", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "menu");
    const plate = page.locator(`.ribbons-station[data-sitting="${SITTING}"]`);
    await plate.click();
    const button = page.getByRole("button", { name: other.want });
    await button.press("Enter");
    const form = page.locator("form.want");
    await form.getByLabel(other.find).press("Escape");
    await form.waitFor({ state: "detached" });
    await expect.poll(() => button.evaluate((each) => each === document.activeElement)).toBe(true);
    await button.press("Enter");

    await form.getByLabel(other.find).fill("no dish is called so");
    await form.getByText(other.noneFound).waitFor();
    await form.getByLabel(other.find).fill("");
    const title = await chooseFit(page);
    await page.keyboard.press("Enter");
    await plate.filter({ hasText: title }).waitFor();
    await takePlan(page);
    await reloadPage(page);
    await plate.filter({ hasText: title }).waitFor();

    await page.locator(".why-absent > summary").click();
    await page.locator(".why-absent input[type=search]").fill(title);
    await page.locator(".why-absent input[type=radio]").first().check();
    const told = page.locator(".absent");
    await told.getByText(title).waitFor();
    await expect.poll(() => told.textContent()).toContain(other.served("").slice(0, -1));
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** Goes by arrows to the first dish that can be had there, hearing of each before the next; its title. */
async function chooseFit(page: Page): Promise<string> {
  const form = page.locator("form.want");
  const titles = await form.locator(".move-targets label").allTextContents();
  await form.getByRole("radio").first().press("Space");
  for (const title of titles) {
    const told = form.locator(".told").filter({ hasText: title });
    await told.waitFor();
    if (COST.test((await told.textContent()) ?? "")) return title;
    await page.keyboard.press("ArrowDown");
  }
  throw new Error(`none of these can be had at sitting ${SITTING}: ${titles.join("; ")}`);
}
