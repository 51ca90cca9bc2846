import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { type OpenApp, openApp, openAt, SCREENS, seeScreen } from "./openApp.ts";
import { type Touched, touchAll } from "./touchAll.ts";

const { sharing } = furtherEn;

/** What leads out of the kitchen or the language, or only opens the printer. */
const { another, language, usedBy } = furtherEn.kitchen;
const SPARED = [another, language, usedBy, sharing.leave, furtherEn.sheets.print];

/** Pages of single things, where more can be written than on their screens. */
const PAGES = ["/dishes/read-in", "/dishes/write", "/prices/read-in", "/prices/read-list"];

describe.skipIf(!hasBrowser)("what a device may do in a shared kitchen", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  /** The planned kitchen as if it were shared with this device in that role, on a server that shares none. */
  const openAs = async (role: string): Promise<OpenApp> => {
    const { origins, ...rest } = inject("planned");
    const shared = {
      server: new URL(inject("appUrl")).origin,
      kitchen: "kitchen1",
      device: "device01",
      credential: "device01.x",
      role,
    };
    return openApp(browser, inject("appUrl"), {
      storageState: {
        ...rest,
        origins: origins.map((each) => {
          const { value } = each.localStorage.find(({ name }) => name === "halfloaf-device") as { value: string };
          const name = `halfloaf-shared-${(JSON.parse(value) as { open: string }).open}`;
          return { ...each, localStorage: [...each.localStorage, { name, value: JSON.stringify(shared) }] };
        }),
      },
    });
  };

  test("a device that reads only meets nothing on any page that would write, and writes nothing", async () => {
    const { page, context } = await openAs("reader");
    const refused: string[] = [];
    let count = 0;
    const pages = [...Object.values(SCREENS), ...PAGES, ...(await listPages(page))];
    for (const path of pages) {
      const touched = await visit(page, path);
      count += touched.count;
      refused.push(...touched.refused.map((each) => `${path}: ${each}`));
      await expect.poll(() => page.getByText(sharing.roleHere.reader).count(), { message: path }).toBeGreaterThan(0);
      expect(await waiting(page), path).toBe(0);
      await expect.poll(() => page.getByText(furtherEn.saved, { exact: true }).count()).toBe(0);
    }
    expect(refused).toEqual([]);
    expect(count).toBeGreaterThan(60);
    await context.close();
  });

  test("a device that shops and cooks meets nothing that would change menus, dishes or the kitchen", async () => {
    const { page, context } = await openAs("cook");
    const refused: string[] = [];
    for (const path of ["/menu", "/kitchen", ...PAGES, ...(await listPages(page))]) {
      refused.push(...(await visit(page, path)).refused.map((each) => `${path}: ${each}`));
    }
    expect(refused).toEqual([]);
    // The same touches do write where that is allowed.
    expect((await visit(page, SCREENS.stores)).refused).toEqual([]);
    await expect.poll(() => waiting(page)).toBeGreaterThan(0);
    await context.close();
  });
});

/** Opens a page and touches all that is on it. */
async function visit(page: Page, path: string): Promise<Touched> {
  // As by a link of the app's own, so that nothing has to be loaded anew.
  await page.evaluate((to) => {
    history.pushState(null, "", to);
    dispatchEvent(new PopStateEvent("popstate"));
  }, path);
  await seeScreen(page);
  await page.getByRole("link", { name: sharing.states.apart }).waitFor();
  return touchAll(page, SPARED);
}

/** A dish with the page that changes it, and a food with its prices. */
async function listPages(page: Page): Promise<string[]> {
  const paths: string[] = [];
  for (const [screen, link] of [
    ["/dishes", ".dish-line"],
    ["/prices", ".food-way"],
  ] as const) {
    await openAt(page, screen);
    paths.push((await page.locator(link).first().getAttribute("href")) as string);
  }
  return [...paths, `${paths[0]}/change`];
}

/** How many entries wait to be sent. */
async function waiting(page: Page): Promise<number> {
  const text = await page.locator(".sharing-line").textContent();
  return Number(/(\d+) entr/.exec(text ?? "")?.[1] ?? 0);
}
