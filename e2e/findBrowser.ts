import { env } from "node:process";
import { browserPlaces, isRunnable } from "@halfloaf/cli/browserPlaces";
import { chromium, type LaunchOptions } from "playwright-core";

/**
 * How to start a browser of the Chromium family: the one that `CHROMIUM_PATH` names, else one installed in a usual
 * place, else the one that Playwright has downloaded, else the one of the package `@sparticuz/chromium`. Undefined where
 * there is none. Throws where `CHROMIUM_PATH` names nothing that can be run.
 */
export async function findBrowser(): Promise<LaunchOptions | undefined> {
  const named = env.CHROMIUM_PATH;
  if (named) {
    if (!isRunnable(named)) throw new Error(`CHROMIUM_PATH names "${named}", which can't be run`);
    return { executablePath: named };
  }
  const installed = [...browserPlaces(), chromium.executablePath()].find(isRunnable);
  return installed === undefined ? findPackaged() : { executablePath: installed };
}

/** The package is optional and for Linux alone, so its name is no import that must be there. */
async function findPackaged(): Promise<LaunchOptions | undefined> {
  const name = "@sparticuz/chromium";
  const packaged: { default: { args: string[]; executablePath(): Promise<string> } } | undefined = await import(
    name
  ).catch(() => undefined);
  if (packaged === undefined) return undefined;
  return { executablePath: await packaged.default.executablePath(), args: packaged.default.args };
}
