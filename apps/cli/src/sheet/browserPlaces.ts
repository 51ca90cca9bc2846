import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { env, platform } from "node:process";

const LINUX_NAMES = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "microsoft-edge"];
const MAC_PATHS = ["Chromium", "Google Chrome", "Microsoft Edge"].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
);
const WINDOWS_PATHS = ["Google\\Chrome\\Application\\chrome.exe", "Microsoft\\Edge\\Application\\msedge.exe"];
const WINDOWS_ROOTS = [env.PROGRAMFILES, env["PROGRAMFILES(X86)"], env.LOCALAPPDATA];

/** Where a browser of the Chromium family is usually installed on this system, whether one is there or not. */
export function browserPlaces(): string[] {
  if (platform === "darwin") return MAC_PATHS;
  if (platform === "win32")
    return WINDOWS_ROOTS.flatMap((root) => (root ? WINDOWS_PATHS.map((path) => join(root, path)) : []));
  const folders = (env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  return LINUX_NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** True where a file can be run. */
export function isRunnable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
