import { type Serving, serve } from "@halfloaf/server";
import { buildApp } from "@halfloaf/web/build";

/** The app on its real server, until it is closed. */
export interface ServedApp extends Serving {
  /** Where it is, with a slash at its end. */
  readonly url: string;
}

/** Serves the app on a free port of this machine: the built one, or the one in that folder. */
export async function serveApp(files = buildApp()): Promise<ServedApp> {
  const serving = await serve({ files }, 0, "127.0.0.1");
  // A service worker needs a place that counts as safe; a machine's own address does.
  return { ...serving, url: `http://127.0.0.1:${serving.port}/` };
}
