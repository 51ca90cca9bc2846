import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import {
  goTo,
  type KeptState,
  keepState,
  makeDemo,
  type OpenApp,
  openApp,
  planDays,
  SCREENS,
  SIZES,
} from "../app/openApp.ts";
import { serveApp } from "../app/serveApp.ts";
import { openBrowser } from "../openBrowser.ts";

const folder = fileURLToPath(new URL("../../docs/screens/", import.meta.url));

/** Takes pictures of every screen of a planned demo kitchen, light and dark, on a phone and on a laptop. */
async function takePictures(): Promise<void> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const [browser, served] = await Promise.all([openBrowser(), serveApp()]);
  try {
    const first = await openApp(browser, served.url, { viewport: SIZES.laptop });
    await makeDemo(first.page, "one-ring");
    await planDays(first.page);
    const planned = await keepState(first.context);
    await first.context.close();
    for (const size of Object.keys(SIZES) as (keyof typeof SIZES)[])
      for (const colorScheme of ["light", "dark"] as const) {
        const look = { viewport: SIZES[size], colorScheme };
        const open = (storageState?: KeptState): Promise<OpenApp> =>
          openApp(browser, served.url, { ...look, ...(storageState && { storageState }) });
        const take = async ({ page }: OpenApp, name: string): Promise<void> => {
          const path = join(folder, `${name}-${size}-${colorScheme}.png`);
          await page.screenshot({ path, animations: "disabled" });
          shrink(path);
        };
        const visitor = await open();
        await visitor.page.getByRole("heading", { level: 1 }).waitFor();
        await take(visitor, "first");
        await visitor.context.close();
        const cook = await open(planned);
        for (const screen of Object.keys(SCREENS) as (keyof typeof SCREENS)[]) {
          await goTo(cook.page, screen);
          await cook.page.evaluate(() => scrollTo(0, 0));
          await take(cook, screen);
        }
        await cook.context.close();
      }
  } finally {
    await browser.close();
    await served.close();
  }
}

/** Few colours are enough for flat areas and text, and make a file a third of the size. */
function shrink(path: string): void {
  const { status } = spawnSync("mogrify", ["-strip", "-dither", "None", "-colors", "128", `PNG8:${path}`]);
  if (status !== 0) console.warn(`${path} keeps all its colours: ImageMagick is not here.`);
}

await takePictures();
