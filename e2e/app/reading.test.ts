import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage, listSmall } from "./judgePage.ts";
import { goTo, openApp, seeScreen, waitUntilOnDisk } from "./openApp.ts";
import { tellCrackers } from "./tellCrackers.ts";

const { list, mapping, priced, prices, receipt, source, edit } = furtherEn;
const SHOP = "Turnstone Discount";
const GONE = "Quell Corner";
const LIST = [
  "Offers of the week;;;",
  "Article;Price;Holds;Day",
  "Baking powder, 80 g;0,55;80 g;28.11.2026",
  "BKG PWDR;0,59;;28.11.2026",
  "Sea kelp crackers 200g;2,49;;28.11.2026",
  "Bad one;abc;;",
  ";1,00;;",
].join("\n");

describe.skipIf(!hasBrowser)("prices are read in", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test("from a list that is pasted: what was guessed is shown, every row has its fate, all faults are told, and it is kept as one act", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await openReading(page, prices.readList);
    await page.getByLabel(list.text).fill(LIST);
    await page.getByRole("button", { name: source.read }).click();
    await page.getByLabel(list.shop).selectOption({ label: SHOP });
    // What is wrong is told by line and column, and the rows are left out.
    const faults = page.locator("details", { has: page.getByRole("heading", { name: mapping.faults(2) }) });
    await expect
      .poll(() => faults.getByRole("listitem").allTextContents())
      .toEqual([
        `${mapping.faultAt(6, "Price")}: "abc" ${list.faultWords.price}. ${mapping.rowLeftOut}`,
        `${mapping.faultAt(7, "Article")}: ${list.faultWords.label}. ${mapping.rowLeftOut}`,
      ]);
    await page.getByText(mapping.form).click();
    await expect.poll(() => page.getByLabel(mapping.delimiter).inputValue()).toBe(";");
    await expect.poll(() => page.getByLabel(mapping.decimal).inputValue()).toBe(",");
    await expect.poll(() => page.getByLabel(mapping.headerLine).inputValue()).toBe("2");
    await expect.poll(() => page.getByLabel(list.columns.label).inputValue()).toBe("Article");
    expect(await judgePage(page)).toEqual([]);
    await expect.poll(() => page.evaluate(listSmall, 48)).toEqual([]);
    // One row is a pack by its label, one is said to be it, one becomes a new pack.
    await page.getByText(`${priced.counts(1, 0, 2, 0)}.`).waitFor();
    const row = (name: string) => page.getByRole("listitem").filter({ hasText: name });
    await row("BKG PWDR").getByLabel(priced.another).selectOption({ label: "Baking powder, 80 g" });
    await row("BKG PWDR").getByText(priced.by.memory).waitFor();
    await row("Sea kelp").getByRole("button", { name: priced.makeNew }).click();
    // A food that is not among them is written down beside it, and can be chosen then.
    const toForm = row("Sea kelp").getByRole("link", { name: furtherEn.writeFood });
    const [form] = await Promise.all([page.waitForEvent("popup"), toForm.click()]);
    await form.getByLabel(furtherEn.foodForm.name, { exact: true }).fill("Kelp crackers");
    await tellCrackers(form);
    await form.getByRole("button", { name: furtherEn.save, exact: true }).click();
    await form.getByRole("heading", { level: 1, name: "Kelp crackers" }).waitFor();
    await waitUntilOnDisk(form);
    await form.close();
    await row("Sea kelp").getByLabel(priced.food).selectOption({ label: "Kelp crackers" });
    await row("Sea kelp").getByRole("button", { name: priced.make, exact: true }).click();
    await page.getByRole("button", { name: priced.keep(2, 1, 1) }).click();
    await page.getByText(`${priced.kept(2, 1, 1)}.`).waitFor();
    await page.getByRole("button", { name: en.today.undo }).click();
    await page.getByRole("button", { name: priced.keep(2, 1, 1) }).waitFor();
    await page.getByRole("button", { name: en.today.redo }).click();
    await page.getByText(`${priced.kept(2, 1, 1)}.`).waitFor();
    // What was said is remembered, on a receipt too, and the prices are there.
    await page.getByRole("link", { name: prices.all }).click();
    await openReading(page, prices.readReceipt);
    await page.getByLabel(receipt.text).fill(`${SHOP}\n29.11.2026\nBKG PWDR 0.65\nTotal 0.65`);
    await page.getByRole("button", { name: source.read }).click();
    await page.getByText(priced.by.memory).waitFor();
    await page.getByText(priced.soFar("€0.59")).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("from a receipt: what a line is said to mean is remembered after a reload; one that does not add up is not kept", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    const read = async (text: string): Promise<void> => {
      await openReading(page, prices.readReceipt);
      await page.getByLabel(receipt.text).fill(text);
      await page.getByRole("button", { name: source.read }).click();
    };
    await read(`${SHOP}\n28.11.2026\nBY LVS 0.65\nCLOTH 1.00\nTotal 1.65`);
    const line = page.getByRole("listitem").filter({ hasText: "BY LVS" });
    await line.getByLabel(priced.another).selectOption({ label: "Bay leaves, 6 g" });
    await page
      .getByRole("listitem")
      .filter({ hasText: "CLOTH" })
      .getByRole("button", { name: priced.leaveOut })
      .click();
    await page.getByText(`${priced.counts(1, 0, 0, 1)}.`).waitFor();
    expect(await judgePage(page)).toEqual([]);
    await page.getByRole("button", { name: priced.keep(1, 0, 1) }).click();
    await page.getByText(`${priced.kept(1, 0, 1)}.`).waitFor();
    await waitUntilOnDisk(page);
    await page.goto("/prices");
    await seeScreen(page);
    await read(`${SHOP}\n29.11.2026\nBY LVS 0.69\nTotal 9.99`);
    await line.getByText(priced.by.memory).waitFor();
    await page.locator("p.caution", { hasText: receipt.balance.apart }).waitFor();
    await expect.poll(() => page.getByRole("button", { name: priced.keep(1, 0, 0) }).isDisabled()).toBe(true);
    await page.getByRole("button", { name: receipt.change }).click();
    await page.getByLabel(receipt.text).fill(`${SHOP}\n29.11.2026\nBY LVS 0.69\nTotal 0.69`);
    await page.getByRole("button", { name: source.read }).click();
    // What is known can be said anew, by keyboard alone.
    const change = line.getByRole("button", { name: edit });
    await change.focus();
    await page.keyboard.press("Enter");
    await line.getByRole("button", { name: priced.leaveOut }).focus();
    await page.keyboard.press("Enter");
    await line.getByText(priced.leftOut, { exact: true }).waitFor();
    await line.getByRole("button", { name: priced.takeIn }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.getByRole("button", { name: priced.keep(1, 0, 0) }).isEnabled()).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("where a shop is removed, its packs are told to go; where one shop is left, a receipt is of that one unasked", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    const { kitchen } = furtherEn;
    await goTo(page, "kitchen");
    const part = page.locator("details", { has: page.getByRole("heading", { name: kitchen.shops, exact: true }) });
    await part.locator("summary").click();
    const row = part.getByRole("listitem").filter({ hasText: GONE });
    const packs = Number(/(\d+) packs known/.exec((await row.textContent()) ?? "")?.[1]);
    expect(packs).toBeGreaterThan(1);
    await row.getByRole("button", { name: edit }).click();
    await part.getByRole("button", { name: kitchen.removeShop(packs) }).click();
    await part.getByText(kitchen.shopRemoved(GONE, packs)).waitFor();
    await openReading(page, prices.readReceipt);
    await page.getByLabel(receipt.text).fill("28.11.2026\nSEA KELP 200g 0.65\nTotal 0.65");
    await page.getByRole("button", { name: source.read }).click();
    await expect.poll(() => page.getByLabel(prices.shop).first().inputValue()).toBe("turnstone-discount");
    // New packs hold their price, so that none is noted beside them, above the lines as on the button.
    const line = page.getByRole("listitem").filter({ hasText: "SEA KELP" });
    await line.getByRole("button", { name: priced.makeNew }).click();
    await line.getByLabel(priced.food).selectOption({ index: 1 });
    await line.getByRole("button", { name: priced.make, exact: true }).click();
    await page.getByText("1 new pack.", { exact: true }).waitFor();
    await page.getByRole("button", { name: "Note 1 new pack", exact: true }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("from a file that is dropped or chosen, whatever its encoding; a long list can be stopped", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { storageState: inject("planned") });
    await openReading(page, prices.readList);
    const western = Buffer.from("Käse;Preis\nBaking powder, 80 g;0,55\n", "latin1");
    await page.locator(".drop").evaluate(
      (zone, bytes) => {
        const data = new DataTransfer();
        data.items.add(new File([new Uint8Array(bytes)], "list.csv", { type: "text/csv" }));
        zone.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
      },
      [...western],
    );
    await page.getByText(mapping.form).click();
    await expect.poll(() => page.getByLabel(list.columns.label).inputValue()).toBe("Käse");
    await page.getByRole("button", { name: source.again }).click();
    const rows = Array.from({ length: 60_000 }, (_, at) => `Thing number ${at} of the list;${at % 90}.50`);
    await page
      .getByLabel(list.file)
      .setInputFiles({ name: "long.csv", mimeType: "text/csv", buffer: Buffer.from(`name;price\n${rows.join("\n")}`) });
    await page.getByRole("button", { name: source.stop }).click();
    await page.getByText(list.stopped).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});

async function openReading(page: Page, name: string): Promise<void> {
  await goTo(page, "prices");
  await page.getByRole("link", { name, exact: true }).click();
  await page.getByRole("heading", { level: 1, name }).waitFor();
}
