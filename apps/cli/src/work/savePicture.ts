import { readFileSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { writeWhole } from "../output/writeWhole.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";

/** How a picture of ours begins, by which it may be written over. */
const OURS = /^<svg [^>]*aria-labelledby="hl-title hl-desc"/;
const MOST_BYTES = 4_000_000;

/** The path a picture may be written to; refused are a folder that is not there and whatever is no picture of ours. */
export function findPicturePlace(name: string, cwd: string): Found<string> {
  const path = resolve(cwd, name);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind !== undefined) {
    const isOurs = kind.isFile() && kind.size <= MOST_BYTES && OURS.test(readFileSync(path, "utf8"));
    if (isOurs) return { ok: true, value: path };
    return refuseFile("svg-taken", name, "is there already and is no timeline of Halfloaf; it is left as it is");
  }
  if (statSync(dirname(path), { throwIfNoEntry: false })?.isDirectory()) return { ok: true, value: path };
  return refuseFile("svg-no-folder", name, "lies in a folder that is not there");
}

/** Writes a picture whole or not at all. */
export function savePicture(text: string, path: string, name: string): Found<string> {
  const trouble = writeWhole(text, path);
  return trouble === undefined
    ? { ok: true, value: path }
    : refuseFile("svg-not-written", name, `can't be written (${trouble})`);
}

function refuseFile(code: string, name: string, says: string) {
  return refuse({
    code,
    path: [],
    value: quote(name),
    sentence: `${quote(name)} ${says}.`,
    remedy: "Name another file with --svg.",
  });
}
