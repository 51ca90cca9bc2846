import type { TestProject } from "vitest/node";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { type KeptState, keepState, makeDemo, openApp, planDays } from "./openApp.ts";
import { serveApp } from "./serveApp.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the app is served. */
    appUrl: string;
    /** What the browser keeps of a demo kitchen whose days are planned. */
    planned: KeptState;
  }
}

/** Builds the app, serves it and plans the days of a demo kitchen, once for all tests of the app. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const served = await serveApp();
  project.provide("appUrl", served.url);
  if (hasBrowser) {
    const browser = await openBrowser();
    const app = await openApp(browser, served.url);
    await makeDemo(app.page, "one-ring");
    await planDays(app.page);
    project.provide("planned", await keepState(app.context));
    await browser.close();
  }
  return () => served.close();
}
