import { loadStarterTables } from "@halfloaf/data";
import { en } from "@halfloaf/web/words";
import { furtherEn } from "@halfloaf/web/words/further";
import { parseTables, type Tables } from "halfloaf/kitchen";
import {
  type AccountLine,
  accountsBy,
  energyBetween,
  parseEvents,
  RecordLedger,
  type RecordState,
} from "halfloaf/kitchen/record";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { goTo, makeDemo, ON_DEVICE, type OpenApp, openApp, planDays, reloadPage } from "./openApp.ts";
import { saveBackup } from "./saveBackup.ts";

const { accounts, kitchen, mended, otherwise, save, saved, shelf, stove, untold } = furtherEn;
const [MONDAY, SUNDAY] = ["2027-03-01", "2027-03-07"];
/** The day of March on which nobody tells the app anything but what is bought. */
const LAZY_DAY = 4;

describe.skipIf(!hasBrowser)(
  "a week lived on a phone, from Monday to Sunday, by someone who notes what the screens say",
  () => {
    let browser: Browser;
    let app: OpenApp;
    /** What was noted by hand, in minor units: stock at hand, what the tills said, what was thrown away. */
    const noted = { stockMinor: 0, paidMinor: 0, wastedMinor: 0 };
    beforeAll(async () => {
      browser = await openBrowser();
      app = await openApp(browser, inject("appUrl"), { now: `${MONDAY}T08:00:00`, ...ON_DEVICE });
    });
    afterAll(() => browser?.close());

    test("the days are planned, and what is there already has its worth", async () => {
      const { page } = app;
      await makeDemo(page, "one-ring");
      await planDays(page);
      noted.stockMinor = await readStock(page);
      expect(noted.stockMinor).toBeGreaterThan(0);
    });

    test("on the trip one pack has another price and one is not there; the till says what was paid", async () => {
      const { page } = app;
      await goTo(page, "today");
      await page.getByRole("link", { name: en.screens.buying }).and(page.locator("main a")).click();
      const line = page.locator(".buying-line").first();
      await line.getByRole("button", { name: shelf.kinds.price }).click();
      const priceMinor = Math.round(Number(await line.getByLabel(shelf.price).inputValue()) * 100) + 7;
      await line.getByLabel(shelf.price).fill((priceMinor / 100).toFixed(2));
      const buy = line.getByRole("button", { name: /^Buy (it|\d+) like that$/ });
      const count = Number((await buy.textContent())?.match(/\d+/)?.[0] ?? 1);
      await buy.click();
      await expect.poll(() => line.getByRole("checkbox").isChecked()).toBe(true);
      noted.paidMinor += count * priceMinor;
      await expect.poll(() => readMinor(page.locator(".till"))).toBe(noted.paidMinor);

      const gone = page.locator(".buying-line").last();
      const label = (await gone.locator(".tick-words > span").first().textContent())?.replace(/^\d+ × /, "");
      await gone.getByRole("button", { name: shelf.kinds.gone }).click();
      await gone.getByRole("button", { name: mended.accept }).click();
      await page.locator(".buying-line", { hasText: label ?? "" }).waitFor({ state: "detached" });
      noted.paidMinor += await tickAll(page);
      await expect.poll(() => readMinor(page.locator(".till"))).toBe(noted.paidMinor);
    });

    test("a dish is cooked by the stove step by step, over a reload, and its plate is eaten", async () => {
      const { page } = app;
      await goTo(page, "today");
      const jobs = page.locator("section[aria-labelledby=jobs] > ul > li");
      const before = await jobs.getByRole("button", { name: en.today.cooked }).count();
      await jobs.getByRole("link", { name: en.screens.work }).last().click();
      await page.getByRole("button", { name: en.work.begin }).click();
      const text = page.locator(".next-step .next-text");
      const first = await text.textContent();
      await reloadPage(page);
      await expect.poll(() => text.textContent()).toBe(first);
      const finish = page.getByRole("button", { name: stove.toStores });
      const done = page.getByRole("button", { name: en.work.done, exact: true });
      await finish.waitFor();
      for (let told = await countTold(page); (await done.count()) > 0; told++) {
        await done.first().click();
        await expect.poll(() => countTold(page)).toBe(told + 1);
      }
      await page.getByText(stove.allDone).waitFor();
      await finish.click();
      await page.getByRole("button", { name: furtherEn.finish.book }).click();
      await expect.poll(() => jobs.getByRole("button", { name: en.today.cooked }).count()).toBe(before - 1);
      await cookAll(page);
    });

    test("the next morning it is another day without loading anew; a sitting is skipped, a pack thrown away in part and another whole", async () => {
      const { page } = app;
      await sleep(page);
      await page.getByRole("heading", { level: 1, name: "Tuesday, 2 March" }).waitFor();
      const midday = page
        .locator("section[aria-labelledby=jobs] > ul > li")
        .filter({ hasText: en.sittings.midday })
        .first();
      await skip(midday);
      await midday.waitFor({ state: "detached" });
      await cookAll(page);
      await goTo(page, "stores");
      const whole = page.locator("details.lot").first();
      await whole.locator("summary").click();
      noted.wastedMinor += await readMinor(whole.locator(".telling > p").first());
      const count = await page.locator("details.lot").count();
      await whole.getByRole("button", { name: en.stores.allWasted }).click();
      await expect.poll(() => page.locator("details.lot").count()).toBe(count - 1);
      const part = page.locator("details.lot").last();
      await part.locator("summary").click();
      const worth = part.locator(".telling > p").first();
      const before = await readMinor(worth);
      await part.getByLabel(en.stores.grams).fill("20");
      await part.getByRole("button", { name: en.stores.wasted }).click();
      await expect.poll(() => readMinor(worth)).toBeLessThan(before);
      noted.wastedMinor += before - (await readMinor(worth));
    });

    test("the other days: bought when Today says so, cooked, told the day after where it was forgotten, and thrown away what has gone off", async () => {
      const { page } = app;
      for (let day = 3; day <= 7; day++) {
        await sleep(page);
        await page.getByRole("heading", { level: 1, name: new RegExp(`, ${day} March$`) }).waitFor();
        await tellUntold(page, day === LAZY_DAY + 1);
        noted.wastedMinor += await throwOff(page);
        const list = page.locator("section[aria-labelledby=jobs]").getByRole("link", { name: en.screens.buying });
        const isDue = (await list.count()) > 0;
        await goTo(page, "buying");
        const paid = await tickAll(page, day);
        expect(isDue).toBe(paid > 0);
        noted.paidMinor += paid;
        await goTo(page, "today");
        await list.waitFor({ state: "detached" });
        if (day !== LAZY_DAY) await cookAll(page);
      }
    });

    test("the menu of the week begins with today, and every ribbon in sight has its name beside it", async () => {
      const { page } = app;
      await goTo(page, "menu");
      const window = page.locator(".ribbons-window");
      const left = await window.evaluate((element) => element.scrollLeft);
      expect(left).toBeGreaterThan(1000);
      const hidden = await window.evaluate((element) => {
        const { left, right } = element.getBoundingClientRect();
        return [...element.querySelectorAll(".ribbon-name")].filter((name) => {
          const ribbon = name.getBoundingClientRect();
          const text = name.firstElementChild?.getBoundingClientRect() ?? ribbon;
          const isLong = Math.min(ribbon.right, right) - Math.max(ribbon.left, left) > text.width;
          return isLong && (text.left < left - 1 || text.right > right + 1);
        }).length;
      });
      expect(hidden).toBe(0);
    });

    test("the accounts say to the coin what was noted: there before + spent = eaten + thrown away + left in the stores", async () => {
      const { page } = app;
      const leftMinor = await readStock(page);
      await goTo(page, "accounts");
      const line = await readLine(page);
      expect(line[accounts.opening]).toBe(noted.stockMinor);
      expect(line[accounts.spent]).toBe(noted.paidMinor);
      expect(line[accounts.wasted]).toBe(0 - noted.wastedMinor);
      expect(line[accounts.carryOver]).toBe(leftMinor);
      const eatenMinor = noted.stockMinor + noted.paidMinor - noted.wastedMinor - leftMinor;
      expect(line[accounts.eaten]).toBe(0 - eatenMinor);
      await expect.poll(() => readPlates(page)).toBe(eatenMinor);
      expect(noted.wastedMinor).toBeGreaterThan(0);
      expect(eatenMinor).toBeGreaterThan(500);
      const skipped = page.locator(".plate-line").filter({ hasText: "2 Mar" }).filter({ hasText: en.sittings.midday });
      await expect.poll(() => skipped.textContent()).toContain(accounts.nobody);
    });

    test("what is kept, added up apart from the app, says the same; of every lot all that came in is accounted for", async () => {
      const { page } = app;
      const state = foldRecord(await saveBackup(page));
      const [kept] = accountsBy(state, "week", MONDAY, SUNDAY);
      await goTo(page, "accounts");
      const line = await readLine(page);
      const own = kept as AccountLine;
      expect(line).toEqual({
        [accounts.opening]: own.openingMinor,
        [accounts.spent]: own.tillMinor,
        [accounts.eaten]: 0 - own.platesMinor,
        [accounts.wasted]: 0 - own.wasteMinor,
        [accounts.carryOver]: own.carryOverMinor,
      });
      for (const { id, broughtG, broughtMinor, outflows, leftG, leftMinor } of state.lots.values()) {
        const outG = outflows.reduce((sum, { massG }) => sum + massG, 0);
        expect(outG + leftG, id).toBeCloseTo(broughtG, 6);
        expect(
          outflows.reduce((sum, { costMinor }) => sum + costMinor, leftMinor),
          id,
        ).toBe(broughtMinor);
      }
    });

    test("what cooking drew costs what the price of a kWh makes of it, once that is set", async () => {
      const { page } = app;
      const drawn = energyBetween(foldRecord(await saveBackup(page)), readTables().dishes, MONDAY, SUNDAY, 150);
      expect(drawn).toMatchObject({ unknown: 0 });
      expect(drawn.costMinor).toBeGreaterThan(0);
      await goTo(page, "kitchen");
      await page.locator("summary", { hasText: kitchen.worthTitle }).click();
      await page.getByLabel(kitchen.kwh).fill("1.50");
      await page.getByRole("button", { name: save, exact: true }).last().click();
      await page.getByText(saved, { exact: true }).waitFor();
      await goTo(page, "accounts");
      const told = page.locator("section", { hasText: accounts.energy }).locator("p").first();
      // The screen shows no zeros at the end: one week in ten draws such a sum.
      const kwh = `${Number(drawn.kwh.toFixed(2))}`;
      await expect.poll(() => told.textContent()).toContain(accounts.energyOf(kwh, drawn.cookings));
      await expect.poll(() => readMinor(told)).toBe(drawn.costMinor);
      await page.getByText(accounts.energyEstimate).waitFor({ state: "detached" });
    });

    test("nothing went wrong unnoticed", () => {
      expect(app.errors).toEqual([]);
    });
  },
);

/** Lets the night pass, the app open all the while. */
async function sleep(page: Page): Promise<void> {
  await goTo(page, "today");
  await page.clock.fastForward("24:00:00");
}

/** Buys every open line of the trip of that day (by default the one shown) at the price of the list; what was paid. */
async function tickAll(page: Page, day?: number): Promise<number> {
  if (day !== undefined) {
    const trip = page.getByRole("button", { name: new RegExp(`\\b${day} Mar, `) });
    if ((await trip.count()) === 0) return 0;
    await trip.click();
  }
  let paid = 0;
  const lines = page.locator(".buying-line:has(input:not(:checked))");
  for (let open = await lines.count(); open > 0; open--) {
    paid += await readMinor(lines.first().locator("label > .figure"));
    await lines.first().getByRole("checkbox").click();
    await expect.poll(() => lines.count()).toBe(open - 1);
  }
  return paid;
}

/** Cooks and eats all that Today has left, and says of what is not there that nobody ate it here. */
async function cookAll(page: Page): Promise<void> {
  // What is told below a job comes later than the job: what it has to serve says that it is one.
  const served = en.today.portions(1, "").trim();
  const jobs = page.locator("section[aria-labelledby=jobs] > ul > li").filter({ hasText: served });
  const ready = jobs.getByRole("button", { name: new RegExp(`^(${en.today.cooked}|${en.today.eaten})$`) });
  // What is cooked may be what another job has to serve.
  while ((await ready.count()) > 0) {
    const open = await jobs.count();
    await ready.first().click();
    await expect.poll(() => jobs.count()).toBeLessThan(open);
  }
  await skipAll(jobs);
}

/** Says of each sitting that jobs are left for, none of which can be served, that nobody ate here. */
async function skipAll(jobs: Locator): Promise<void> {
  for (let open = await jobs.count(); open > 0; open = await jobs.count()) {
    await jobs.first().getByText(en.today.none).waitFor();
    await skip(jobs.first());
    await expect.poll(() => jobs.count()).toBeLessThan(open);
  }
}

/** Says that nobody ate here at the sitting of a job. */
async function skip(job: Locator): Promise<void> {
  await job.getByText(otherwise.title).click();
  await job.getByRole("button", { name: en.today.skipped }).click();
}

/** Tells, where something is to be told, that the days before went as planned as far as they can have; nothing is left untold then. */
async function tellUntold(page: Page, isAny: boolean): Promise<void> {
  const fold = page.locator("details", { has: page.getByRole("heading", { name: untold.title }) });
  if (!isAny) {
    await expect.poll(() => fold.count()).toBe(0);
    return;
  }
  await fold.locator("summary").click();
  const all = fold.getByRole("button", { name: untold.all });
  await all.click();
  await all.waitFor({ state: "detached" });
  await skipAll(fold.locator(".lines > li"));
  await fold.waitFor({ state: "detached" });
}

/** Throws away what Today says has gone off; what that had cost. */
async function throwOff(page: Page): Promise<number> {
  const off = page.locator("details.lot", { has: page.locator(".gone-off") });
  let cost = 0;
  for (const line of await off.all()) cost += await readMinor(line.locator("summary .figure").last());
  if (cost > 0) {
    await page.getByRole("button", { name: en.today.throwOff }).click();
    await expect.poll(() => off.count()).toBe(0);
  }
  return cost;
}

/** The first money in a text, in minor units. */
async function readMinor(where: Locator): Promise<number> {
  const text = (await where.textContent()) ?? "";
  const [, sign, whole = "", part] = text.match(/(-?)€([\d,]+)\.(\d\d)/) ?? [];
  if (part === undefined) throw new Error(`there is no money in "${text}"`);
  return Number(`${sign}${whole.replaceAll(",", "")}${part}`);
}

/** What Stores says that all of it cost. */
async function readStock(page: Page): Promise<number> {
  await goTo(page, "stores");
  return readMinor(page.getByText(en.stores.worth("").split("cost")[0] ?? ""));
}

/** The sums of the stretch that Accounts tells in full, in minor units by what they are called. */
async function readLine(page: Page): Promise<Record<string, number>> {
  const rows = page.locator("section", { hasText: accounts.sums }).locator("tbody tr");
  const sums: Record<string, number> = {};
  for (const row of await rows.all())
    sums[(await row.getByRole("rowheader").textContent()) ?? ""] = await readMinor(row.getByRole("cell"));
  return sums;
}

/** What Accounts says was eaten, plate by plate. */
async function readPlates(page: Page): Promise<number> {
  let sum = 0;
  for (const real of await page.locator(".plate-line > span:last-child").all())
    if (((await real.textContent()) ?? "").includes("€")) sum += await readMinor(real);
  return sum;
}

function countTold(page: Page): Promise<number> {
  return page.evaluate(() => {
    const running = JSON.parse(localStorage.getItem("halfloaf-cooking") ?? "null");
    return (running?.told ?? []).filter((each: { doneMinutes?: number }) => each.doneMinutes !== undefined).length;
  });
}

/** The library's own picture of what the rows say; edits of the kitchen are left out. */
function foldRecord(rows: readonly unknown[]): RecordState {
  const { events, issues } = parseEvents(rows.filter((row) => (row as { kind: string }).kind !== "edited"));
  expect(issues).toEqual([]);
  return new RecordLedger(readTables().foods, events).state;
}

function readTables(): Tables {
  const tables = parseTables(loadStarterTables());
  if (!tables.ok) throw new Error("the starter tables are faulty");
  return tables.value;
}
