import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Locator, Page } from "playwright-core";
import { goTo } from "../app/openApp.ts";

/** What a screen shows when it is touched: the name of its picture, and the way there in a planned kitchen. */
type Scene = readonly [name: string, show: (page: Page) => Promise<void>];

const main = (page: Page): Locator => page.getByRole("main");
const press = (page: Page, name: string | RegExp): Promise<void> =>
  main(page).getByRole("button", { name }).first().click();

/** Puts what matters at the top of the page. */
async function toTop(what: Locator): Promise<void> {
  await what.evaluate((element) => {
    scrollTo(0, element.getBoundingClientRect().top + scrollY - 16);
  });
}

/** In this order, since each goes on where the one before left the kitchen. */
export const SCENES: readonly Scene[] = [
  [
    "menu-touched",
    async (page) => {
      await goTo(page, "menu");
      await page.locator(".ribbons-station").nth(1).click();
    },
  ],
  [
    "menu-table",
    async (page) => {
      await main(page).getByText(en.menu.asTable).click();
      await toTop(main(page).getByRole("table").first());
    },
  ],
  [
    "buying-shelf",
    async (page) => {
      await goTo(page, "buying");
      await main(page).getByRole("checkbox").nth(0).check();
      await main(page).getByRole("checkbox").nth(1).check();
      await press(page, furtherEn.shelf.kinds.price);
    },
  ],
  [
    "stove",
    async (page) => {
      await goTo(page, "work");
      await press(page, en.work.order);
      await press(page, en.work.begin);
      await page.locator(".next-step").waitFor();
    },
  ],
  [
    "dish",
    async (page) => {
      await goTo(page, "dishes");
      await page.locator(".dish-line").nth(20).click();
      await page.getByRole("heading", { name: furtherEn.dishes.makings }).waitFor();
    },
  ],
  [
    "food",
    async (page) => {
      await goTo(page, "prices");
      await page.locator(".food-way").nth(3).click();
      await page.getByRole("heading", { level: 2 }).first().waitFor();
    },
  ],
  [
    "own-food",
    async (page) => {
      await goTo(page, "dishes");
      await main(page).getByRole("link", { name: furtherEn.dishes.foods, exact: true }).click();
      await main(page).getByRole("link", { name: furtherEn.foods.write }).click();
      await page.getByLabel(furtherEn.foodForm.name, { exact: true }).waitFor();
    },
  ],
  [
    "accounts-lived",
    async (page) => {
      await goTo(page, "today");
      await press(page, en.today.cooked);
      await goTo(page, "accounts");
    },
  ],
  [
    "another-dish",
    async (page) => {
      await goTo(page, "menu");
      await page.locator(".ribbons-station").nth(3).click();
      await press(page, furtherEn.other.want);
      const form = page.locator("form.want");
      await form.getByRole("radio").first().check();
      await form.locator(".told").waitFor();
      await toTop(form);
    },
  ],
  [
    "wishes",
    async (page) => {
      const fold = page.locator("summary", { hasText: furtherEn.week.wishes });
      await fold.click();
      await press(page, furtherEn.wishes.add);
      await page.getByRole("combobox", { name: furtherEn.wishes.manner, exact: true }).selectOption("soup");
      await toTop(fold);
    },
  ],
  [
    "print",
    async (page) => {
      await goTo(page, "menu");
      const fold = main(page).getByText(furtherEn.sheets.title);
      await fold.click();
      await toTop(fold);
    },
  ],
  [
    "choices",
    async (page) => {
      const fold = main(page).getByText(furtherEn.choices.title);
      await fold.click();
      await press(page, furtherEn.choices.find);
      await page.locator(".choices-point").nth(1).waitFor();
      await toTop(fold);
    },
  ],
  [
    "impossible",
    async (page) => {
      await goTo(page, "kitchen");
      await main(page).getByText(furtherEn.kitchen.limits, { exact: true }).click();
      await page.getByLabel(furtherEn.kitchen.budget).fill("9");
      await press(page, furtherEn.save);
      await goTo(page, "menu");
      await press(page, en.menu.planAnew);
      await page.getByText(furtherEn.impossible.ways).waitFor();
    },
  ],
];
