import { KeptKitchen } from "@halfloaf/keep";
import { openIndexedDbStore } from "@halfloaf/keep/browser";
import { Pen } from "halfloaf/kitchen/record";
import { createRandomSource } from "halfloaf/quantity";
import { makeLife } from "../makeLife.ts";

/** What the bench asks of the page; it stands in the page's `keeping`. */
export interface Keeping {
  /** Keeps a life of so many events in IndexedDB. */
  fill(count: number, seed: number): Promise<void>;
  /** Opens what is kept and derives its state; in milliseconds. */
  open(): Promise<number>;
}

async function openKept(): Promise<KeptKitchen> {
  const opened = await openIndexedDbStore("bench", { indexedDB });
  if (!opened.ok) throw new Error(`${opened.reason}: ${opened.detail}`);
  const kept = await KeptKitchen.open(opened.store, { foods: new Map(), device: "browser" });
  if ("ok" in kept) throw new Error(`${kept.reason}: ${kept.detail}`);
  return kept;
}

const keeping: Keeping = {
  async fill(count, seed) {
    const pen = new Pen({ device: "bench-1", nowMs: 1 }, 0, undefined);
    const kept = await openKept();
    await kept.merge(makeLife(count, createRandomSource(seed), "lot").map((body) => pen.write(body)));
    await kept.close();
  },
  async open() {
    const started = performance.now();
    const kept = await openKept();
    if (kept.events.state.lots.size === 0) throw new Error("nothing was read");
    const took = performance.now() - started;
    await kept.close();
    return took;
  },
};
Object.assign(globalThis, { keeping });
