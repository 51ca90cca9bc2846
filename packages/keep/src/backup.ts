import type { Dish } from "halfloaf/dish";
import { editsBetween, fingerprintOf, parseRecord, toEventId } from "halfloaf/kitchen/record";
import { type Issue, type Parsed, parseWith } from "halfloaf/quantity";
import * as v from "valibot";
import type { KeptKitchen } from "./KeptKitchen.ts";

/** The version of backups that this program writes. */
export const BACKUP_VERSION = 1;

/** Everything a kitchen is made of, as one file: all rows as they stand, those of newer programs too. */
const Backup = v.strictObject({
  format: v.literal("halfloaf-backup"),
  version: v.literal(BACKUP_VERSION),
  /** Milliseconds since 1970-01-01 UTC. */
  writtenAtMs: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  rows: v.array(v.record(v.string(), v.unknown())),
});

/** The device that is said to have set what comes from a kitchen's file begins so; the kitchen's fingerprint follows. */
const FILE_SETTER = "kitchen-file-set";

/** The text of a backup; the same rows give the same text whatever device they are on, but for the time. */
export function toBackup(kept: KeptKitchen, writtenAtMs: number): string {
  const rows = kept.rawRows();
  return `${JSON.stringify({ format: "halfloaf-backup", version: BACKUP_VERSION, writtenAtMs, rows })}\n`;
}

/**
 * The rows of a backup, of a record or of a kitchen's file, read from JSON. All that is wrong at once; a file of a newer
 * version is the issue `version-newer` and nothing of it is taken. `dishes` are those that portions put by in a kitchen's
 * file may be of besides its own.
 */
export function parseBackup(input: unknown, dishes: readonly Dish[] = []): Parsed<readonly unknown[]> {
  if (isOfFormat(input, "halfloaf-backup")) {
    const version = (input as { version?: unknown }).version;
    if (typeof version === "number" && version > BACKUP_VERSION) return { ok: false, issues: [newer(version)] };
    const read = parseWith(Backup, input);
    return read.ok ? { ok: true, value: read.value.rows } : read;
  }
  const read = parseRecord(input, dishes);
  if (!read.ok) return read;
  const { kitchen, events } = read.value;
  const setter = `${FILE_SETTER}-${fingerprintOf(kitchen)}`;
  const edits = editsBetween(undefined, kitchen).map((edit, at) => ({
    id: toEventId(setter, at + 1),
    atMs: 0,
    tick: at,
    ...edit,
  }));
  return { ok: true, value: [...edits, ...events] };
}

function isOfFormat(input: unknown, format: string): boolean {
  return typeof input === "object" && input !== null && "format" in input && input.format === format;
}

function newer(version: number): Issue {
  return {
    code: "version-newer",
    path: ["version"],
    expected: `${BACKUP_VERSION} at most`,
    received: String(version),
  };
}
