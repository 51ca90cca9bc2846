import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Page } from "playwright-core";

const { allergens, foodForm, foods } = furtherEn;

/** Tells the form of a food all that crackers need beside their name. */
export async function tellCrackers(page: Page): Promise<void> {
  await page.getByLabel(foodForm.group).selectOption("bread");
  await page.getByLabel(foodForm.diet).selectOption("vegan");
  await page.getByLabel(foodForm.hygiene).selectOption("ready-to-eat");
  await page.getByLabel(allergens.gluten).check();
  await page.getByLabel(foodForm.wheat).check();
  await page.getByLabel(foodForm.place(foods.unopened, en.stores.places["dry-store"])).fill("90");
  await page.getByLabel("Energy (kcal)").fill("410");
  await page.getByLabel("Protein (g)").fill("9");
  await page.getByLabel(foodForm.salt).fill("1.5");
}
