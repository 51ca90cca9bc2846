import { expect, it } from "vitest";
import { boughtOats, openKept } from "../keep.testing.ts";
import { openMemoryStore } from "../memoryStore.testing.ts";
import { KitchenSync } from "./KitchenSync.ts";
import type { Membership, Socket, SyncMark } from "./syncView.ts";

const AT: Membership = { server: "http://127.0.0.1:9", kitchen: "loft", device: "phone", credential: "secret" };

/** A socket that never opens, as where there is no network. */
const openSocket = (): Socket => ({
  onopen: null,
  onmessage: null,
  onclose: null,
  onerror: null,
  send: () => {},
  close: () => {},
});

async function startApart(mark: SyncMark | undefined) {
  const kept = await openKept(openMemoryStore());
  for (const lot of ["oats-1", "oats-2", "oats-3"]) await kept.add([boughtOats(lot)]);
  const sync = new KitchenSync(kept, AT, { openSocket, memory: { read: () => mark, write: () => {} } });
  sync.start();
  return { kept, sync };
}

it("what waits to be sent is known by what is kept before the server is met, and what is added is added to it", async () => {
  const { kept, sync } = await startApart({ log: "first", upTo: 1 });
  expect(sync.view.unsent).toBe(2);
  await kept.add([boughtOats("oats-4")]);
  expect(sync.view.unsent).toBe(3);
  sync.stop();
});

it("nothing is said to wait where it is not known what the server has, or where it has all", async () => {
  for (const mark of [undefined, { log: "first", upTo: 3 }, { log: "first", upTo: 9 }]) {
    const { sync } = await startApart(mark);
    expect(sync.view.unsent).toBe(0);
    sync.stop();
  }
});
