import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { SIZES } from "./openApp.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** The success criteria of WCAG 2.2 at levels A and AA that a program can judge. */
const CRITERIA = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/**
 * What breaks the criteria: rule, where, and why. The page is made as high as all of it, since what lies behind the bar at
 * the foot until one scrolls would be judged too small to touch.
 */
export async function judgePage(page: Page): Promise<string[]> {
  const before = page.viewportSize() ?? SIZES.phone;
  // Some parts grow with the page.
  for (let turn = 0; turn < 3; turn++) {
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    await page.setViewportSize({ width: before.width, height: Math.max(before.height, height) });
  }
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(AXE);
  const { violations } = await page.evaluate(
    (values) =>
      (window as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run({
        runOnly: { type: "tag", values },
        resultTypes: ["violations"],
      }),
    CRITERIA,
  );
  await page.setViewportSize(before);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} ${target}: ${failureSummary}`),
  );
}

/** Runs in the page: buttons, boxes and links of their own that are lower than so many pixels. */
export function listSmall(leastPx: number): string[] {
  const touched = document.querySelectorAll<HTMLElement>("button, summary, input, select, nav a");
  return [...touched].flatMap((each) => {
    // A label that is touched in its control's place counts for it.
    const place = each.closest("label") ?? each;
    const { height, width } = place.getBoundingClientRect();
    const isSeen = width > 1 && height > 1 && each.checkVisibility();
    return isSeen && height < leastPx
      ? [`${each.tagName} "${each.textContent?.slice(0, 30)}" ${Math.round(height)} px`]
      : [];
  });
}
