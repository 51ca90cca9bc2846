import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp, reloadPage, seeScreen } from "./openApp.ts";

const { shelf } = furtherEn;

describe.skipIf(!hasBrowser)("what is not at the shelf", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("stays remembered on the trip where the list is left as it is, after a reload too, until it is there after all or bought", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "buying");
    const till = page.locator(".till");
    const before = await till.textContent();
    const lines = page.locator(".buying-line");
    const missed = (at: number) => lines.nth(at).getByText(shelf.notThere);
    for (const at of [0, 1]) {
      const line = lines.nth(at);
      await line.getByRole("button", { name: shelf.kinds.gone }).click();
      await missed(at).waitFor();
      await line.getByRole("button", { name: shelf.leave }).click();
    }
    // What is not there is not paid at this till.
    await expect.poll(() => till.textContent()).not.toBe(before);
    await reloadPage(page);
    await seeScreen(page);
    await missed(0).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await lines.nth(0).getByRole("button", { name: shelf.isThere }).click();
    await missed(0).waitFor({ state: "detached" });
    // It is an act like any other.
    await page.getByRole("button", { name: en.today.undo }).click();
    await missed(0).waitFor();
    await page.getByRole("button", { name: en.today.redo }).click();
    await missed(0).waitFor({ state: "detached" });
    await lines.nth(1).getByRole("checkbox").click();
    await missed(1).waitFor({ state: "detached" });
    await lines.nth(1).getByRole("checkbox").click();
    await expect.poll(() => lines.nth(1).getByRole("checkbox").isChecked()).toBe(false);
    // What was bought and was not has never been there.
    await missed(1).waitFor();
    await lines.nth(1).getByRole("button", { name: shelf.isThere }).click();
    await missed(1).waitFor({ state: "detached" });
    await expect.poll(() => till.textContent()).toBe(before);
    expect(errors).toEqual([]);
    await context.close();
  });
});
