import { en } from "@halfloaf/web/words";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";

/** The two sizes everything must be good at: a small phone and a small laptop. */
export const SIZES = {
  phone: { width: 360, height: 740 },
  laptop: { width: 1280, height: 800 },
} as const;

/** The app's screens by their address. */
export const SCREENS = {
  today: "/",
  menu: "/menu",
  buying: "/buying",
  work: "/work",
  stores: "/stores",
  dishes: "/dishes",
  prices: "/prices",
  accounts: "/accounts",
  kitchen: "/kitchen",
} as const;

/** The app open in a browser of its own, with what went wrong in it. */
export interface OpenApp {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Errors of the page and of its console, in order. */
  readonly errors: readonly string[];
}

/** What a browser keeps of the app, for another to begin with. */
export type KeptState = Awaited<ReturnType<BrowserContext["storageState"]>>;

/** What the browser keeps by now. */
export function keepState(context: BrowserContext): Promise<KeptState> {
  return context.storageState({ indexedDB: true });
}

/** How the app is opened: as one who has been there, and with a clock that goes on from that local time. */
export type OpenOptions = BrowserContextOptions & { readonly storageState?: KeptState; readonly now?: string };

/** An option of `openApp`: the app keeps itself on the device by its service worker. */
export const ON_DEVICE = { serviceWorkers: "allow" } as const;

/**
 * Opens the app as a new visitor, or as one who has been there; with `now`, its clock goes on from that local time, and without
 * it no sitting of today is over, whatever the time is. It keeps itself on the device only with `ON_DEVICE`: to fetch and keep every file takes more of the processor than most tests do.
 */
export async function openApp(browser: Browser, url: string, { now, ...options }: OpenOptions = {}): Promise<OpenApp> {
  const context = await browser.newContext({
    baseURL: url,
    locale: "en-IE",
    viewport: SIZES.phone,
    hasTouch: options.viewport?.width === SIZES.phone.width,
    serviceWorkers: "block",
    ...options,
  });
  context.setDefaultTimeout(60_000);
  if (now !== undefined) await context.clock.install({ time: new Date(now) });
  else await context.addInitScript(sitLate);
  const page = await context.newPage();
  const errors: string[] = [];
  page.on("pageerror", ({ message }) => errors.push(message));
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  await openAt(page, "/");
  return { context, page, errors };
}

/** Lets everybody sit down as late as can be; where nothing is kept, as on an empty page, nothing is to be told. */
function sitLate(): void {
  const key = "halfloaf-sitting-times";
  const late = 24 * 60 - 1;
  const times = { morning: late, midday: late, between: late, evening: late };
  try {
    if (localStorage.getItem(key) === null) localStorage.setItem(key, JSON.stringify(times));
  } catch {}
}

/** Makes the demo kitchen of that name, and waits until Today shows. */
export async function makeDemo(page: Page, name: string, words = en): Promise<void> {
  const about = words.first.demos[name];
  if (about === undefined) throw new Error(`there is no demo kitchen "${name}"`);
  await page.getByRole("button", { name: about }).click();
  await page.getByText(words.today.noMenu).waitFor();
}

/** Plans, takes the first plan there is, and accepts it. */
export async function planDays(page: Page, words = en): Promise<void> {
  await goTo(page, "menu", words);
  await page.getByRole("button", { name: words.menu.plan }).click();
  await page.getByText(words.menu.legend).waitFor();
  await takePlan(page, words);
}

/** Takes the best plan there is so far, and accepts it. */
export async function takePlan(page: Page, words = en): Promise<void> {
  const stop = page.getByRole("button", { name: words.menu.stop });
  const accept = page.getByRole("button", { name: words.menu.accept });
  await stop.or(accept).click();
  // A small kitchen may have been planned to its end by then, and the click has taken the plan already.
  const anew = page.getByRole("button", { name: words.menu.planAnew });
  if (
    await accept
      .or(anew)
      .first()
      .waitFor()
      .then(() => accept.isVisible())
  )
    await accept.click();
  await accept.waitFor({ state: "detached" });
}

/** Goes to a screen as a visitor does: by the ways, or behind "More" on a narrow page. */
export async function goTo(page: Page, screen: keyof typeof SCREENS, words = en): Promise<void> {
  const ways = page.getByRole("navigation", { name: words.shell.ways });
  await ways.waitFor();
  const way = ways.locator(`a[href="${SCREENS[screen]}"]`);
  if (await way.isVisible()) await way.click();
  else {
    await ways.getByRole("link", { name: words.shell.more }).click();
    await page.getByRole("main").getByRole("listitem").locator(`a[href="${SCREENS[screen]}"]`).click();
  }
  await seeScreen(page, words);
}

/** Loads the page at an address of the app once all that was told is on disk, and waits until its screen can be touched. */
export async function openAt(page: Page, address: string): Promise<void> {
  await waitUntilOnDisk(page);
  await page.goto(address);
  await meetScreen(page);
}

/** Waits until the screen of a start can be touched: what was shown before stands outside of the app's own place. */
export function meetScreen(page: Page): Promise<void> {
  return page.locator("#app main h1").first().waitFor();
}

/** Waits until the screen is there and not only on its way. */
export async function seeScreen(page: Page, words = en): Promise<void> {
  await meetScreen(page);
  await page.getByText(words.shell.loading).waitFor({ state: "detached" });
}

/** Waits until the app is kept on the device and serves this page, which takes `ON_DEVICE`. */
export async function waitUntilKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null)
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener("controllerchange", resolve, { once: true }),
      );
  });
}

/** Loads the page anew once all that was told is on disk, and waits until its screen can be touched. */
export async function reloadPage(page: Page): Promise<void> {
  await waitUntilOnDisk(page);
  await page.reload();
  await meetScreen(page);
}

/** Waits until all that was told is on disk, so that the browser would not ask whether to leave. */
export async function waitUntilOnDisk(page: Page): Promise<void> {
  while (!(await page.evaluate(mayLeave))) await page.waitForTimeout(20);
}

/** Runs in the page: true where it may be left without a question. */
export function mayLeave(): boolean {
  return window.dispatchEvent(new Event("beforeunload", { cancelable: true }));
}
