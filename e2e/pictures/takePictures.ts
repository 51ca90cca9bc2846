import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { goTo, makeDemo, type OpenApp, openApp, planDays, SCREENS, SIZES } from "../app/openApp.ts";
import { serveApp } from "../app/serveApp.ts";
import { openBrowser } from "../openBrowser.ts";
import { SCENES } from "./scenes.ts";

const folder = fileURLToPath(new URL("../../docs/screens/", import.meta.url));

/** Takes pictures of every screen of a kitchen in use, and of what they show when touched, light and dark, on a phone and on a laptop. */
async function takePictures(): Promise<void> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const [browser, served] = await Promise.all([openBrowser(), serveApp()]);
  try {
    for (const size of Object.keys(SIZES) as (keyof typeof SIZES)[])
      for (const colorScheme of ["light", "dark"] as const) {
        const app = await openApp(browser, served.url, { viewport: SIZES[size], colorScheme });
        const take = (name: string): Promise<void> => picture(app, join(folder, `${name}-${size}-${colorScheme}.png`));
        await app.page.getByRole("heading", { level: 1 }).waitFor();
        await take("first");
        await makeDemo(app.page, "port-ansel");
        await planDays(app.page);
        for (const screen of Object.keys(SCREENS) as (keyof typeof SCREENS)[]) {
          await goTo(app.page, screen);
          await take(screen);
        }
        if (size === "phone")
          for (const [name, show] of SCENES) {
            await show(app.page);
            await take(name);
          }
        if (app.errors.length > 0) throw new Error(app.errors.join("\n"));
        await app.context.close();
      }
  } finally {
    await browser.close();
    await served.close();
  }
}

async function picture({ page }: OpenApp, path: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path, animations: "disabled" });
  shrink(path);
}

/** Few colours are enough for flat areas and text, and make a file a third of the size. */
function shrink(path: string): void {
  const { status } = spawnSync("mogrify", ["-strip", "-dither", "None", "-colors", "128", `PNG8:${path}`]);
  if (status !== 0) console.warn(`${path} keeps all its colours: ImageMagick is not here.`);
}

await takePictures();
