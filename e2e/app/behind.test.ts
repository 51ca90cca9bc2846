import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { goTo, openApp, SIZES } from "./openApp.ts";

const { allergens, edit, impossible, kitchen, mended, other, save, week } = furtherEn;

/** Has the first eater avoid allergens from now on. */
async function avoid(page: Page, avoided: readonly string[]): Promise<void> {
  await goTo(page, "kitchen");
  const heading = page.getByRole("heading", { name: kitchen.eaters, exact: true });
  const part = page.locator("details.fold", { has: heading });
  await heading.click();
  await part.getByRole("button", { name: edit }).first().click();
  await part.getByText(kitchen.avoids).click();
  for (const allergen of avoided) await part.getByLabel(allergen, { exact: true }).check();
  await part.getByRole("button", { name: save }).click();
  await part.getByText(mended.behind.here).waitFor();
}

describe.skipIf(!hasBrowser)("a kitchen that is changed under an accepted week", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("says so where it is edited, tells what collides where the week is to follow, and a tap sets what is enough", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "kitchen");
    await page.getByRole("heading", { name: kitchen.limits }).click();
    const part = page.locator("details.fold", { has: page.getByRole("heading", { name: kitchen.limits }) });
    await part.getByLabel(kitchen.budget).fill("4.00");
    await part.getByRole("button", { name: save }).click();
    await part.getByText(mended.behind.here).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await part.getByRole("link", { name: mended.behind.way }).click();
    const section = page.locator("section[aria-labelledby=behind]");
    await section.getByRole("button", { name: mended.ask }).click();
    await section.getByText(mended.none).waitFor();
    await section.getByText(impossible.collision.limits.budget).waitFor();
    const way = section.getByRole("group", { name: impossible.way(1) });
    await way.getByRole("button", { name: impossible.apply }).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await way.getByRole("button", { name: impossible.apply }).click();
    await section.getByRole("button", { name: new RegExp(`^(${mended.accept}|${mended.keep})$`) }).click();
    await section.waitFor({ state: "detached" });
    await goTo(page, "kitchen");
    await page.getByRole("heading", { name: kitchen.limits }).click();
    await expect.poll(async () => Number(await part.getByLabel(kitchen.budget).inputValue())).toBeGreaterThan(4);
    await expect.poll(() => part.getByText(mended.behind.here).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("names at once the plates that are not for an eater any more, and has none of them once the week followed", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await avoid(page, [allergens.milk]);
    await goTo(page, "today");
    const section = page.locator("section[aria-labelledby=behind]");
    await section.getByRole("heading", { name: mended.behind.against.title }).waitFor();
    await expect.poll(() => section.locator("li").count()).toBeGreaterThan(0);
    expect(await judgePage(page)).toEqual([]);
    await section.getByRole("button", { name: mended.ask }).click();
    await section.getByRole("button", { name: mended.accept }).click();
    await section.waitFor({ state: "detached" });
    await goTo(page, "menu");
    await page.getByRole("heading", { level: 1 }).waitFor();
    await expect.poll(() => section.count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("is given reasons with no menu to take that has on a plate what its eater does not take, and warns wherever such a dish is cooked", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await avoid(page, [allergens.milk, allergens.gluten]);
    await goTo(page, "menu");
    await page.locator("section[aria-labelledby=behind] li").first().waitFor();
    await page.locator(".ribbons-station").filter({ hasText: en.sittings.evening }).last().click();
    const panel = page.locator("section.panel");
    await panel.getByRole("button", { name: week.why, exact: true }).click();
    await panel.getByText(week.worth).waitFor();
    await panel.getByText(week.notShown).first().waitFor();
    await expect.poll(() => panel.getByRole("button", { name: week.showIt }).count()).toBe(0);
    expect(await judgePage(page)).toEqual([]);
    await goTo(page, "today");
    const plate = page.locator("section[aria-labelledby=behind] li").first();
    const [, dish = ""] = /: (.+) is not for /.exec((await plate.textContent()) ?? "") ?? [];
    await goTo(page, "dishes");
    await page.getByRole("link", { name: dish }).first().click();
    const warning = page.locator(".dishes-against");
    await warning.getByText(dish).first().waitFor();
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("link", { name: furtherEn.dishes.toWork }).click();
    const begin = page.getByRole("button", { name: en.work.begin });
    await begin.waitFor();
    await warning.getByText(dish).first().waitFor();
    expect(await judgePage(page)).toEqual([]);
    await begin.click();
    await page.locator(".next-step .dishes-against").getByText(dish).first().waitFor();
    const [told, foot] = await Promise.all([warning.boundingBox(), page.locator(".tell-steps").boundingBox()]);
    expect((told?.y ?? Number.NaN) + (told?.height ?? Number.NaN)).toBeLessThanOrEqual(foot?.y ?? Number.NaN);
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("another dish, and one moved by keyboard or mouse, say what collides where no menu has them there", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), {
      storageState: inject("planned"),
      viewport: SIZES.laptop,
    });
    await goTo(page, "kitchen");
    await page.getByRole("heading", { name: kitchen.limits }).click();
    const part = page.locator("details.fold", { has: page.getByRole("heading", { name: kitchen.limits }) });
    await part.getByLabel(kitchen.budget).fill("4.00");
    await part.getByRole("button", { name: save }).click();
    await part.getByText(mended.behind.here).waitFor();
    await goTo(page, "menu");
    const stations = page.locator(".ribbons-station");
    const evenings = stations.filter({ hasText: en.sittings.evening });
    await evenings.last().click();
    const panel = page.locator("section.panel");
    const limit = panel.locator(".why-none").getByText(impossible.collision.limits.budget);
    await panel.getByRole("button", { name: other.want }).click();
    // Some dishes can't be had whatever the limits are.
    const said = panel.locator(".told");
    await panel.getByRole("radio").first().waitFor();
    for (const label of await panel.locator(".move-targets label").all()) {
      await label.click();
      await said.filter({ hasText: (await label.textContent()) ?? "" }).waitFor();
      if ((await said.textContent())?.includes(other.breaks(""))) break;
    }
    await limit.waitFor();
    await panel.getByRole("button", { name: impossible.apply }).first().waitFor();
    expect(await judgePage(page)).toEqual([]);
    await panel.getByRole("button", { name: week.move }).click();
    await panel
      .locator("form:not(.want) .move-targets label")
      .filter({ hasText: /evening/i })
      .last()
      .click();
    await limit.waitFor();
    await panel.getByRole("button", { name: week.close }).click();
    await panel.waitFor({ state: "detached" });
    // A plate let go where it can't be has the same said of it.
    await evenings.last().hover();
    await page.mouse.down();
    const over = await evenings.nth(-2).boundingBox();
    if (over === null) throw new Error("no other evening is shown");
    await page.mouse.move(over.x + over.width / 2, over.y + over.height / 2, { steps: 5 });
    await page.locator(".moving").waitFor();
    await page.mouse.up();
    await limit.waitFor();
    await panel.getByRole("button", { name: impossible.apply }).first().click();
    await page.getByRole("button", { name: en.menu.accept }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
