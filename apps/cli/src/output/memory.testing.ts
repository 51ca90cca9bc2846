import { PLAIN } from "./paint.ts";
import type { Terminal } from "./Terminal.ts";

/** A terminal without a screen that remembers what it was told. */
export interface Memory extends Terminal {
  readonly printed: string[];
  readonly talked: string[];
  readonly progress: string[];
}

/** A terminal for running commands within a test, in a folder. `stopAfter` pauses a person asks to stop. */
export function toMemory(cwd: string, width = 80, stopAfter = Number.POSITIVE_INFINITY): Memory {
  const printed: string[] = [];
  const talked: string[] = [];
  const progress: string[] = [];
  const listeners = new Set<() => void>();
  let pauses = 0;
  return {
    cwd,
    env: {},
    nowMs: () => Date.now(),
    page: { width, paint: PLAIN },
    talkPaint: PLAIN,
    printed,
    talked,
    progress,
    print: (text) => void printed.push(text),
    talk: (text) => void talked.push(text),
    showProgress: (text) => void progress.push(text),
    onStop: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    pause: () => {
      pauses++;
      if (pauses === stopAfter) for (const listener of listeners) listener();
      return Promise.resolve();
    },
  };
}
