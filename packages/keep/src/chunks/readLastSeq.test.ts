import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import { expect, it } from "vitest";
import { openIndexedDbStore } from "./indexedDbStore.ts";
import { readLastSeq } from "./readLastSeq.ts";

globalThis.IDBKeyRange ??= IDBKeyRange;

it("The last piece of a store is known without a look at what it holds, while it is open elsewhere too", async () => {
  const indexedDB = new IDBFactory();
  const opened = await openIndexedDbStore("kitchen", { indexedDB });
  if (!opened.ok) throw new Error(opened.detail);
  expect(await readLastSeq("kitchen", indexedDB)).toBeUndefined();
  for (const byte of [1, 2, 3]) {
    const kept = await opened.store.append(new Uint8Array([byte]));
    expect(await readLastSeq("kitchen", indexedDB)).toBe(kept.ok ? kept.seq : "kept");
  }
  const compacted = await opened.store.compact(new Uint8Array([4]), 3);
  expect(await readLastSeq("kitchen", indexedDB)).toBe(compacted.ok ? compacted.seq : "kept");
  await opened.store.close();
});

it("A store that is not there has no last piece, and is not made by asking", async () => {
  const indexedDB = new IDBFactory();
  expect(await readLastSeq("gone", indexedDB)).toBeUndefined();
  expect(await openIndexedDbStore("gone", { indexedDB }, true)).toMatchObject({ reason: "missing" });
});
