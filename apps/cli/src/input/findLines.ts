import { scanJson, toLineAndColumn } from "./scanJson.ts";

type Path = readonly (string | number)[];

/**
 * The lines of sound JSON on which the values at the paths start, from 1, in the order of the paths. A path that leads to
 * nothing has the line of the innermost value on the way to it.
 */
export function findLines(text: string, paths: readonly Path[]): number[] {
  const wanted = new Set(paths.flatMap((path) => path.map((_, depth) => toKey(path.slice(0, depth + 1)))));
  const deepest = Math.max(0, ...paths.map((path) => path.length));
  const offsets = new Map<string, number>();
  scanJson(text, (levels, offset) => {
    if (levels.length === 0 || levels.length > deepest) return;
    const key = toKey(levels.map((level) => level.key));
    if (wanted.has(key)) offsets.set(key, offset);
  });
  return paths.map((path) => toLineAndColumn(text, offsetOf(path, offsets)).line);
}

function offsetOf(path: Path, offsets: ReadonlyMap<string, number>): number {
  for (let depth = path.length; depth > 0; depth--) {
    const offset = offsets.get(toKey(path.slice(0, depth)));
    if (offset !== undefined) return offset;
  }
  return 0;
}

function toKey(path: Path): string {
  return JSON.stringify(path);
}
