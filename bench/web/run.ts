import { parseArgs } from "node:util";
import {
  type KeptState,
  keepState,
  makeDemo,
  meetScreen,
  ON_DEVICE,
  openApp,
  planDays,
  SCREENS,
  waitUntilKept,
} from "@halfloaf/e2e/openApp";
import { hasBrowser, openBrowser } from "@halfloaf/e2e/openBrowser";
import { type ServedApp, serveApp } from "@halfloaf/e2e/serveApp";
import { weighScript } from "@halfloaf/e2e/weighScript";
import type { Browser } from "playwright-core";
import { compareBrowser } from "../menu/compareBrowser.ts";
import { medianOf } from "../work/statistics.ts";
import { measureLighthouse } from "./measureLighthouse.ts";
import { measureTaps } from "./measureTaps.ts";

const PARTS = ["sizes", "starts", "taps", "lighthouse", "planner"] as const;

const HELP = `What the app weighs, how fast it starts and answers, in Chromium over the real server.

  npm run -s bench:web -- [--json] [--parts ${PARTS.join(",")}] [--repeats N]

  --parts    which of them (all)
  --repeats  how often a start, a tap and a run of Lighthouse is measured; medians are told (3)
`;

/** One figure with what it must not be above, or below. */
interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: "kB gz" | "ms" | "of 100" | "times Node";
  readonly most?: number;
  readonly least?: number;
  /** The longest of the times, and the median time of the processor on the page's own thread. */
  readonly worst?: number;
  readonly cpuMs?: number;
  readonly note?: string;
}

const MOST_KB = 130;
const MOST_START_MS = 1000;
const MOST_TAP_MS = 100;

async function measureSizes(browser: Browser, url: string, kept: KeptState): Promise<Figure[]> {
  const first = await weighScript(browser, url, "/");
  const figures: Figure[] = [{ name: "script of a first visit", value: first.pageKb, unit: "kB gz", most: MOST_KB }];
  for (const [name, path] of Object.entries(SCREENS)) {
    const { pageKb, workersKb } = await weighScript(browser, url, path, kept);
    figures.push({ name: `script of ${name} with an open kitchen`, value: pageKb, unit: "kB gz", most: MOST_KB });
    if (workersKb > 0) figures.push({ name: `script of the workers of ${name}`, value: workersKb, unit: "kB gz" });
  }
  return figures;
}

/** From asking for the app until Today shows: from the server on a first visit, and without a network once it is kept. */
async function measureStarts(browser: Browser, url: string, repeats: number): Promise<Figure[]> {
  const [first, offline]: [number[], number[]] = [[], []];
  for (let repeat = 0; repeat < repeats; repeat++) {
    const from = performance.now();
    const { context, page } = await openApp(browser, url, ON_DEVICE);
    await page.getByRole("main").getByRole("heading", { level: 1 }).first().waitFor();
    first.push(performance.now() - from);
    await context.close();
  }
  const { context, page } = await openApp(browser, url, ON_DEVICE);
  await makeDemo(page, "one-ring");
  await waitUntilKept(page);
  await context.setOffline(true);
  for (let repeat = 0; repeat < repeats; repeat++) {
    await page.goto("about:blank");
    const from = performance.now();
    await page.goto("/", { waitUntil: "commit" });
    // What was shown before comes sooner; the start is over once it can be touched.
    await meetScreen(page);
    offline.push(performance.now() - from);
  }
  await context.close();
  return [
    { name: "first visit until it shows, in a new profile", value: medianOf(first), unit: "ms" },
    {
      name: "start without a network",
      value: medianOf(offline),
      unit: "ms",
      most: MOST_START_MS,
      worst: Math.max(...offline),
    },
  ];
}

async function tapFigures(browser: Browser, url: string, repeats: number): Promise<Figure[]> {
  return (await measureTaps(browser, url, repeats)).map(({ name, ms, cpuMs }) => ({
    name: `tap: ${name}`,
    value: medianOf(ms),
    unit: "ms",
    most: MOST_TAP_MS,
    worst: Math.max(...ms),
    ...(cpuMs.length > 0 && { cpuMs: medianOf(cpuMs) }),
  }));
}

async function lighthouseFigures(url: string, repeats: number): Promise<Figure[]> {
  return (await measureLighthouse(url, repeats)).flatMap(({ page, scores, failed }) =>
    Object.entries(scores).map(
      ([category, value]): Figure => ({
        name: `Lighthouse, ${page}: ${category}`,
        value,
        unit: "of 100",
        least: category === "performance" ? 95 : 100,
        ...(category === "performance" && failed.length > 0 && { note: failed.join(", ") }),
      }),
    ),
  );
}

async function planFigures(): Promise<Figure[]> {
  const { ratio, ratioOfLeast } = await compareBrowser("M", 100_000, 5);
  const name = "plan M in the browser's worker";
  return [
    {
      name,
      value: ratio ?? Number.NaN,
      unit: "times Node",
      most: 1.5,
      note: `least against least ${ratioOfLeast.toFixed(2)}`,
    },
  ];
}

async function keepPlanned(browser: Browser, { url }: ServedApp): Promise<KeptState> {
  const { context, page } = await openApp(browser, url);
  await makeDemo(page, "one-ring");
  await planDays(page);
  const kept = await keepState(context);
  await context.close();
  return kept;
}

async function measure(parts: ReadonlySet<string>, repeats: number): Promise<Figure[]> {
  const [browser, served] = await Promise.all([openBrowser(), serveApp()]);
  const { url } = served;
  try {
    const figures: Figure[] = [];
    if (parts.has("sizes")) figures.push(...(await measureSizes(browser, url, await keepPlanned(browser, served))));
    if (parts.has("starts")) figures.push(...(await measureStarts(browser, url, repeats)));
    if (parts.has("taps")) figures.push(...(await tapFigures(browser, url, repeats)));
    if (parts.has("lighthouse")) figures.push(...(await lighthouseFigures(url, repeats)));
    if (parts.has("planner")) figures.push(...(await planFigures()));
    return figures;
  } finally {
    await browser.close();
    await served.close();
  }
}

function isMissed({ value, most = Number.POSITIVE_INFINITY, least = 0 }: Figure): boolean {
  return !(value <= most && value >= least);
}

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    parts: { type: "string", default: PARTS.join(",") },
    repeats: { type: "string", default: "3" },
    help: { type: "boolean", default: false },
  },
});
if (values.help) console.log(HELP);
else {
  if (!hasBrowser) throw new Error("there is no Chromium to measure in");
  const figures = await measure(new Set(values.parts.split(",")), Number(values.repeats));
  if (values.json) console.log(JSON.stringify({ bench: "web", figures }, null, 2));
  else
    for (const figure of figures) {
      const { name, value, unit, most, least, worst, cpuMs, note } = figure;
      const bound = most === undefined ? least !== undefined && `at least ${least}` : `at most ${most}`;
      const rest = [
        bound,
        isMissed(figure) && "missed",
        worst !== undefined && `worst ${worst.toFixed(0)}`,
        cpuMs !== undefined && `processor ${cpuMs.toFixed(0)} ms`,
        note,
      ];
      console.log(
        `${name}: ${value.toFixed(unit === "times Node" ? 2 : 0)} ${unit} (${rest.filter(Boolean).join(", ")})`,
      );
    }
}
