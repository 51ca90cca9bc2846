import { readFileSync } from "node:fs";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Page } from "playwright-core";
import { goTo } from "./openApp.ts";

const { kitchen } = furtherEn;

/** Saves a backup as a person does, in Kitchen, and gives its rows. */
export async function saveBackup(page: Page): Promise<unknown[]> {
  await goTo(page, "kitchen");
  const button = page.getByRole("button", { name: kitchen.download });
  if (!(await button.isVisible())) await page.getByRole("heading", { name: kitchen.backup }).click();
  const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
  return JSON.parse(readFileSync(await download.path(), "utf8")).rows;
}
