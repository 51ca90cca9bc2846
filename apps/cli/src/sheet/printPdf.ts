import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";
import { browserPlaces, isRunnable } from "./browserPlaces.ts";

const LONGEST_MS = 120_000;
const run = promisify(execFile);

/**
 * The bytes of a page as a browser prints it: the one that `CHROMIUM_PATH` names, else one of the Chromium family that is
 * installed. `path` is where the PDF will stand: the browser works in a folder beside it, since one that is shut in by the
 * system may read and write there but not among temporary files.
 */
export async function printPdf(page: string, path: string, { env }: Pick<Terminal, "env">): Promise<Found<Uint8Array>> {
  const browser = env.CHROMIUM_PATH ?? browserPlaces().find(isRunnable);
  if (browser === undefined) return refuse(tellNoBrowser());
  const folder = mkdtempSync(join(dirname(path), "halfloaf-print-"));
  try {
    const [from, to] = [join(folder, "sheet.html"), join(folder, "sheet.pdf")];
    writeFileSync(from, page);
    await run(
      browser,
      [
        "--headless",
        "--disable-gpu",
        // Chromium's sandbox does not start for the superuser; the page is our own and forbids scripts and requests.
        ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
        "--no-first-run",
        `--user-data-dir=${join(folder, "profile")}`,
        "--no-pdf-header-footer",
        `--print-to-pdf=${to}`,
        pathToFileURL(from).href,
      ],
      { timeout: LONGEST_MS },
    );
    return { ok: true, value: readFileSync(to) };
  } catch (error) {
    return refuse(tellNotPrinted(browser, error));
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

function tellNoBrowser() {
  return {
    code: "no-browser",
    path: [],
    sentence: "A PDF is printed by a browser of the Chromium family, and none was found.",
    remedy: "Name one in CHROMIUM_PATH, or write the sheet as .html and print it from any browser.",
  };
}

function tellNotPrinted(browser: string, error: unknown) {
  const [first = ""] = (error instanceof Error ? error.message : String(error)).split("\n");
  return {
    code: "not-printed",
    path: [],
    value: quote(browser),
    sentence: `The browser ${quote(browser)} printed nothing: ${first}`,
    remedy: "Name another one in CHROMIUM_PATH, or write the sheet as .html and print it from any browser.",
  };
}
