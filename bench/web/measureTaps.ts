import { goTo, ON_DEVICE, openApp, SCREENS, SIZES, seeScreen } from "@halfloaf/e2e/openApp";
import { en } from "@halfloaf/web/words";
import { de } from "@halfloaf/web/words/de";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser, CDPSession, Locator, Page } from "playwright-core";
import { LIVED_DEVICE, makeLivedKitchen } from "./makeLivedKitchen.ts";

/** What taps of a kind took until their answer was painted: by the wall clock, and of the processor on the page's thread. */
export interface TapTimes {
  readonly name: string;
  readonly ms: readonly number[];
  readonly cpuMs: readonly number[];
}

interface Tap {
  readonly name: string;
  /** Gets the page ready for it. */
  readonly prepare: (page: Page) => Promise<unknown>;
  readonly target: (page: Page) => Locator;
  /** Tells of the page what another value of is the answer; run in the page. */
  readonly told: string;
  /** True where a day has not many of it. */
  readonly isRare?: true;
}

type ScreenName = keyof typeof SCREENS;

const EVENTS = 20_000;
/** The page is left alone for so long before a tap, as a hand would. */
const REST_MS = 600;
/** What takes longer counts as no answer. */
const LONGEST_MS = 10_000;

/** Something of each screen that no other has. */
const CONTENT: Readonly<Record<ScreenName, string>> = {
  today: "#jobs",
  menu: ".ribbons-window",
  buying: ".buying-line",
  work: "main input",
  stores: ".lot",
  dishes: ".dish-line",
  prices: ".food-way",
  accounts: ".accounts-table",
  kitchen: "main .fold",
};

const SCREEN_NAMES = Object.keys(SCREENS) as ScreenName[];
const countOf = (selector: string): string => `document.querySelectorAll(${JSON.stringify(selector)}).length`;
const button = (page: Page, name: string): Locator =>
  page.getByRole("main").getByRole("button", { name, exact: true }).first();

const OPENINGS: readonly Tap[] = SCREEN_NAMES.map((screen) => ({
  name: `open ${screen}`,
  prepare: (page) => goTo(page, screen === "stores" ? "kitchen" : "stores"),
  target: (page) => page.locator(`nav a[href="${SCREENS[screen]}"]`),
  told: countOf(CONTENT[screen]),
}));

/** Opens Buying with a line that is not bought: a trip may have fewer of them than there are repeats. */
async function openBuying(page: Page): Promise<void> {
  await goTo(page, "buying");
  const bought = page.locator(".buying-line input:checked");
  await page.locator(".buying-line").first().waitFor();
  const [all, done] = [await page.locator(".buying-line").count(), await bought.count()];
  if (done < all) return;
  await bought.first().click();
  await page.locator(".buying-line input[type=checkbox]:not(:checked)").first().waitFor();
}

const ACTS: readonly Tap[] = [
  {
    name: "tick a line in Buying",
    prepare: openBuying,
    target: (page) => page.locator(".buying-line input[type=checkbox]:not(:checked)").first(),
    told: countOf(".buying-line input:checked"),
  },
  {
    name: "other price in Buying",
    prepare: openBuying,
    target: (page) => button(page, furtherEn.shelf.kinds.price),
    told: countOf(".at-shelf .sheet"),
  },
  {
    name: "cooked in Today",
    isRare: true,
    prepare: (page) => goTo(page, "today"),
    target: (page) => button(page, en.today.cooked),
    told: "document.querySelector('main .button.main').closest('li').textContent",
  },
  {
    name: "skip a sitting in Today",
    isRare: true,
    prepare: async (page) => {
      await goTo(page, "today");
      await page.locator("main details.fold summary").first().click();
    },
    target: (page) => page.locator("main details[open].fold").getByRole("button", { name: en.today.skipped }).first(),
    told: "document.querySelector('main').textContent",
  },
  {
    name: "undo in Today",
    isRare: true,
    prepare: (page) => goTo(page, "today"),
    target: (page) => button(page, en.today.undo),
    told: "document.querySelector('main').textContent",
  },
  {
    name: "throw away in Stores",
    prepare: async (page) => {
      await goTo(page, "stores");
      await page.locator("details.lot summary").first().click();
    },
    target: (page) => button(page, en.stores.allWasted),
    told: countOf("details.lot"),
  },
  {
    name: "touch a dish in Menu",
    prepare: async (page) => {
      await goTo(page, "stores");
      await goTo(page, "menu");
    },
    target: (page) => page.locator(".ribbons-station").first(),
    told: countOf(".panel"),
  },
  {
    name: "choose a dish in Order of work",
    prepare: (page) => goTo(page, "work"),
    target: (page) => page.locator("main input[type=checkbox]").first(),
    told: countOf("main input:checked"),
  },
  {
    name: "sift dishes",
    prepare: (page) => goTo(page, "dishes"),
    target: (page) => page.locator("main search input[type=checkbox]").first(),
    told: countOf(".dish-line"),
  },
  {
    name: "earlier in Accounts",
    prepare: (page) => goTo(page, "accounts"),
    target: (page) => button(page, furtherEn.accounts.earlier),
    told: "document.querySelector('.accounts-table').textContent",
  },
];

/**
 * Taps through a kitchen of 20,000 events in a page as wide as a laptop's, where all ways are in sight: every screen is opened
 * and the main acts are done, each so many times. The first time a screen opens its script has to come as well.
 */
export async function measureTaps(browser: Browser, url: string, repeats: number): Promise<TapTimes[]> {
  const { context, page } = await openApp(browser, url, { viewport: SIZES.laptop, ...ON_DEVICE });
  try {
    // What runs this file names functions by a function of its own, which no page has.
    await context.addInitScript("globalThis.__name = (value) => value");
    await openLived(page);
    const devTools = await context.newCDPSession(page);
    await devTools.send("Performance.enable", { timeDomain: "threadTicks" });
    const found = [await timeTap(page, devTools, await acceptance(page), 1)];
    for (const tap of [...OPENINGS, ...ACTS]) found.push(await timeTap(page, devTools, tap, tap.isRare ? 1 : repeats));
    found.push(await timeStove(page, devTools, repeats), await timeLanguage(page, repeats));
    return found;
  } finally {
    await context.close();
  }
}

/** Opens the lived kitchen from its backup on a device that wrote all of it. */
async function openLived(page: Page): Promise<void> {
  const device = JSON.stringify({ name: LIVED_DEVICE, kitchens: [] });
  await page.evaluate((text) => localStorage.setItem("halfloaf-device", text), device);
  await page.reload();
  const day = await page.evaluate(() => new Date().toLocaleDateString("sv"));
  const backup = await makeLivedKitchen(EVENTS, day);
  const file = { name: "backup.json", mimeType: "application/json", buffer: Buffer.from(backup) };
  await page.locator("input[type=file]").setInputFiles(file);
  await page.getByText(en.today.noMenu).waitFor({ timeout: 120_000 });
}

/** Plans the days; taking the plan is the tap. */
async function acceptance(page: Page): Promise<Tap> {
  await goTo(page, "menu");
  await button(page, en.menu.plan).click();
  await page.getByText(en.menu.legend).waitFor();
  const take = button(page, en.menu.accept);
  const stop = button(page, en.menu.stop);
  await take.or(stop).first().waitFor();
  if (await stop.isVisible()) await stop.click();
  await take.waitFor({ timeout: 120_000 });
  return { name: "accept a menu", prepare: async () => {}, target: () => take, told: countOf("main .button") };
}

/** Steps told done by the stove, one after the other. */
async function timeStove(page: Page, devTools: CDPSession, repeats: number): Promise<TapTimes> {
  await goTo(page, "work");
  await page.locator("main input[type=checkbox]").first().check();
  await button(page, en.work.order).click();
  await button(page, en.work.begin).click({ timeout: 120_000 });
  const done: Tap = {
    name: "done by the stove",
    prepare: async () => {},
    target: (at) => button(at, en.work.done),
    told: "localStorage.getItem('halfloaf-cooking')",
  };
  const times = await timeTap(page, devTools, done, Math.min(repeats, 2));
  await button(page, en.work.end).click();
  return times;
}

/** A choice in a list is no tap on the page, so that it is timed from the change of its field. */
async function timeLanguage(page: Page, repeats: number): Promise<TapTimes> {
  await goTo(page, "kitchen");
  const field = page.locator(`select:has(option[value="de"])`);
  await page.locator("details", { has: field }).locator("summary").click();
  const ms: number[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    await page.waitForTimeout(REST_MS);
    const [language, title] = repeat % 2 === 0 ? ["de", de.screens.kitchen] : ["en", en.screens.kitchen];
    await watch(page, "change", `document.querySelector('h1').textContent === ${JSON.stringify(title)}`);
    await field.selectOption(language as string);
    ms.push(await answered(page));
  }
  return { name: "another language in Kitchen", ms, cpuMs: [] };
}

async function timeTap(page: Page, devTools: CDPSession, tap: Tap, repeats: number): Promise<TapTimes> {
  const [ms, cpuMs]: [number[], number[]] = [[], []];
  for (let repeat = 0; repeat < repeats; repeat++) {
    await tap.prepare(page);
    await seeScreen(page);
    const target = tap.target(page);
    await target.scrollIntoViewIfNeeded();
    await page.waitForTimeout(REST_MS);
    const place = await target.boundingBox();
    if (place === null) throw new Error(`nothing to tap: ${tap.name}`);
    await watch(page, "click", tap.told);
    const before = await threadMs(devTools);
    await page.mouse.click(place.x + place.width / 2, place.y + place.height / 2);
    ms.push(await answered(page));
    cpuMs.push((await threadMs(devTools)) - before);
  }
  return { name: tap.name, ms, cpuMs };
}

/** Watches for the next event of that kind, and then in every frame whether what is told has changed. */
async function watch(page: Page, event: string, told: string): Promise<void> {
  await page.evaluate(
    ([kind, expression]) => {
      const tell = new Function(`return ${expression}`) as () => unknown;
      const before = tell();
      const answer = new Promise<number>((resolve) => {
        const begin = ({ timeStamp }: Event): void => {
          const look = (): void => {
            if (tell() === before) requestAnimationFrame(look);
            else {
              // A message that is sent from a frame is heard once that frame is painted.
              const { port1, port2 } = new MessageChannel();
              port1.onmessage = () => resolve(performance.now() - timeStamp);
              port2.postMessage(undefined);
            }
          };
          requestAnimationFrame(look);
        };
        addEventListener(kind as string, begin, { capture: true, once: true });
      });
      Object.assign(globalThis, { answer });
    },
    [event, told],
  );
}

/** Milliseconds until the answer was painted; NaN where none came in time. */
function answered(page: Page): Promise<number> {
  return page.evaluate((longestMs) => {
    const late = new Promise<number>((resolve) => setTimeout(() => resolve(Number.NaN), longestMs));
    return Promise.race([(globalThis as unknown as { answer: Promise<number> }).answer, late]);
  }, LONGEST_MS);
}

/** Time of the processor that the page's thread has spent on tasks. **Source**: DevTools protocol, Performance domain. */
async function threadMs(devTools: CDPSession): Promise<number> {
  const { metrics } = await devTools.send("Performance.getMetrics");
  return (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN) * 1000;
}
