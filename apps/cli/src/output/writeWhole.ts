import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/**
 * Writes a text or bytes whole or not at all: a crash half-way leaves what was there before. Undefined where it is done, else the
 * code of the system's trouble.
 */
export function writeWhole(content: string | Uint8Array, path: string): string | undefined {
  const draft = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    writeDraft(draft, content);
    renameSync(draft, path);
    return undefined;
  } catch (error) {
    rmSync(draft, { force: true });
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return code;
  }
}

function writeDraft(path: string, content: string | Uint8Array): void {
  const handle = openSync(path, "wx");
  try {
    writeFileSync(handle, content);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
