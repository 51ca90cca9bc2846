import { existsSync, mkdirSync, renameSync, statSync } from "node:fs";
import { join } from "node:path";
import { parseBackup } from "../backup.ts";
import type { Chunk, ChunkStore, OpenedStore, StoreFault } from "../chunks/ChunkStore.ts";
import { openSqliteStore, salvageChunks } from "../chunks/sqliteStore.ts";
import { KeptKitchen, type OpeningOptions } from "../KeptKitchen.ts";
import { holdRepair } from "./holdRepair.ts";
import { listSnapshots, readNewestSnapshot, saveSnapshot } from "./snapshots.ts";

/** What had to be mended when a folder was opened. */
export interface Repair {
  /** Where the damaged file lies now; absent where the file itself was sound and only pieces of it were not. */
  readonly setAside?: string;
  /** Pieces that could still be read, and pieces that could not, where they are known. */
  readonly readable: number;
  readonly damaged: number;
  /** Rows that came back from the newest snapshot. */
  readonly fromSnapshot: number;
}

export type OpenedFolder =
  | { readonly ok: true; readonly kept: KeptKitchen; readonly repair?: Repair }
  | Exclude<OpenedStore, { ok: true }>
  | StoreFault;

const FILE = "kitchen.sqlite";

/** True where a folder holds a kitchen. */
export function isKitchenFolder(folder: string): boolean {
  return existsSync(join(folder, FILE));
}

/**
 * Opens the kitchen kept in a folder, made where there is none. A damaged file is set aside, never deleted: what can be read
 * of it and the newest snapshot make the new one. Once a day a snapshot is written beside it.
 */
export async function openKitchenFolder(folder: string, options: OpeningOptions): Promise<OpenedFolder> {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, FILE);
  const opened = openSqliteStore(path);
  if (!opened.ok && opened.reason !== "damaged") return opened;
  const found = opened.ok ? await openSound(opened.store, folder, options) : await openAnew(path, folder, options);
  if (found.ok) await saveSnapshot(folder, found.kept, options.now?.() ?? Date.now());
  return found;
}

async function openSound(store: ChunkStore, folder: string, options: OpeningOptions): Promise<OpenedFolder> {
  const kept = await KeptKitchen.open(store, options);
  if ("ok" in kept) return kept;
  const damaged = kept.damaged().length;
  // A file cut to nothing is a sound one without anything in it; only a kitchen that held something has snapshots.
  const isEmptied = kept.rawRows().length === 0 && listSnapshots(folder).length > 0;
  if (damaged === 0 && !isEmptied) return { ok: true, kept };
  const mended = await kept.mend(rowsOfSnapshot(folder));
  if (!mended.ok) return mended;
  return { ok: true, kept, repair: { readable: mended.rows, damaged, fromSnapshot: mended.brought } };
}

async function openAnew(path: string, folder: string, options: OpeningOptions): Promise<OpenedFolder> {
  const release = holdRepair(folder);
  if (release === undefined) return { ok: false, reason: "busy", detail: "" };
  try {
    const chunks = salvageChunks(path);
    const setAside = setFileAside(path);
    const opened = openSqliteStore(path);
    if (!opened.ok) return opened;
    const fault = await appendAll(opened.store, chunks);
    if (fault !== undefined) return fault;
    const kept = await KeptKitchen.open(opened.store, options);
    if ("ok" in kept) return kept;
    const mended = await kept.mend(rowsOfSnapshot(folder));
    if (!mended.ok) return mended;
    const repair = { setAside, readable: chunks.length, damaged: 0, fromSnapshot: mended.brought };
    return { ok: true, kept, repair };
  } finally {
    release();
  }
}

/** Moves the file and the logs beside it to a name that is free. */
function setFileAside(path: string): string {
  const stamp = Math.floor(statSync(path).mtimeMs);
  let aside = `${path}.damaged-${stamp}`;
  for (let count = 2; existsSync(aside); count++) aside = `${path}.damaged-${stamp}-${count}`;
  for (const end of ["-wal", "-shm"]) if (existsSync(path + end)) renameSync(path + end, aside + end);
  renameSync(path, aside);
  return aside;
}

async function appendAll(store: ChunkStore, chunks: readonly Chunk[]): Promise<StoreFault | undefined> {
  for (const { bytes } of chunks) {
    const kept = await store.append(bytes);
    if (!kept.ok) return kept;
  }
  return undefined;
}

/** The rows of the newest snapshot; none where there is none that can be read. */
function rowsOfSnapshot(folder: string): readonly unknown[] {
  const content = readNewestSnapshot(folder);
  const rows = content === undefined ? undefined : parseBackup(content);
  return rows?.ok ? rows.value : [];
}
