import { closeSync, openSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";

/** A hold older than this was left by a process that ended in the middle, in milliseconds. */
const STALE_MS = 60_000;

/** Holds the repair of a folder against other processes; gives what lets go of it, or undefined where another holds it. */
export function holdRepair(folder: string): (() => void) | undefined {
  const path = join(folder, "repair.hold");
  for (const _ of [1, 2]) {
    try {
      closeSync(openSync(path, "wx"));
      return () => rmSync(path, { force: true });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
      const since = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
      const isStale = Date.now() - since > STALE_MS;
      if (!isStale) return undefined;
      rmSync(path, { force: true });
    }
  }
  return undefined;
}
