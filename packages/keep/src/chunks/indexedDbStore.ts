import {
  type Chunk,
  type ChunkKind,
  type ChunkStore,
  type ChunksRead,
  type DamagedChunk,
  type Kept,
  type OpenedStore,
  STORE_VERSION,
  type StoreFault,
} from "./ChunkStore.ts";
import { isStillSealed, seal } from "./seal.ts";

/** What a browser offers that the store needs; given as arguments so that another make of them can serve. */
export interface BrowserParts {
  readonly indexedDB: IDBFactory;
  /** Tells other tabs of a change; absent = they find out when they next read. */
  readonly openChannel?: (name: string) => BroadcastChannel;
}

interface Row {
  readonly seq?: number;
  readonly kind: ChunkKind;
  readonly covers: number;
  readonly bytes: Uint8Array;
  readonly sealed: Uint8Array;
}

/**
 * Opens the store in a database of IndexedDB, made where there is none unless it is `expected` to be there: then
 * "missing" says that the browser has thrown it away. A database of a later version is left untouched.
 */
export async function openIndexedDbStore(
  name: string,
  parts: BrowserParts,
  expected = false,
): Promise<OpenedStore<ChunkStore>> {
  let isNew = false;
  try {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = parts.indexedDB.open(name, STORE_VERSION);
      request.onupgradeneeded = () => {
        isNew = true;
        if (expected) request.transaction?.abort();
        else request.result.createObjectStore("chunks", { keyPath: "seq", autoIncrement: true });
      };
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    return { ok: true, store: new IndexedDbStore(database, parts.openChannel?.(`halfloaf-${name}`)) };
  } catch (error) {
    const detail = wordOf(error);
    if (expected && isNew) return { ok: false, reason: "missing", detail };
    const reason = nameOf(error) === "VersionError" ? "newer" : "unopenable";
    return { ok: false, reason, detail };
  }
}

class IndexedDbStore implements ChunkStore {
  readonly #database: IDBDatabase;
  readonly #channel: BroadcastChannel | undefined;
  readonly #heard = new Set<() => void>();
  #isOpen = true;

  constructor(database: IDBDatabase, channel: BroadcastChannel | undefined) {
    this.#database = database;
    this.#channel = channel;
    // Another tab that deletes or upgrades the database must not wait for this one for ever.
    database.onversionchange = () => void this.close();
    database.onclose = () => {
      this.#isOpen = false;
    };
    if (channel)
      channel.onmessage = () => {
        for (const heard of this.#heard) heard();
      };
  }

  async read(after: number): Promise<ChunksRead | StoreFault> {
    const rows: Row[] = [];
    const fault = await this.#within("readonly", (chunks) => {
      const request = chunks.getAll(IDBKeyRange.lowerBound(after, true));
      request.onsuccess = () => rows.push(...(request.result as Row[]));
    });
    if (fault !== undefined) return fault;
    const chunks: Chunk[] = [];
    const damaged: DamagedChunk[] = [];
    let upTo = after;
    const areSealed = await Promise.all(rows.map(({ bytes, sealed }) => isStillSealed(bytes, sealed)));
    for (const [at, { seq = after, kind, bytes }] of rows.entries()) {
      upTo = seq;
      if (areSealed[at]) chunks.push({ seq, kind, bytes });
      else damaged.push({ seq, kind });
    }
    return { chunks, damaged, upTo };
  }

  async append(bytes: Uint8Array): Promise<Kept> {
    return this.#add({ kind: "change", covers: 0, bytes, sealed: seal(bytes) });
  }

  async compact(snapshot: Uint8Array, covers: number): Promise<Kept> {
    return this.#add({ kind: "snapshot", covers, bytes: snapshot, sealed: seal(snapshot) });
  }

  async #add(row: Row): Promise<Kept> {
    let seq = 0;
    const fault = await this.#within("readwrite", (chunks) => {
      const request = chunks.add(row);
      request.onsuccess = () => {
        seq = Number(request.result);
        if (row.kind === "snapshot") drop(chunks, seq);
      };
    });
    if (fault !== undefined) return fault;
    this.#channel?.postMessage(seq);
    return { ok: true, seq };
  }

  watch(heard: () => void): () => void {
    this.#heard.add(heard);
    return () => this.#heard.delete(heard);
  }

  async close(): Promise<void> {
    this.#isOpen = false;
    this.#channel?.close();
    this.#database.close();
  }

  /** Runs within one transaction and waits until it is on disk; gives the fault that undid it, if any. */
  async #within(mode: IDBTransactionMode, act: (chunks: IDBObjectStore) => void): Promise<StoreFault | undefined> {
    if (!this.#isOpen) return { ok: false, reason: "closed", detail: "" };
    try {
      await new Promise<void>((resolve, reject) => {
        const transaction = this.#database.transaction("chunks", mode, { durability: "strict" });
        transaction.oncomplete = () => resolve();
        transaction.onabort = () => reject(transaction.error);
        transaction.onerror = () => reject(transaction.error);
        act(transaction.objectStore("chunks"));
      });
      return undefined;
    } catch (error) {
      const reason = nameOf(error) === "QuotaExceededError" ? "full" : this.#isOpen ? "failed" : "closed";
      return { ok: false, reason, detail: wordOf(error) };
    }
  }
}

/** Leaves the newest snapshot, the one before it, and the changes which that one does not cover; those it does stand before it. */
function drop(chunks: IDBObjectStore, newest: number): void {
  let before: Row | undefined;
  const request = chunks.openCursor(IDBKeyRange.upperBound(newest, true), "prev");
  request.onsuccess = () => {
    const cursor = request.result;
    if (cursor === null) return;
    const row = cursor.value as Row & { seq: number };
    if (before === undefined && row.kind === "snapshot") before = row;
    else if (before !== undefined && (row.kind === "snapshot" || row.seq <= before.covers)) cursor.delete();
    cursor.continue();
  };
}

function nameOf(error: unknown): string {
  return error instanceof DOMException || error instanceof Error ? error.name : "";
}

function wordOf(error: unknown): string {
  return error instanceof DOMException || error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}
