import { type Remote, wrap } from "comlink";
import { openWorker } from "../loading/openWorker.ts";
import type { Thinker } from "./Thinker.ts";

let thinker: Remote<Thinker> | undefined;

/** The one worker that thinks for this page, started when it is first asked. */
export function startThinker(): Remote<Thinker> {
  thinker ??= wrap<Thinker>(
    openWorker(() => new Worker(new URL("./worker.ts", import.meta.url), { type: "module" })).endpoint,
  );
  return thinker;
}
