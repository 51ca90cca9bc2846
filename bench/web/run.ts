import { parseArgs } from "node:util";
import { gzipSync } from "node:zlib";
import { keepState, makeDemo, openApp, waitUntilKept } from "@halfloaf/e2e/openApp";
import { hasBrowser, openBrowser } from "@halfloaf/e2e/openBrowser";
import { serveApp } from "@halfloaf/e2e/serveApp";
import type { Browser, BrowserContextOptions } from "playwright-core";
import { medianOf } from "../work/statistics.ts";

const HELP = `What the app weighs and how fast it starts, in Chromium on a page as wide as a phone.

  npm run -s bench:web -- [--json] [--repeats N]

  --repeats N  how often a start without a network is measured; the median is told (5)
`;

/** One figure with what it must not be above. */
interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: "kB gz" | "ms";
  readonly most: number;
}

/** The script that a page asks for until the network rests, in kB after gzip at its usual level. */
async function weighScript(
  browser: Browser,
  url: string,
  storageState?: BrowserContextOptions["storageState"],
): Promise<number> {
  const context = await browser.newContext({
    baseURL: url,
    viewport: { width: 360, height: 740 },
    serviceWorkers: "block",
    ...(storageState && { storageState }),
  });
  const page = await context.newPage();
  const bodies: Promise<Buffer>[] = [];
  page.on("response", (response) => {
    if (new URL(response.url()).pathname.endsWith(".js")) bodies.push(response.body());
  });
  await page.goto("/", { waitUntil: "networkidle" });
  await page.getByRole("main").getByRole("heading", { level: 1 }).first().waitFor();
  const scripts = await Promise.all(bodies);
  await context.close();
  return scripts.reduce((sum, body) => sum + gzipSync(body).length, 0) / 1000;
}

/** Milliseconds from asking for the app without a network until Today of a demo kitchen shows. */
async function timeOfflineStarts(browser: Browser, url: string, repeats: number): Promise<number[]> {
  const { context, page } = await openApp(browser, url);
  await makeDemo(page, "one-ring");
  await waitUntilKept(page);
  await context.setOffline(true);
  const times: number[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    await page.goto("about:blank");
    const from = performance.now();
    await page.goto("/", { waitUntil: "commit" });
    await page.getByRole("main").getByRole("heading", { level: 1 }).first().waitFor();
    times.push(performance.now() - from);
  }
  await context.close();
  return times;
}

async function measure(repeats: number): Promise<Figure[]> {
  const [browser, served] = await Promise.all([openBrowser(), serveApp()]);
  try {
    const first = await weighScript(browser, served.url);
    const { context, page } = await openApp(browser, served.url);
    await makeDemo(page, "one-ring");
    const kept = await keepState(context);
    await context.close();
    const open = await weighScript(browser, served.url, kept);
    const start = medianOf(await timeOfflineStarts(browser, served.url, repeats));
    return [
      { name: "script of a first visit", value: first, unit: "kB gz", most: 130 },
      { name: "script of Today with an open kitchen", value: open, unit: "kB gz", most: 130 },
      { name: "start without a network", value: start, unit: "ms", most: 1000 },
    ];
  } finally {
    await browser.close();
    await served.close();
  }
}

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    repeats: { type: "string", default: "5" },
    help: { type: "boolean", default: false },
  },
});
if (values.help) console.log(HELP);
else {
  if (!hasBrowser) throw new Error("there is no Chromium to measure in");
  const figures = await measure(Number(values.repeats));
  if (values.json) console.log(JSON.stringify({ bench: "web", figures }, null, 2));
  else
    for (const { name, value, unit, most } of figures)
      console.log(`${name}: ${value.toFixed(1)} ${unit} (at most ${most}${value > most ? ", missed" : ""})`);
}
