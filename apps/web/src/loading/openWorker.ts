import type { Endpoint } from "comlink";
import { lateLoads } from "./lateLoads.ts";
import { loadSurely } from "./loadSurely.ts";

/** A worker that may still be on its way. */
interface OpenedWorker {
  /** What is said to it waits until it is there. */
  readonly endpoint: Endpoint;
  terminate(): void;
}

/**
 * Starts a worker whose script comes over the network, again until it is there. The worker says so by `tellPage`, and what it
 * waits for is late in the page as well.
 */
export function openWorker(start: () => Worker): OpenedWorker {
  let isOver = false;
  const ready = loadSurely(() => (isOver ? new Promise<Worker>(() => {}) : begin(start)));
  let end = (): void => {};
  const hear = ({ data }: MessageEvent): void => {
    if (!isLateness(data)) return;
    end();
    end = data.isLate ? lateLoads.begin() : (): void => {};
  };
  void ready.then((worker) => worker.addEventListener("message", hear));
  return {
    endpoint: {
      postMessage: (message, transfer = []) => void ready.then((worker) => worker.postMessage(message, transfer)),
      addEventListener: (...heard) => void ready.then((worker) => worker.addEventListener(...heard)),
      removeEventListener: (...heard) => void ready.then((worker) => worker.removeEventListener(...heard)),
    },
    terminate: () => {
      isOver = true;
      end();
      void ready.then((worker) => worker.terminate());
    },
  };
}

/** Called in a worker once it hears: says so to the page, and from then on whether something is late in the worker. */
export function tellPage(): void {
  const tell = (): void => postMessage({ isLate: lateLoads.lateness !== "none" });
  tell();
  lateLoads.subscribe(tell);
}

function begin(start: () => Worker): Promise<Worker> {
  return new Promise((resolve, reject) => {
    const worker = start();
    const over = new AbortController();
    const fail = (): void => {
      worker.terminate();
      reject(new Error("the worker could not be started"));
    };
    const succeed = (): void => {
      over.abort();
      resolve(worker);
    };
    worker.addEventListener("error", fail, { signal: over.signal });
    worker.addEventListener("message", succeed, { signal: over.signal });
  });
}

function isLateness(data: unknown): data is { readonly isLate: boolean } {
  return typeof data === "object" && data !== null && "isLate" in data;
}
