import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import { expect, it } from "vitest";
import { describeChunkStore } from "./describeChunkStore.testing.ts";
import { openIndexedDbStore } from "./indexedDbStore.ts";

globalThis.IDBKeyRange ??= IDBKeyRange;

const openChannel = (name: string) => new BroadcastChannel(name);
let count = 0;

describeChunkStore("A store in IndexedDB", async () => {
  const indexedDB = new IDBFactory();
  const name = `kitchen-${++count}`;
  return {
    open: () => openIndexedDbStore(name, { indexedDB, openChannel }),
    spoil: (seq) =>
      within(indexedDB, name, (chunks) => {
        const request = chunks.get(seq);
        request.onsuccess = () => {
          request.result.bytes[1] ^= 1;
          chunks.put(request.result);
        };
      }),
    raiseVersion: () =>
      new Promise((resolve) => {
        const request = indexedDB.open(name, 2);
        request.onsuccess = () => {
          request.result.close();
          resolve();
        };
      }),
  };
});

it("A store in IndexedDB that is expected and not there was thrown away by the browser", async () => {
  const indexedDB = new IDBFactory();
  expect(await openIndexedDbStore("gone", { indexedDB }, true)).toMatchObject({ ok: false, reason: "missing" });
  const fresh = await openIndexedDbStore("gone", { indexedDB });
  expect(fresh.ok).toBe(true);
  if (fresh.ok) await fresh.store.close();
  expect((await openIndexedDbStore("gone", { indexedDB }, true)).ok).toBe(true);
});

function within(indexedDB: IDBFactory, name: string, act: (chunks: IDBObjectStore) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const transaction = request.result.transaction("chunks", "readwrite");
      transaction.oncomplete = () => {
        request.result.close();
        resolve();
      };
      act(transaction.objectStore("chunks"));
    };
  });
}
