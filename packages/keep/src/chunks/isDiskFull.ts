import { statfsSync } from "node:fs";
import { dirname } from "node:path";

/** SQLite needs a page of memory shared between processes and one of its log to write anything, in bytes. */
const LEAST_BYTES = 65_536;

/** True where the disk that a file lies on has no room to write in; false too where that can't be found out. */
export function isDiskFull(path: string): boolean {
  try {
    const { bavail, bsize } = statfsSync(dirname(path));
    return bavail * bsize < LEAST_BYTES;
  } catch {
    return false;
  }
}
