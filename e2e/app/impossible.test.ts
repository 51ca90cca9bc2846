import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, makeDemo, type OpenApp, openApp, SIZES } from "./openApp.ts";
import { tabTo } from "./tabTo.ts";

const { impossible, kitchen } = furtherEn;

describe.skipIf(!hasBrowser)("a week that can't keep every limit", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  /** A demo kitchen with these limits set in Kitchen, on a Monday, asked for its plan. */
  const ask = async (limits: Readonly<Record<string, string>>, viewport: typeof SIZES.phone | typeof SIZES.laptop) => {
    const app: OpenApp = await openApp(browser, inject("appUrl"), { now: "2027-03-01T08:00:00", viewport });
    const { page } = app;
    await makeDemo(page, "one-ring");
    const part = await openLimits(page);
    for (const [label, value] of Object.entries(limits)) await part.getByLabel(label).fill(value);
    await part.getByRole("button", { name: furtherEn.save }).click();
    await part.getByText(furtherEn.saved).waitFor();
    await goTo(page, "menu");
    await page.getByRole("button", { name: en.menu.plan }).click();
    await page.getByRole("heading", { name: impossible.ways }).waitFor();
    return app;
  };

  test("says which collide, and a tap on the smallest step sets all of it and leads to a plan", async () => {
    const limits = { [kitchen.budget]: "28.00", [kitchen.trips]: "1", [kitchen.evenings]: "7", [kitchen.uses]: "1" };
    const { page, context, errors } = await ask(limits, SIZES.phone);
    const collide = impossible.collision.collide(
      ["budget", "uses"].map((kind) => impossible.collision.limits[kind as "budget" | "uses"]),
    );
    await page.getByText(collide).waitFor();
    const way = page.getByRole("group", { name: impossible.way(1) });
    const knobs = await way.locator(".slider").evaluateAll((all) =>
      all.map((each) => {
        const slider = each.querySelector("input") as HTMLInputElement;
        return { name: slider.labels?.[0]?.textContent ?? "", value: slider.valueAsNumber, least: Number(slider.min) };
      }),
    );
    const set = (limit: string): number | undefined => knobs.find(({ name }) => name.startsWith(limit))?.value;
    expect(knobs.length).toBeGreaterThan(0);
    expect(knobs.every(({ value, least }) => value > least)).toBe(true);
    await way.getByRole("button", { name: impossible.apply }).tap();
    await page.getByRole("button", { name: en.menu.accept }).tap();
    await page.getByRole("button", { name: en.menu.planAnew }).waitFor();
    await expect.poll(() => page.locator(".ribbons-station").count()).toBe(28);
    const [, till] = (await page.getByRole("main").textContent())?.match(/€([\d.]+) to pay at the tills/) ?? [];
    expect(Number(till) * 100).toBeLessThanOrEqual(set(impossible.limits.budget) ?? 2800);
    const part = await openLimits(page);
    const fields = ["budget", "trips", "uses"] as const;
    for (const limit of fields) {
      const now = Number(await part.getByLabel(kitchen[limit]).inputValue()) * (limit === "budget" ? 100 : 1);
      const before = Number(limits[kitchen[limit]]) * (limit === "budget" ? 100 : 1);
      expect(now, limit).toBeCloseTo(set(impossible.limits[limit]) ?? before);
    }
    expect(errors).toEqual([]);
    await context.close();
  });

  test("is helped by the keyboard alone: arrows turn the limit further, Enter sets it and the plan is taken", async () => {
    const { page, context, errors } = await ask({ [kitchen.budget]: "15.00" }, SIZES.laptop);
    const slider = page.getByRole("slider");
    const enough = Number(await slider.inputValue());
    expect(enough).toBeGreaterThan(1500);
    await tabTo(page, slider);
    await page.keyboard.press("ArrowRight");
    expect(Number(await slider.inputValue())).toBeGreaterThan(enough);
    const told = await slider.getAttribute("aria-valuetext");
    await tabTo(page, page.getByRole("button", { name: impossible.apply }));
    await page.keyboard.press("Enter");
    const accept = page.getByRole("button", { name: en.menu.accept });
    await tabTo(page, accept);
    await page.keyboard.press("Enter");
    await accept.waitFor({ state: "detached" });
    await page.locator(".ribbons-station").first().waitFor();
    await goTo(page, "kitchen");
    const brief = page.locator("summary", { has: page.getByRole("heading", { name: kitchen.limits }) });
    await expect.poll(() => brief.textContent()).toContain(told);
    expect(errors).toEqual([]);
    await context.close();
  });
});

async function openLimits(page: Page) {
  await goTo(page, "kitchen");
  await page.getByRole("heading", { name: kitchen.limits }).click();
  return page.locator("details.fold", { has: page.getByRole("heading", { name: kitchen.limits }) });
}
