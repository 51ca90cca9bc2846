import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage, listSmall } from "./judgePage.ts";
import { goTo, openApp, seeScreen, waitUntilOnDisk } from "./openApp.ts";
import { tellCrackers } from "./tellCrackers.ts";

const { dishes, foodForm, foodRead, foods, mapping, source, edit, save } = furtherEn;
const TABLE = [
  "Harbour board table of foods;;;;;",
  "No.;Food;kJ;Protein (g);Fat (g);Salt (g)",
  "A1;Oats, rolled, dry;1580;13,4;7,1;0,01",
  "A2;Limpets, boiled;400;17,5;<1;(0,9)",
  "A3;;1;1;1;1",
].join("\n");

describe.skipIf(!hasBrowser)("foods of one's own and figures from elsewhere", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("an own food is written down once all that can hurt is said, seen as own, changed, taken back and removed", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await openFoods(page);
    await page.getByRole("link", { name: foods.write }).click();
    await page.getByLabel(foodForm.name, { exact: true }).fill("Kelp crackers");
    await page.getByRole("button", { name: save, exact: true }).click();
    await page.getByText(foodForm.problems.allergens).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await expect.poll(() => page.evaluate(listSmall, 48)).toEqual([]);
    await tellCrackers(page);
    await page.getByRole("button", { name: save, exact: true }).click();
    await page.getByRole("heading", { level: 1, name: "Kelp crackers" }).waitFor();
    await page.getByText(foods.own, { exact: true }).waitFor();
    await page.getByRole("row", { name: "Sodium 600 mg" }).waitFor();
    await page.getByRole("row", { name: /^Energy .*reckoned.* 1,715 kJ$/ }).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("link", { name: edit }).click();
    await page.getByLabel("Protein (g)").fill("9.5");
    await page.getByRole("button", { name: save, exact: true }).click();
    await page.getByRole("row", { name: "Protein 9.5 g" }).waitFor();
    await page.getByRole("button", { name: en.today.undo }).click();
    await page.getByRole("row", { name: "Protein 9 g" }).waitFor();
    // A dish that is written down may be made of it, and then it stays.
    await waitUntilOnDisk(page);
    await page.goto("/dishes/write");
    await seeScreen(page);
    await page.getByLabel(furtherEn.reading.dishTitle).fill("Crackers on a plate");
    await page.getByLabel(furtherEn.reading.makings).fill("100 g kelp crackers\n50 g unsalted butter");
    await page.getByLabel(furtherEn.reading.method).fill("Lay out the crackers for 2 minutes.");
    await page.getByRole("button", { name: furtherEn.write.next }).click();
    await page.getByRole("button", { name: furtherEn.reading.save }).click();
    await page.getByRole("heading", { level: 1, name: "Crackers on a plate" }).waitFor();
    await page.getByText(foods.sources).click();
    await page.getByRole("link", { name: /^Kelp crackers/ }).click();
    await page.getByText(foods.usesOf.dish("Crackers on a plate")).waitFor();
    await expect.poll(() => page.getByRole("button", { name: foods.remove }).isDisabled()).toBe(true);
    await page.goBack();
    await page.getByRole("button", { name: dishes.removeOwn }).click();
    await openFoods(page);
    await page.getByRole("link", { name: /^Kelp crackers/ }).click();
    await page.getByRole("button", { name: foods.remove }).click();
    await page.getByRole("heading", { level: 1, name: foods.title, exact: true }).waitFor();
    await expect.poll(() => page.getByRole("link", { name: /^Kelp crackers/ }).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("figures of a table are taken for a food of ours: guessed, seen beside ours, kept with their source, given back", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await openFoods(page);
    await page.getByRole("link", { name: foods.readIn }).click();
    await page.getByLabel(foodRead.text).fill(TABLE);
    await page.getByRole("button", { name: source.read, exact: true }).click();
    await page.getByText(foodRead.formOpen).waitFor();
    await page.getByLabel(foodRead.tableTitle).fill("Harbour board table");
    await page.getByText(foodRead.read(2, 8)).waitFor();
    await page.getByText(mapping.faultAt(5, "Food")).waitFor();
    await page.getByText(mapping.form).click();
    const protein = page
      .locator("label.field")
      .filter({ hasText: /^Protein/ })
      .locator("select");
    await expect.poll(() => protein.inputValue()).toBe("Protein (g)");
    await expect.poll(() => page.getByLabel(foodRead.salt).isChecked()).toBe(true);
    expect(await judgePage(page)).toEqual([]);
    await expect.poll(() => page.evaluate(listSmall, 48)).toEqual([]);
    await page.getByLabel(foodRead.ourFood).selectOption("oats-rolled");
    await page.getByRole("button", { name: /^Oats, rolled, dry/ }).click();
    await page.getByRole("row", { name: /^Protein .* 13.4 g$/ }).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("button", { name: foodRead.take }).click();
    await page.getByText(foodRead.noChange).waitFor();
    await page.getByRole("link", { name: foods.all }).click();
    await page.getByRole("link", { name: new RegExp(foods.changed) }).click();
    await page.getByText(/^Figures taken from Harbour board table, A1/).waitFor();
    await page.getByRole("row", { name: /^Protein Harbour board table, A1.* 13.4 g$/ }).waitFor();
    await page.getByRole("button", { name: foods.giveBack }).click();
    await page.getByText(foods.givenBack).waitFor();
    await page.getByRole("button", { name: en.today.undo }).click();
    await page.getByRole("button", { name: foods.giveBack }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("a download and foods that another kitchen saved are read from files, these as one act; what does not fit is refused whole", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await openFoods(page);
    await page.getByRole("link", { name: foods.readIn }).click();
    const own = (id: string) => ({
      name: "own.json",
      mimeType: "application/json",
      buffer: Buffer.from(
        JSON.stringify({
          format: "halfloaf-foods",
          version: 1,
          foods: [
            {
              id,
              group: "bread",
              names: { british: ["kelp crackers"], american: ["kelp crackers"] },
              diet: "vegan",
              hygiene: "ready-to-eat",
              allergens: { eu: ["gluten"], us: ["wheat"] },
              refusePct: 0,
              keeping: { unopened: { "dry-store": 90 }, opened: { "dry-store": 14 }, authority: "the label" },
              source: "the label",
              composition: { energyKj: 1715, energyKcal: 410, proteinG: 9 },
            },
          ],
        }),
      ),
    });
    // A download is known by what stands in it, and what is chosen in it stays.
    const oats = {
      fdcId: 1,
      dataType: "SR Legacy",
      description: "Cereals, oats",
      ndbNumber: 8120,
      foodNutrients: [{ nutrient: { number: "203", unitName: "g" }, amount: 14.25 }],
    };
    const download = Buffer.from(JSON.stringify({ SRLegacyFoods: [oats] }));
    await page
      .getByLabel(foodRead.file)
      .setInputFiles({ name: "legacy.json", mimeType: "application/json", buffer: download });
    await page.getByText(foodRead.read(1, 1)).waitFor();
    await page.getByLabel(foodRead.ourFood).selectOption("oats-rolled");
    await page.getByRole("row", { name: /^Protein .* 14.25 g$/ }).waitFor();
    await page.getByRole("button", { name: source.again }).click();
    await page.getByLabel(foodRead.file).setInputFiles(own("oats-rolled"));
    await page.getByText(foodRead.refused).waitFor();
    await page.getByRole("button", { name: source.again }).click();
    await page.getByLabel(foodRead.file).setInputFiles(own("kelp-crackers"));
    await page.getByText(foodRead.brought(1, 0)).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("button", { name: foodRead.keep }).click();
    await page.getByText(foodRead.kept).waitFor();
    await page.getByRole("button", { name: en.today.undo }).click();
    await expect.poll(() => page.getByRole("button", { name: foodRead.keep }).isEnabled()).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });
});

async function openFoods(page: Page): Promise<void> {
  await goTo(page, "dishes");
  await page.getByRole("link", { name: dishes.foods, exact: true }).click();
  await page.getByRole("heading", { level: 1, name: foods.title, exact: true }).waitFor();
}
