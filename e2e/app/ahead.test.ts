import { readFileSync } from "node:fs";
import { en } from "@halfloaf/web/words";
import { de } from "@halfloaf/web/words/de";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage, listSmall } from "./judgePage.ts";
import { goTo, openApp, openAt, reloadPage } from "./openApp.ts";

const RECORD = new URL("../../packages/halfloaf/src/kitchen/record/frozen/record-1.json", import.meta.url);
const [YESTERDAY, TODAY, TOMORROW] = ["2026-11-29", "2026-11-30", "2026-12-01"] as const;
/** Its beans are soaked overnight. */
const BEANS = "red-beans-walnut-coriander";
const CHICKEN = "chicken-pepper-paprika-rice";

describe.skipIf(!hasBrowser)("what is begun ahead", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  test.each([
    ["English", "en-IE", en, "US FSIS (from memory)", "24 h"],
    ["German", "de-DE", de, "US FSIS (aus dem Gedächtnis)", "24 Std."],
  ] as const)(
    "is told where it is still frozen on the first day, with how it thaws, and ticked, in %s",
    async (_, locale, words, authority, time) => {
      const { page, context, errors } = await openApp(browser, inject("appUrl"), { locale, now: `${TODAY}T09:00:00` });
      await restore(page, TODAY, words);
      const jobs = page.getByRole("listitem");
      const thaw = jobs.filter({ hasText: words.today.jobs.thawAtOnce("") });
      await thaw.getByText(authority).waitFor();
      await expect.poll(() => thaw.textContent()).toContain(time);
      await expect.poll(() => thaw.textContent()).toContain("30 ");
      const soak = jobs.filter({ hasText: words.today.jobs.soak("") });
      expect(await judgePage(page)).toEqual([]);
      expect(await page.evaluate(listSmall, 48)).toEqual([]);

      const done = { name: words.today.begun, exact: true };
      await soak.getByRole("button", done).click();
      await soak.waitFor({ state: "detached" });
      await expect.poll(() => thaw.count()).toBe(1);
      await reloadPage(page);
      await thaw.waitFor();
      await expect.poll(() => soak.count()).toBe(0);
      await page.getByRole("button", { name: words.today.undo }).click();
      await soak.waitFor();
      await page.getByRole("button", { name: words.today.redo }).click();
      await soak.waitFor({ state: "detached" });
      // Neither the cooking of today nor what is cooked of what was soaked is told by that.
      await jobs.filter({ hasText: words.today.cooked }).first().waitFor();
      expect(errors).toEqual([]);
      await context.close();
    },
  );

  test("thaws in the fridge of the stores once it is ticked, on the evening before the first day, and is frozen again by undo", async () => {
    const { page, context, errors } = await openApp(browser, inject("appUrl"), { now: `${YESTERDAY}T18:00:00` });
    await restore(page, YESTERDAY);
    const thaw = page.getByRole("listitem").filter({ hasText: en.today.jobs.thaw("") });
    await thaw.getByRole("button", { name: en.today.begun, exact: true }).click();
    await thaw.waitFor({ state: "detached" });
    await goTo(page, "stores");
    const bags = (place: string) =>
      page
        .locator("section", { has: page.getByRole("heading", { name: place, exact: true }) })
        .locator(".lot", { hasText: "chicken" });
    await expect.poll(() => bags(en.stores.places.fridge).allTextContents()).toEqual([expect.stringMatching(/300\sg/)]);
    await expect
      .poll(() => bags(en.stores.places.freezer).allTextContents())
      .toEqual([expect.stringMatching(/700\sg/)]);
    await openAt(page, "/");
    await page.getByRole("button", { name: en.today.undo }).click();
    await thaw.waitFor();
    await goTo(page, "stores");
    await expect.poll(() => bags(en.stores.places.freezer).allTextContents()).toEqual([expect.stringMatching(/1\skg/)]);
    await expect.poll(() => bags(en.stores.places.fridge).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** Brings in a record whose week, accepted on a day, cooks chicken from the freezer on its first evening, and soaked beans on the next. */
async function restore(page: Page, acceptedOn: string, words = en): Promise<void> {
  const { kitchen, events, ...format } = JSON.parse(readFileSync(RECORD, "utf8"));
  const [first] = events;
  const accepted = events.find(({ kind }: { kind: string }) => kind === "menu-accepted");
  const [sitting] = accepted.week.sittings;
  const [batch] = accepted.week.batches;
  const chicken = { food: "chicken-thigh-boned", massG: 300, costMinor: 250 };
  const evenings = [
    { date: TODAY, dish: CHICKEN, elapsedMinutes: 30 },
    // So long that they would have to be soaked at night.
    { date: TOMORROW, dish: BEANS, elapsedMinutes: 92 },
  ];
  const week = {
    ...accepted.week,
    sittings: evenings.map((each, at) => ({ ...sitting, ...each, batch: at })),
    batches: evenings.map((each, at) => ({ ...batch, ...each, uses: at === 0 ? [{ lot: "bag", ...chicken }] : [] })),
    trips: [],
  };
  const stock = { id: "bag", ...chicken, massG: 1000, place: "freezer", boughtOn: first.on };
  const record = {
    ...format,
    kitchen,
    events: [
      { ...first, stock },
      { ...accepted, on: acceptedOn, week },
    ],
  };
  await page
    .getByLabel(words.first.restoreChoose)
    .setInputFiles({ name: "record.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(record)) });
}
