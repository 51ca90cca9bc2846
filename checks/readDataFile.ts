import { readFileSync } from "node:fs";

/** A JSON file of the project's data folder, by its path there; not checked yet. Throws where it cannot be read. */
export function readDataFile(path: string): unknown {
  return JSON.parse(readFileSync(new URL(`../data/${path}`, import.meta.url), "utf8"));
}
