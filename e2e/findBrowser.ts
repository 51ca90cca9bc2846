import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { env, platform } from "node:process";
import { chromium, type LaunchOptions } from "playwright-core";

const LINUX_NAMES = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "microsoft-edge"];
const MAC_PATHS = ["Chromium", "Google Chrome", "Microsoft Edge"].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
);
const WINDOWS_PATHS = ["Google\\Chrome\\Application\\chrome.exe", "Microsoft\\Edge\\Application\\msedge.exe"];
const WINDOWS_ROOTS = [env.PROGRAMFILES, env["PROGRAMFILES(X86)"], env.LOCALAPPDATA];

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
  const installed = [...listUsualPlaces(), chromium.executablePath()].find(isRunnable);
  return installed === undefined ? findPackaged() : { executablePath: installed };
}

function listUsualPlaces(): string[] {
  if (platform === "darwin") return MAC_PATHS;
  if (platform === "win32")
    return WINDOWS_ROOTS.flatMap((root) => (root ? WINDOWS_PATHS.map((path) => join(root, path)) : []));
  const folders = (env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  return LINUX_NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
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

function isRunnable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
