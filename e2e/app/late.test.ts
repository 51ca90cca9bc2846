import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, makeDemo, openApp, reloadPage, takePlan } from "./openApp.ts";

const { morning, midday, evening } = en.sittings;

describe.skipIf(!hasBrowser)("a plan that is made in the afternoon", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("says what of today is over, and has nothing of that, also when it is read back", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { now: "2027-03-01T16:30:00" });
    await makeDemo(page, "one-ring");
    await goTo(page, "menu");
    await page.getByRole("button", { name: en.menu.plan }).click();
    await page.getByText(furtherEn.week.over([morning, midday].join(", "))).waitFor();
    await page.getByText(en.menu.legend).waitFor();
    await takePlan(page);
    await goTo(page, "today");
    const jobsOf = (sitting: string) => page.locator(".lines").getByText(sitting, { exact: true });
    await jobsOf(evening).first().waitFor();
    await reloadPage(page);
    await jobsOf(evening).first().waitFor();
    await expect.poll(() => jobsOf(morning).or(jobsOf(midday)).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
