import { type Remote, wrap } from "comlink";
import { useEffect, useRef } from "react";
import { openWorker } from "../../loading/openWorker.ts";
import type { Reasoner } from "./Reasoner.ts";

/** The worker that reasons for a screen: started when it is first asked, ended with the screen or to stop it. */
export function useReasoner(): { readonly ask: () => Remote<Reasoner>; readonly stop: () => void } {
  const running = useRef<{ readonly worker: ReturnType<typeof openWorker>; readonly reasoner: Remote<Reasoner> }>(
    undefined,
  );
  const tools = useRef({
    ask: (): Remote<Reasoner> => {
      if (running.current === undefined) {
        const worker = openWorker(() => new Worker(new URL("./worker.ts", import.meta.url), { type: "module" }));
        running.current = { worker, reasoner: wrap<Reasoner>(worker.endpoint) };
      }
      return running.current.reasoner;
    },
    stop: (): void => {
      running.current?.worker.terminate();
      running.current = undefined;
    },
  });
  useEffect(() => tools.current.stop, []);
  return tools.current;
}
