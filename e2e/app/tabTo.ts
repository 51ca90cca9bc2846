import type { Locator, Page } from "playwright-core";

/** Presses Tab (or another key) until that has the focus. */
export async function tabTo(page: Page, where: Locator, key = "Tab"): Promise<void> {
  await where.waitFor();
  for (let presses = 0; presses < 80; presses++) {
    if (await where.evaluate((each) => each === document.activeElement)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`no ${key} leads to ${where}`);
}
