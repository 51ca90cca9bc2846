import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, type OpenApp, openApp } from "./openApp.ts";

const { stove, finish, kitchen, pace } = furtherEn;
const DISH = "/work?dish=red-lentil-cumin-soup-pitta&portions=2";

describe.skipIf(!hasBrowser)("the hands by the stove", () => {
  let browser: Browser;
  let app: OpenApp;
  beforeAll(async () => {
    browser = await openBrowser();
    app = await openApp(browser, inject("appUrl"), {
      storageState: inject("planned"),
      now: "2027-03-01T18:00:00",
    });
  });
  afterAll(() => browser?.close());

  test("two pairs of them each have their own next step, and rows of their own", async () => {
    const { page } = app;
    await page.goto(DISH);
    await page.getByLabel(stove.twoCooks).check();
    await page
      .locator(".timeline-row")
      .filter({ hasText: `${en.work.rows.hands} 2` })
      .waitFor();
    await page.getByRole("button", { name: en.work.begin }).click();
    await page.locator(".next-step").nth(1).waitFor();
    const told = await page.locator(".next-step").allTextContents();
    expect(told.map((each) => /Cook \d/.exec(each)?.[0])).toEqual([1, 2].map((cook) => stove.cook(cook)));
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("button", { name: en.work.end }).click();
  });

  test("their pace is learned from steps told as they were done, is shown, and set back", async () => {
    const { page } = app;
    await page.goto(DISH);
    await page.getByRole("button", { name: en.work.begin }).click();
    await cookSlowly(page);
    await page.getByRole("button", { name: stove.toStores }).click();
    const learn = page.getByLabel(new RegExp(finish.learn(2).split("2")[0] ?? ""));
    await learn.waitFor();
    await expect.poll(() => learn.isChecked()).toBe(true);
    await page.getByRole("button", { name: finish.book }).click();
    await goTo(page, "kitchen");
    await page.locator("summary", { hasText: kitchen.pace }).click();
    await page.getByRole("button", { name: `${pace.back} ${pace.kinds.cut}` }).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await page.goto(DISH);
    await page.getByText(stove.atPace).waitFor();
    await goTo(page, "kitchen");
    await page.locator("summary", { hasText: kitchen.pace }).click();
    await page.getByRole("button", { name: pace.allBack }).click();
    await page.getByText(pace.none).waitFor();
    await page.getByRole("button", { name: en.today.undo }).click();
    await page.getByRole("button", { name: `${pace.back} ${pace.kinds.cut}` }).waitFor();
    expect(app.errors).toEqual([]);
  });
});

/** Tells each step done four minutes after the one before, until all are. */
async function cookSlowly(page: Page): Promise<void> {
  const text = page.locator(".next-text");
  const done = page.locator(".tell-steps").getByRole("button", { name: en.work.done, exact: true });
  await text.waitFor();
  for (let told = await text.textContent(); told !== stove.allDone; told = await text.textContent()) {
    await page.clock.fastForward("04:00");
    await done.click();
    await expect.poll(() => text.textContent()).not.toBe(told);
  }
}
