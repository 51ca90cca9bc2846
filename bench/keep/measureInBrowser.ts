import { fileURLToPath } from "node:url";
import { hasBrowser, openBrowser } from "@halfloaf/e2e/openBrowser";
import { bundlePage, servePage } from "@halfloaf/e2e/servePage";
import type { CDPSession } from "playwright-core";
import type { Keeping } from "./page/page.ts";

declare const keeping: Keeping;

/** What opening took by the wall clock, and the page's own thread of the processor. */
export interface OpenedInBrowser {
  readonly ms: number;
  readonly cpuMs: number;
}

/**
 * What Chromium takes to open a kitchen of so many events kept in IndexedDB and to derive its state: each time in a page
 * that has just been loaded. None where there is no browser.
 */
export async function measureInBrowser(count: number, seed: number, repeats: number): Promise<OpenedInBrowser[]> {
  if (!hasBrowser) return [];
  const page = fileURLToPath(new URL("./page/", import.meta.url));
  const [browser, served] = await Promise.all([
    openBrowser(),
    bundlePage(page).then((files) => servePage(files, false)),
  ]);
  try {
    const tab = await (await browser.newContext()).newPage();
    const devTools = await tab.context().newCDPSession(tab);
    await devTools.send("Performance.enable", { timeDomain: "threadTicks" });
    const times: OpenedInBrowser[] = [];
    await tab.goto(served.url);
    await tab.evaluate(([events, of]) => keeping.fill(events as number, of as number), [count, seed]);
    for (let repeat = 0; repeat < repeats; repeat++) {
      await tab.goto(served.url);
      const before = await threadMs(devTools);
      const ms = await tab.evaluate(() => keeping.open());
      times.push({ ms, cpuMs: (await threadMs(devTools)) - before });
    }
    return times;
  } finally {
    await browser.close();
    await served.close();
  }
}

/** Time of the processor that the page's thread has spent on tasks. **Source**: DevTools protocol, Performance domain. */
async function threadMs(devTools: CDPSession): Promise<number> {
  const { metrics } = await devTools.send("Performance.getMetrics");
  return (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN) * 1000;
}
