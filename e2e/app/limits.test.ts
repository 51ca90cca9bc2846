import { loadDemoKitchens } from "@halfloaf/data";
import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import { daysBetween, moveDates } from "halfloaf/quantity";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage, listSmall } from "./judgePage.ts";
import { goTo, openApp, takePlan } from "./openApp.ts";

const { finish, kitchen, later, lot, save, saved, edit, remove } = furtherEn;
const SOUP = { id: "split-pea-root-soup", title: "Split pea soup with roots and smoked paprika" };

describe.skipIf(!hasBrowser)("what a plan keeps to and weighs", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("rules of variety are said, refused with the reason, changed and taken away; the worth of things is set", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await goTo(page, "kitchen");
    await unfold(page, kitchen.variety);
    await page.getByText(kitchen.noRule).waitFor();
    await page.getByRole("button", { name: kitchen.addRule }).click();
    await page.getByLabel(kitchen.alike).selectOption({ label: kitchen.same.main });
    await page.getByLabel(kitchen.daysApart).fill("");
    await press(page, save);
    await page.getByText(kitchen.ruleIssues.nothing).waitFor();
    await page.getByLabel(kitchen.mostPerWeek).fill("2");
    await page.getByLabel(kitchen.daysApart).fill("1");
    await press(page, save);
    await page.getByText(kitchen.ruleIssues.apart).waitFor();
    await page.getByLabel(kitchen.daysApart).fill("3");
    await page.getByLabel(en.sittings.evening, { exact: true }).check();
    expect(await judgePage(page)).toEqual([]);
    await expect.poll(() => page.evaluate(listSmall, 48)).toEqual([]);
    await press(page, save);
    const told = [kitchen.ruleMost(2), kitchen.ruleApart(3), en.sittings.evening].join("; ");
    await page.getByText(told, { exact: true }).waitFor();
    await page.getByRole("button", { name: `${edit} ${kitchen.same.main}` }).click();
    await press(page, remove);
    await page.getByText(kitchen.noRule).waitFor();
    await page.getByRole("button", { name: en.today.undo }).last().click();
    await page.getByText(told, { exact: true }).waitFor();

    await unfold(page, kitchen.worthTitle);
    await page.getByLabel(kitchen.vesselMinutes).fill("3.5");
    await page.getByLabel(kitchen.dislikePoint).fill("0.20");
    // Of a whole reference intake the kitchen's file says 4 and 12.
    await expect.poll(() => page.getByLabel(kitchen.shortFirst).inputValue()).toBe("0.40");
    await expect.poll(() => page.getByLabel(kitchen.shortRest).inputValue()).toBe("1.20");
    await page.getByLabel(kitchen.shortRest).fill("0.75");
    await press(page, save);
    await page.getByText(saved, { exact: true }).waitFor();
    await goTo(page, "today");
    await goTo(page, "kitchen");
    await unfold(page, kitchen.worthTitle);
    await expect.poll(() => page.getByLabel(kitchen.vesselMinutes).inputValue()).toBe("3.5");
    await expect.poll(() => page.getByLabel(kitchen.dislikePoint).inputValue()).toBe("0.20");
    await expect.poll(() => page.getByLabel(kitchen.shortRest).inputValue()).toBe("0.75");
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("portions put by come in with a file, are asked for, planned, and told to the stores by the stove", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"));
    const today = await page.evaluate(() => new Date().toISOString().slice(0, 10));
    const content = JSON.stringify(withFreezer(today));
    await page
      .getByLabel(en.first.restoreChoose)
      .setInputFiles({ name: "kitchen.json", mimeType: "application/json", buffer: Buffer.from(content) });
    await page.getByText(en.today.noMenu).waitFor();
    await goTo(page, "stores");
    const boxes = page.locator(".lot", { hasText: SOUP.title });
    await expect.poll(() => boxes.allTextContents()).toEqual([expect.stringContaining(lot.portions(3, "3"))]);

    await goTo(page, "kitchen");
    await unfold(page, kitchen.puttingBy);
    await page.getByLabel(kitchen.putBy).check();
    await page.getByLabel(kitchen.boxCounts.least).fill("3");
    await press(page, save);
    await page.getByText(kitchen.boxOrder).waitFor();
    await page.getByLabel(kitchen.boxCounts.least).fill("1");
    expect(await judgePage(page)).toEqual([]);
    await expect.poll(() => page.evaluate(listSmall, 48)).toEqual([]);
    await press(page, save);
    await page.getByText(kitchen.boxes(2, "2"), { exact: true }).waitFor();

    await goTo(page, "menu");
    await page.getByRole("button", { name: en.menu.plan }).click();
    await page.getByRole("region", { name: later.title }).waitFor();
    await takePlan(page);
    expect(await judgePage(page)).toEqual([]);

    await page.goto(`/work?dish=${SOUP.id}&portions=4`);
    await page.getByRole("button", { name: en.work.begin }).click();
    await cookToTheEnd(page);
    await page.getByLabel(finish.boxes(2, "2")).fill("2");
    await page.getByRole("button", { name: finish.book }).click();
    await goTo(page, "stores");
    await expect.poll(() => boxes.count()).toBe(3);
    expect(await judgePage(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** A kitchen of the demo's with a freezer and cooked soup in it. */
function withFreezer(today: string): unknown {
  const demo = loadDemoKitchens().find(({ name }) => name === "one-ring")?.content as {
    readonly startsOn: string;
    readonly kit: object;
  };
  const moved = moveDates(demo, daysBetween(demo.startsOn, today)) as typeof demo;
  const box = { id: "soup-box", dish: SOUP.id, portions: 3, place: "freezer", cookedOn: today, costMinor: 210 };
  return { ...moved, kit: { ...moved.kit, freezerLitres: 20 }, putBy: [box] };
}

async function cookToTheEnd(page: Page): Promise<void> {
  const done = page.getByRole("button", { name: furtherEn.stove.toStores });
  const step = page.locator(".tell-steps").getByRole("button", { name: en.work.done });
  for (let steps = 0; steps < 40; steps++) {
    await done.or(step).first().waitFor();
    if (await done.isVisible()) break;
    await step.first().click();
  }
  await done.click();
}

async function unfold(page: Page, title: string): Promise<void> {
  await page.locator("summary", { has: page.getByRole("heading", { name: title, exact: true }) }).click();
}

/** Presses the one button of that name in the form that is open last. */
async function press(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name, exact: true }).last().click();
}
