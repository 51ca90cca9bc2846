import { STORE_VERSION } from "./ChunkStore.ts";

/**
 * The `seq` of the last chunk of a store in IndexedDB, without a look at what it holds: whoever knows it has nothing to catch up
 * with. Undefined where there is no such store, it is of another version, or it is empty.
 */
export function readLastSeq(name: string, indexedDB: IDBFactory): Promise<number | undefined> {
  return new Promise((resolve) => {
    const request = indexedDB.open(name, STORE_VERSION);
    request.onupgradeneeded = () => request.transaction?.abort();
    request.onerror = () => resolve(undefined);
    request.onsuccess = () => {
      const database = request.result;
      const transaction = database.transaction("chunks", "readonly");
      const keys = transaction.objectStore("chunks").openKeyCursor(null, "prev");
      transaction.oncomplete = () => resolve(keys.result === null ? undefined : Number(keys.result.key));
      transaction.onabort = () => resolve(undefined);
      // It closes once the transaction is done.
      database.close();
    };
  });
}
