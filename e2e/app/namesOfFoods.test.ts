import { de } from "@halfloaf/web/words/de";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, openApp, openAt, seeScreen } from "./openApp.ts";

describe.skipIf(!hasBrowser)("names of foods", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("are German where the app speaks it, also in a kitchen that was made in English, and found as they are typed", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), {
      storageState: inject("planned"),
      locale: "de-AT",
    });
    await goTo(page, "stores", de);
    await page.getByText("Zwiebel", { exact: true }).first().waitFor();
    await expect.poll(() => page.getByText("onion", { exact: true }).count()).toBe(0);
    await openAt(page, "/dishes/foods");
    await seeScreen(page, de);
    for (const asked of ["Möhre", "moehre", "RUEEBLI", "carrot"]) {
      await page.getByRole("searchbox").fill(asked);
      await page.getByRole("link", { name: "Karotte", exact: true }).waitFor();
    }
    expect(errors).toEqual([]);
    await context.close();
  });

  test("are not fetched in German by an English visitor before foods are searched for, and found there as well", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "stores");
    await page.getByText("onion", { exact: true }).first().waitFor();
    expect(await page.evaluate(listFetched)).toContain("/foods.json");
    expect(await page.evaluate(listFetched)).not.toContain("/foods.de.json");
    await goTo(page, "dishes");
    await page.getByRole("link", { name: furtherEn.dishes.foods, exact: true }).click();
    await page.getByRole("heading", { level: 1, name: furtherEn.foods.title, exact: true }).waitFor();
    await page.getByRole("searchbox").fill("Rüebli");
    await page.getByRole("link", { name: "Carrot", exact: true }).waitFor();
    await goTo(page, "prices");
    await page.getByRole("searchbox").fill("Weisskohl");
    await page.getByRole("link", { name: "white cabbage", exact: true }).waitFor();
    await expect.poll(() => page.getByRole("link", { name: "banana", exact: true }).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});

function listFetched(): string[] {
  return performance.getEntriesByType("resource").map(({ name }) => new URL(name).pathname);
}
