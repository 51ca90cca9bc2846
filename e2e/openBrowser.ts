import { env } from "node:process";
import { type Browser, chromium } from "playwright-core";
import { findBrowser } from "./findBrowser.ts";

const found = await findBrowser();
if (found === undefined) {
  const missing = "No browser of the Chromium family was found; name one in CHROMIUM_PATH.";
  if (env.CI) throw new Error(missing);
  console.warn(`${missing} What needs one is skipped.`);
}

/** True where there is a browser; without one, tests that need it are skipped at a desk and fail on a build machine. */
export const hasBrowser = found !== undefined;

/** A browser without a window, with more options of its command line. Close it, else the process does not end. */
export async function openBrowser(options: readonly string[] = []): Promise<Browser> {
  // Chromium's sandbox needs rights that containers don't give; only pages of our own are opened.
  return chromium.launch({ ...found, args: [...(found?.args ?? []), "--no-sandbox", ...options] });
}
