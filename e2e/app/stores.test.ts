import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp } from "./openApp.ts";
import { saveBackup } from "./saveBackup.ts";

const { accounts, foundHere, packDate, whyWasted } = furtherEn;

describe.skipIf(!hasBrowser)("what is told of the stores", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("why something is thrown away is told with it, whole or in part, and the accounts add it up by reason", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "stores");
    const lots = page.locator("details.lot");
    const count = await lots.count();
    const whole = lots.first();
    await whole.locator("summary").click();
    await whole.getByLabel(whyWasted.why).selectOption(whyWasted.reasons.mishap);
    await whole.getByRole("button", { name: en.stores.allWasted }).click();
    await expect.poll(() => lots.count()).toBe(count - 1);
    const part = lots.last();
    await part.locator("summary").click();
    await part.getByLabel(whyWasted.why).selectOption(whyWasted.reasons.spoilt);
    await part.getByLabel(en.stores.grams).fill("20");
    expect(await judgePage(page)).toEqual([]);
    await part.getByRole("button", { name: en.stores.wasted }).click();
    await expect.poll(() => part.getByLabel(en.stores.grams).inputValue()).toBe("");
    await goTo(page, "accounts");
    const reasons = page.getByRole("table", { name: accounts.wasteWhy });
    await reasons.getByRole("row", { name: whyWasted.reasons.mishap }).waitFor();
    await expect
      .poll(() => reasons.getByRole("row", { name: whyWasted.reasons.spoilt }).textContent())
      .toMatch(/20\sg/);
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("something found is put there by the keyboard, open and of unknown cost: that stays unknown; undo takes it away", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "stores");
    const lots = page.locator("details.lot");
    const count = await lots.count();
    await page.getByRole("button", { name: foundHere.begin }).press("Enter");
    await page.getByLabel(foundHere.find).fill("no food is called so");
    await page.getByText(foundHere.noneFound).waitFor();
    await find(page, "honey");
    // The next thing to tell is under the hand.
    await expect.poll(() => page.getByLabel(foundHere.grams).evaluate(isFocused)).toBe(true);
    await page.keyboard.type("250");
    await expect.poll(() => page.getByLabel(foundHere.grams).inputValue()).toBe("250");
    await page.getByLabel(foundHere.place).selectOption("dry-store");
    await page.getByLabel(foundHere.isOpen).press("Space");
    const [day = ""] = new Date(Date.now() + 40 * 86_400_000).toISOString().split("T");
    await page.getByLabel(foundHere.date).fill(day);
    await page.getByLabel(foundHere.dateKind).selectOption(foundHere.dateKinds.bestBefore);
    expect(await judgePage(page)).toEqual([]);
    await page.getByLabel(foundHere.grams).press("Enter");
    await expect.poll(() => lots.count()).toBe(count + 1);
    await expect.poll(() => page.getByRole("button", { name: foundHere.begin }).evaluate(isFocused)).toBe(true);
    const lot = lots.filter({ hasText: "honey" }).filter({ hasText: "250 g" });
    await lot.locator("summary").click();
    const told = (await lot.locator(".telling > p").first().textContent()) ?? "";
    expect(told).toContain(foundHere.costUnknown);
    await lot.getByRole("button", { name: packDate.atItsBest("").split(" .")[0] }).waitFor();
    const rows = await saveBackup(page);
    const stocked = rows.findLast((row) => (row as { kind: string }).kind === "stocked");
    expect(stocked).toMatchObject({ stock: { massG: 250, costMinor: 0, costUnknown: true, bestBefore: day } });
    await goTo(page, "stores");
    await page.getByRole("button", { name: en.today.undo }).click();
    await expect.poll(() => lots.count()).toBe(count);
    // Where it is known what it cost, that is told of it.
    await page.getByRole("button", { name: foundHere.begin }).click();
    await find(page, "honey");
    await page.getByLabel(foundHere.grams).fill("250");
    await page.getByLabel(foundHere.cost).fill("12.34");
    await page.getByRole("button", { name: foundHere.put }).click();
    await lot.locator("summary").click();
    await lot.getByText(en.stores.left("€12.34")).waitFor();
    // The week was planned without it, so Today tells of it.
    await goTo(page, "today");
    await page
      .locator("section[aria-labelledby=follow]")
      .getByText(/honey.*250\sg/i)
      .waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** Runs in the page. */
function isFocused(element: Element): boolean {
  return element === document.activeElement;
}

/** Looks for a food by its name and takes the first that is offered. */
async function find(page: Page, name: string): Promise<void> {
  await page.getByLabel(foundHere.find).fill(name);
  await page.locator("section[aria-labelledby=found]").getByRole("button", { name }).first().press("Enter");
}
