import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import { join } from "node:path";
import { toBackup } from "../backup.ts";
import type { KeptKitchen } from "../KeptKitchen.ts";

/** So many snapshots stay; the oldest goes first. */
const SNAPSHOTS_KEPT = 14;

const DAY_MS = 86_400_000;
const NAME = /^kitchen-(\d{1,16})\.json$/;

/** Times of the snapshots of a folder in milliseconds since 1970, the newest first. */
export function listSnapshots(folder: string): number[] {
  const place = join(folder, "snapshots");
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .flatMap((name) => NAME.exec(name)?.slice(1, 2) ?? [])
    .map(Number)
    .sort((a, b) => b - a);
}

/** Writes a snapshot where the newest is a day old or more; what can't be written is left for another day. */
export async function saveSnapshot(folder: string, kept: KeptKitchen, nowMs: number): Promise<boolean> {
  const times = listSnapshots(folder);
  if (kept.rawRows().length === 0 || nowMs - (times[0] ?? 0) < DAY_MS) return false;
  try {
    writeWhole(pathOf(folder, nowMs), toBackup(kept, nowMs));
    for (const old of [nowMs, ...times].slice(SNAPSHOTS_KEPT)) rmSync(pathOf(folder, old), { force: true });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === undefined) throw error;
    return false;
  }
}

/** The newest snapshot that can be read as JSON; undefined where there is none. */
export function readNewestSnapshot(folder: string): unknown {
  for (const time of listSnapshots(folder)) {
    try {
      return JSON.parse(readFileSync(pathOf(folder, time), "utf8"));
    } catch {
      // A damaged snapshot is passed over for the one before it.
    }
  }
  return undefined;
}

/** Writes a file so that it is there whole or not at all. */
export function writeWhole(path: string, text: string): void {
  mkdirSync(join(path, ".."), { recursive: true });
  const draft = `${path}.part`;
  const file = openSync(draft, "w");
  try {
    writeSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(draft, path);
}

function pathOf(folder: string, time: number): string {
  return join(folder, "snapshots", `kitchen-${time}.json`);
}
