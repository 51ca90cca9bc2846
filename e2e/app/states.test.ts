import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { type OpenApp, openApp, openAt, SIZES } from "./openApp.ts";

/** What stands open on a screen: where it is, and what is touched there, found by its place so that it goes in any language. */
interface State {
  readonly name: string;
  readonly path: string;
  readonly touch?: (page: Page) => Promise<void>;
}

const STATES: readonly State[] = [
  { name: "what can be told of a job and of a lot", path: "/" },
  {
    name: "a dish that is to be moved, and what that costs",
    path: "/menu",
    touch: async (page) => {
      await page.locator(".ribbons-station").first().click();
      await page.locator(".panel .row .button").nth(1).click();
      await page.locator(".move-targets input").first().click();
      await page.locator(".panel form p[role=status]").waitFor();
    },
  },
  {
    name: "another dish at a sitting, and why one is not there",
    path: "/menu",
    touch: async (page) => {
      await page.locator(".ribbons-station").last().click();
      await page.locator(".panel .row .button").nth(2).click();
      await page.locator(".want input[type=radio]").first().check();
      await page.locator(".want .told").waitFor();
      await page.locator(".why-absent input[type=radio]").first().check();
      await page.locator(".absent").waitFor();
    },
  },
  {
    name: "a wish that lacks what it is about",
    path: "/menu",
    touch: async (page) => {
      await page.locator(".wishes .row > .button").first().click();
      await page.locator(".wishes select").last().selectOption({ index: 1 });
      await page.locator(".wishes form .button.main").click();
      await page.locator(".wishes .issues").waitFor();
    },
  },
  {
    name: "another price at the shelf, and the number of a pack that is none",
    path: "/buying",
    touch: async (page) => {
      await page.locator(".at-shelf button").first().click();
      await page.locator(".at-shelf [role=status]").locator(".stack, .caution").first().waitFor();
      await page.locator("main button[aria-expanded=false]").first().click();
      await page.locator("section[aria-labelledby=scan] form input").fill("2000000000009");
      await page.locator("section[aria-labelledby=scan] form button").click();
      await page.locator("section[aria-labelledby=scan] .caution").waitFor();
    },
  },
  {
    name: "a cooking with a step that goes on by itself",
    path: "/work?dish=red-lentil-cumin-soup-pitta&portions=2",
    touch: async (page) => {
      await page.locator(".button.main.large").click();
      const next = page.locator(".next-step");
      while ((await page.getByRole("timer").count()) === 0) {
        const text = await next.locator(".next-text").textContent();
        await page.locator(".tell-steps .button").first().click();
        await expect.poll(() => next.locator(".next-text").textContent()).not.toBe(text);
      }
    },
  },
  {
    name: "what came out of a cooking, more of it eaten than there was",
    path: "/work",
    touch: async (page) => {
      await page.locator("main .row:has(> .button + .button + .button) > .button").nth(1).click();
      const portions = page.locator("main section.sheet select");
      await portions.selectOption("evening");
      await page.locator("main section.sheet fieldset input").first().fill("9");
      await page.locator("main section.sheet p.caution").waitFor();
    },
  },
  {
    name: "lots opened, and a place that is counted",
    path: "/stores",
    touch: (page) => page.locator("main h2 + .button").first().click(),
  },
  {
    name: "a dish with its costing, sheets and wishes",
    path: "/dishes/red-lentil-cumin-soup-pitta",
    touch: (page) => page.locator(".fold-body > .row > .button").first().waitFor(),
  },
  { name: "a dish that is written", path: "/dishes/write" },
  {
    name: "a dish that is read in, with what is in doubt",
    path: "/dishes/read-in",
    touch: async (page) => {
      await page
        .locator("main textarea")
        .fill("Odd pot\n\n200 g red lentils\n3 glimmers of frobnic\n\nSimmer for 12 minutes.");
      await page.locator("main .button.main").first().click();
      await page.locator("main select").first().waitFor();
    },
  },
  {
    name: "a receipt that is read",
    path: "/prices/read-in",
    touch: async (page) => {
      await page
        .locator("main textarea")
        .fill("TURNSTONE DISCOUNT\nRed lentils 500g   1.15\nMystery thing   2.00\nTOTAL   3.15");
      await page.locator("main .button.main").first().click();
      await page.locator("main select").last().waitFor();
    },
  },
  {
    name: "the accounts of a day",
    path: "/accounts",
    touch: (page) => page.locator("fieldset.choice .button").first().click(),
  },
  {
    name: "every part of the kitchen, with what is wrong with a form",
    path: "/kitchen",
    touch: async (page) => {
      await page.evaluate(openDetails);
      const form = page
        .locator("main form")
        .filter({ has: page.locator("[role=group]") })
        .first();
      for (const field of await form.locator("input:not([type=checkbox])").all()) await field.fill("-");
      await form.locator("button[type=submit]").click();
      await form.locator("li").first().waitFor();
    },
  },
];

describe.skipIf(!hasBrowser)("whatever stands open keeps WCAG 2.2 AA", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  describe.each([
    ["on a phone, in English and light", { viewport: SIZES.phone, colorScheme: "light" }],
    ["on a laptop, in German and dark", { viewport: SIZES.laptop, colorScheme: "dark", locale: "de-DE" }],
  ] as const)("%s", (_, options) => {
    let app: OpenApp;
    beforeAll(async () => {
      app = await openApp(browser, inject("appUrl"), { storageState: inject("planned"), ...options });
    });
    afterAll(async () => {
      await app?.context.close();
    });

    test.each(STATES.map((state) => [state.name, state] as const))("%s", async (_, { path, touch }) => {
      const { page, errors } = app;
      await openAt(page, path);
      await page.evaluate(openDetails);
      await touch?.(page);
      await page.evaluate(settle);
      expect(await judgePage(page)).toEqual([]);
      expect(errors).toEqual([]);
    });
  });
});

/** Runs in the page: opens whatever is folded. */
function openDetails(): void {
  for (const each of document.querySelectorAll("main details")) each.setAttribute("open", "");
}

/** Runs in the page: waits until it has not grown for so many frames, since parts of it are loaded when they are opened. */
async function settle(): Promise<void> {
  let height = 0;
  for (let still = 0; still < 20; still++) {
    await new Promise(requestAnimationFrame);
    const now = document.documentElement.scrollHeight;
    if (now !== height || document.querySelector("main progress") !== null) still = 0;
    height = now;
  }
}
