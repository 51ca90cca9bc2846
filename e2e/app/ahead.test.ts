import { readFileSync } from "node:fs";
import { en } from "@halfloaf/web/words";
import { de } from "@halfloaf/web/words/de";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { judgePage } from "./judgePage.ts";
import { openApp } from "./openApp.ts";

const RECORD = new URL("../../packages/halfloaf/src/kitchen/record/frozen/record-1.json", import.meta.url);
const TODAY = "2026-11-30";

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
    "raw food that is still frozen on the first day is told with how it thaws, in %s",
    async (_, locale, words, authority, time) => {
      const { page, context, errors } = await openApp(browser, inject("appUrl"), { locale, now: `${TODAY}T09:00:00` });
      const buffer = Buffer.from(JSON.stringify(withWeek()));
      await page
        .getByLabel(words.first.restoreChoose)
        .setInputFiles({ name: "record.json", mimeType: "application/json", buffer });
      const thaw = page.getByRole("listitem").filter({ hasText: words.today.jobs.thawAtOnce("") });
      await thaw.getByText(authority).waitFor();
      await expect.poll(() => thaw.textContent()).toContain(time);
      await expect.poll(() => thaw.textContent()).toContain("30 ");
      expect(await judgePage(page)).toEqual([]);
      expect(errors).toEqual([]);
      await context.close();
    },
  );
});

/** A record whose week, accepted on its first day, cooks chicken from the freezer that evening. */
function withWeek(): object {
  const { kitchen, events, ...format } = JSON.parse(readFileSync(RECORD, "utf8"));
  const [first] = events;
  const accepted = events.find(({ kind }: { kind: string }) => kind === "menu-accepted");
  const [sitting] = accepted.week.sittings;
  const [batch] = accepted.week.batches;
  const chicken = { food: "chicken-thigh-boned", massG: 300, costMinor: 250 };
  const evening = { date: TODAY, dish: "chicken-pepper-paprika-rice" };
  const week = {
    ...accepted.week,
    sittings: [{ ...sitting, ...evening }],
    batches: [{ ...batch, ...evening, uses: [{ lot: "chicken-bag", ...chicken }] }],
    trips: [],
  };
  const stock = { id: "chicken-bag", ...chicken, place: "freezer", boughtOn: first.on };
  return {
    ...format,
    kitchen,
    events: [
      { ...first, stock },
      { ...accepted, on: TODAY, week },
    ],
  };
}
