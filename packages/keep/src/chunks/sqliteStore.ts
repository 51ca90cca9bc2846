import { DatabaseSync, type DatabaseSyncInstance, type StatementSyncInstance } from "@photostructure/sqlite";
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
import { isDiskFull } from "./isDiskFull.ts";
import { isSealed, seal } from "./seal.ts";

/** Result codes of SQLite that tell something of their own. Source: sqlite.org, "Result and Error Codes". */
const CODES = { busy: 5, locked: 6, ioError: 10, corrupt: 11, full: 13, notADatabase: 26 };

/** How long one process waits for another, in milliseconds. */
const WAIT_MS = 10_000;

const LAYOUT = `
  CREATE TABLE IF NOT EXISTS chunks (
    seq INTEGER PRIMARY KEY AUTOINCREMENT,
    kind TEXT NOT NULL,
    covers INTEGER NOT NULL,
    bytes BLOB NOT NULL,
    sealed BLOB NOT NULL
  ) STRICT`;

interface Row {
  readonly seq: number;
  readonly kind: ChunkKind;
  readonly covers: number;
  readonly bytes: Uint8Array;
  readonly sealed: Uint8Array;
}

/**
 * Opens the store in a file of SQLite, made where there is none. Every chunk is on disk before it is told as kept. Several
 * processes may have it open; one waits for the other up to ten seconds. A file of a later version is left untouched.
 */
export function openSqliteStore(path: string): OpenedStore<ChunkStore> | StoreFault {
  let database: DatabaseSyncInstance | undefined;
  try {
    database = new DatabaseSync(path);
    database.exec(`PRAGMA busy_timeout = ${WAIT_MS}`);
    const version = versionOf(database);
    if (version > STORE_VERSION) {
      database.close();
      return { ok: false, reason: "newer", detail: String(version) };
    }
    database.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
    if (version === 0) database.exec(`BEGIN IMMEDIATE; ${LAYOUT}; PRAGMA user_version = ${STORE_VERSION}; COMMIT`);
    const check = database.prepare("PRAGMA quick_check(1)").get() as { quick_check: string };
    if (check.quick_check !== "ok") {
      database.close();
      return { ok: false, reason: "damaged", detail: check.quick_check };
    }
    return { ok: true, store: new SqliteStore(database, path) };
  } catch (error) {
    if (database?.isOpen) database.close();
    if (isFull(error, path)) return { ok: false, reason: "full", detail: wordOf(error) };
    const isDamaged = [CODES.corrupt, CODES.notADatabase].includes(codeOf(error));
    return { ok: false, reason: isDamaged ? "damaged" : "unopenable", detail: wordOf(error) };
  }
}

/**
 * The sound chunks that can still be read from a damaged file, which is only read. None where nothing can be read.
 */
export function salvageChunks(path: string): readonly Chunk[] {
  let database: DatabaseSyncInstance | undefined;
  const chunks: Chunk[] = [];
  try {
    database = new DatabaseSync(path, { readOnly: true });
    const after = database.prepare("SELECT * FROM chunks WHERE seq > ? ORDER BY seq LIMIT 1");
    const last = greatestSeq(database);
    for (let seq = 0; seq < last; ) seq = readOne(after, seq, chunks);
  } catch (error) {
    // What could be read so far is all there is; a defect of ours is still told.
    if (codeOf(error) === 0) throw error;
  } finally {
    if (database?.isOpen) database.close();
  }
  return chunks;
}

function readOne(after: StatementSyncInstance, seq: number, chunks: Chunk[]): number {
  try {
    const row = after.get(seq) as Row | undefined;
    if (row === undefined) return Number.POSITIVE_INFINITY;
    if (isSealed(row.bytes, row.sealed)) chunks.push({ seq: row.seq, kind: row.kind, bytes: row.bytes });
    return row.seq;
  } catch (error) {
    if (codeOf(error) === 0) throw error;
    return seq + 1;
  }
}

/** The counter stands in a table of its own, so it is there even where the end of the chunks cannot be reached. */
function greatestSeq(database: DatabaseSyncInstance): number {
  const row = database.prepare("SELECT seq FROM sqlite_sequence WHERE name = 'chunks'").get() as { seq: number };
  return row === undefined ? 0 : row.seq;
}

class SqliteStore implements ChunkStore {
  readonly #database: DatabaseSyncInstance;
  readonly #insert: StatementSyncInstance;
  readonly #after: StatementSyncInstance;
  readonly #watchers = new Set<ReturnType<typeof setInterval>>();
  readonly #path: string;

  constructor(database: DatabaseSyncInstance, path: string) {
    this.#database = database;
    this.#path = path;
    this.#insert = database.prepare("INSERT INTO chunks (kind, covers, bytes, sealed) VALUES (?, ?, ?, ?)");
    this.#after = database.prepare("SELECT seq, kind, covers, bytes, sealed FROM chunks WHERE seq > ? ORDER BY seq");
  }

  async read(after: number): Promise<ChunksRead | StoreFault> {
    return this.#guarded(() => {
      const chunks: Chunk[] = [];
      const damaged: DamagedChunk[] = [];
      let upTo = after;
      for (const { seq, kind, bytes, sealed } of this.#after.all(after) as Row[]) {
        upTo = seq;
        if (isSealed(bytes, sealed)) chunks.push({ seq, kind, bytes });
        else damaged.push({ seq, kind });
      }
      return { chunks, damaged, upTo };
    });
  }

  async append(bytes: Uint8Array): Promise<Kept> {
    return this.#guarded(() => this.#add("change", 0, bytes));
  }

  async compact(snapshot: Uint8Array, covers: number): Promise<Kept> {
    return this.#guarded(() => {
      this.#database.exec("BEGIN IMMEDIATE");
      try {
        const before = this.#database
          .prepare("SELECT seq, covers FROM chunks WHERE kind = 'snapshot' ORDER BY seq DESC LIMIT 1")
          .get() as { seq: number; covers: number } | undefined;
        const kept = this.#add("snapshot", covers, snapshot);
        if (before !== undefined) this.#drop(before);
        this.#database.exec("COMMIT");
        return kept;
      } catch (error) {
        this.#database.exec("ROLLBACK");
        throw error;
      }
    });
  }

  /** Older snapshots go, and the changes which the snapshot before the new one covers. */
  #drop({ seq, covers }: { seq: number; covers: number }): void {
    this.#database.prepare("DELETE FROM chunks WHERE kind = 'snapshot' AND seq < ?").run(seq);
    this.#database.prepare("DELETE FROM chunks WHERE kind = 'change' AND seq <= ?").run(covers);
  }

  #add(kind: ChunkKind, covers: number, bytes: Uint8Array): Kept {
    const { lastInsertRowid } = this.#insert.run(kind, covers, bytes, seal(bytes));
    return { ok: true, seq: Number(lastInsertRowid) };
  }

  /** SQLite tells nobody of a change, so it is asked now and then whether another process has written. */
  watch(heard: () => void): () => void {
    const versionNow = () =>
      (this.#database.prepare("PRAGMA data_version").get() as { data_version: number }).data_version;
    let version = versionNow();
    const timer = setInterval(() => {
      const now = versionNow();
      if (now === version) return;
      version = now;
      heard();
    }, 200);
    timer.unref?.();
    this.#watchers.add(timer);
    return () => {
      clearInterval(timer);
      this.#watchers.delete(timer);
    };
  }

  async close(): Promise<void> {
    for (const timer of this.#watchers) clearInterval(timer);
    if (!this.#database.isOpen) return;
    // So that the one file holds everything where nobody else has it open; else the log beside it goes on.
    this.#guarded(() => this.#database.exec("PRAGMA busy_timeout = 0; PRAGMA wal_checkpoint(TRUNCATE)"));
    this.#database.close();
  }

  #guarded<Given>(act: () => Given): Given | StoreFault {
    if (!this.#database.isOpen) return { ok: false, reason: "closed", detail: "" };
    try {
      return act();
    } catch (error) {
      const code = codeOf(error);
      if (code === 0) throw error;
      const isBusy = code === CODES.busy || code === CODES.locked;
      const reason = isFull(error, this.#path) ? "full" : isBusy ? "busy" : "failed";
      return { ok: false, reason, detail: wordOf(error) };
    }
  }
}

function versionOf(database: DatabaseSyncInstance): number {
  return (database.prepare("PRAGMA user_version").get() as { user_version: number }).user_version;
}

/** SQLite's primary result code; 0 where the error is none of SQLite's. */
function codeOf(error: unknown): number {
  const code = (error as { errcode?: unknown }).errcode;
  return typeof code === "number" ? code & 0xff : 0;
}

/** On a full disk SQLite speaks of an error of input or output where it lacks the room for its shared memory. */
function isFull(error: unknown, path: string): boolean {
  const code = codeOf(error);
  return code === CODES.full || (code === CODES.ioError && isDiskFull(path));
}

function wordOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
