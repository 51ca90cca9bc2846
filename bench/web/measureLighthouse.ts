import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findBrowser } from "@halfloaf/e2e/findBrowser";
import { makeDemo, planDays, waitUntilOnDisk } from "@halfloaf/e2e/openApp";
import lighthouse, { type Flags } from "lighthouse";
import { type BrowserContext, chromium, type Page } from "playwright-core";

const CATEGORIES = ["performance", "accessibility", "best-practices"] as const;
type Category = (typeof CATEGORIES)[number];

/** Scores from 0 to 100 of one page, and what kept a score from being full. */
export interface LighthouseScores {
  readonly page: string;
  readonly scores: Readonly<Record<Category, number>>;
  /** Ids of audits that failed and count. */
  readonly failed: readonly string[];
}

const WITH_KITCHEN = { Today: "/", Menu: "/menu", Buying: "/buying" } as const;

/**
 * Lighthouse with its settings for a phone on the app as it is served: a first visit, then screens of a kitchen whose days are
 * planned, each of which was open before, the app not kept yet. Of several runs each score is the median.
 */
export async function measureLighthouse(url: string, runs: number): Promise<LighthouseScores[]> {
  const profile = mkdtempSync(join(tmpdir(), "halfloaf-lighthouse-"));
  const port = await findPort();
  const found = await findBrowser();
  const args = [...(found?.args ?? []), "--no-sandbox", `--remote-debugging-port=${port}`];
  const context = await chromium.launchPersistentContext(profile, { ...found, args, locale: "en-IE" });
  try {
    const visit = await scorePage(context, "first visit", url, port, runs);
    const page = await context.newPage();
    page.setDefaultTimeout(60_000);
    await page.goto(url);
    await makeDemo(page, "one-ring");
    await planDays(page);
    await waitUntilOnDisk(page);
    for (const path of Object.values(WITH_KITCHEN)) {
      const key = `halfloaf-shown ${path}`;
      // What was kept of it while there was no plan is not true any more.
      await page.evaluate((each) => localStorage.removeItem(each), key);
      await page.goto(new URL(path, url).href);
      await page.waitForFunction((each) => localStorage.getItem(each) !== null, key);
    }
    await page.close();
    const screens: LighthouseScores[] = [];
    for (const [name, path] of Object.entries(WITH_KITCHEN))
      screens.push(await scorePage(context, name, new URL(path, url).href, port, runs));
    return [visit, ...screens];
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

async function scorePage(
  context: BrowserContext,
  name: string,
  url: string,
  port: number,
  runs: number,
): Promise<LighthouseScores> {
  const flags: Flags = { port, output: "json", onlyCategories: [...CATEGORIES], disableStorageReset: true };
  const failed = new Set<string>();
  const scores = new Map<Category, number[]>(CATEGORIES.map((category) => [category, []]));
  for (let run = 0; run < runs; run++) {
    await forgetApp(context, url);
    const result = await lighthouse(url, flags);
    if (result === undefined) throw new Error(`Lighthouse says nothing of ${url}`);
    const { categories, audits, runtimeError } = result.lhr;
    if (runtimeError !== undefined) throw new Error(runtimeError.message);
    for (const category of CATEGORIES) {
      const told = categories[category];
      scores.get(category)?.push(Math.round((told?.score ?? Number.NaN) * 100));
      for (const { id, weight } of told?.auditRefs ?? []) {
        const score = audits[id]?.score;
        if (weight > 0 && typeof score === "number" && score < 0.9)
          failed.add(`${id} ${audits[id]?.displayValue ?? ""}`.trim());
      }
    }
  }
  const median = (category: Category): number =>
    (scores.get(category) ?? []).sort((a, b) => a - b)[Math.floor(runs / 2)] ?? Number.NaN;
  return {
    page: name,
    scores: {
      performance: median("performance"),
      accessibility: median("accessibility"),
      "best-practices": median("best-practices"),
    },
    failed: [...failed],
  };
}

/** The kitchen stays on the device, the app does not: as on a first visit, all of it comes from the server. */
async function forgetApp(context: BrowserContext, url: string): Promise<void> {
  const page: Page = await context.newPage();
  await page.goto(new URL("/manifest.webmanifest", url).href);
  await page.evaluate(async () => {
    for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister();
    for (const cache of await caches.keys()) await caches.delete(cache);
  });
  const devTools = await context.newCDPSession(page);
  await devTools.send("Network.clearBrowserCache");
  await page.close();
}

function findPort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() =>
        typeof address === "object" && address !== null ? resolve(address.port) : reject(new Error("no free port")),
      );
    });
  });
}
