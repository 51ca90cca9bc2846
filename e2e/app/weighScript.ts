import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { type KeptState, SIZES, seeScreen } from "./openApp.ts";

/** What a first load asks for until the network rests, in kB of 1000 bytes after gzip at its usual level. */
export interface Weight {
  /** Script of the page and of the service worker that keeps the app. */
  readonly pageKb: number;
  /** Script of the workers that the page starts by itself, later than what it shows. */
  readonly workersKb: number;
}

/**
 * Weighs the script of a first load of that path, for a new visitor or for one who has that kitchen. What the service worker
 * fetches to keep is left out, since no page waits for it.
 */
export async function weighScript(browser: Browser, url: string, path: string, kept?: KeptState): Promise<Weight> {
  const context = await browser.newContext({
    baseURL: url,
    locale: "en-IE",
    viewport: SIZES.phone,
    serviceWorkers: "block",
    ...(kept && { storageState: kept }),
  });
  try {
    const page = await context.newPage();
    const scripts = new Map<string, Promise<Buffer>>();
    const workers = new Set<string>();
    page.on("worker", (worker) => workers.add(worker.url()));
    page.on("response", (response) => {
      if (new URL(response.url()).pathname.endsWith(".js")) scripts.set(response.url(), response.body());
    });
    await page.goto(path, { waitUntil: "networkidle" });
    await seeScreen(page);
    await page.waitForLoadState("networkidle");
    // What is loaded once the page was left alone for a while is no part of its start.
    page.removeAllListeners("response");
    const weights = { pageKb: await weighServiceWorker(url), workersKb: 0 };
    for (const [address, body] of scripts) weights[workers.has(address) ? "workersKb" : "pageKb"] += toKb(await body);
    return weights;
  } finally {
    await context.close();
  }
}

/** The service worker is a script and one that it imports by name. */
async function weighServiceWorker(url: string): Promise<number> {
  const fetchText = async (name: string): Promise<string> => (await fetch(new URL(name, url))).text();
  const script = await fetchText("sw.js");
  const imported = /workbox-\w+/.exec(script)?.[0];
  if (imported === undefined) throw new Error("the service worker imports nothing");
  return toKb(script) + toKb(await fetchText(`${imported}.js`));
}

function toKb(script: Buffer | string): number {
  return gzipSync(script).length / 1000;
}
