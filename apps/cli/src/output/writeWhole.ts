import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/**
 * Writes a text whole or not at all: a crash half-way leaves what was there before. Undefined where it is done, else the
 * code of the system's trouble.
 */
export function writeWhole(text: string, path: string): string | undefined {
  const draft = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    writeDraft(draft, text);
    renameSync(draft, path);
    return undefined;
  } catch (error) {
    rmSync(draft, { force: true });
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return code;
  }
}

function writeDraft(path: string, text: string): void {
  const handle = openSync(path, "wx");
  try {
    writeFileSync(handle, text);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
