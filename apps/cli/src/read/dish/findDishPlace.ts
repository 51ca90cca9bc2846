import { realpathSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { readPage } from "@halfloaf/reading";
import { readJsonFile } from "../../input/readJsonFile.ts";
import { type Found, refuse } from "../../words/Fault.ts";
import { quote, valueAt } from "../../words/valueWords.ts";

/** The path a dish may be written to; refused are a folder that is not there and whatever there is no dish of ours. */
export function findDishPlace(name: string, cwd: string): Found<string> {
  const path = resolve(cwd, name);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind !== undefined) {
    const read = kind.isFile() ? readJsonFile(name, cwd) : undefined;
    if (read?.ok && isOurs(read.value.content, read.value.text)) return { ok: true, value: realpathSync(path) };
    return refuseFile("dish-taken", name, "is there already and is no dish that Halfloaf wrote; it is left as it is");
  }
  if (statSync(dirname(path), { throwIfNoEntry: false })?.isDirectory()) return { ok: true, value: path };
  return refuseFile("dish-no-folder", name, "lies in a folder that is not there");
}

function isOurs(content: unknown, text: string): boolean {
  if (valueAt(content, ["@type"]) !== "Recipe") return false;
  const page = `<script type="application/ld+json">${text.replaceAll("<", "\\u003c")}</script>`;
  return readPage(page).dishes.some(({ written }) => written !== undefined);
}

function refuseFile(code: string, name: string, says: string) {
  return refuse({
    code,
    path: [],
    value: quote(name),
    sentence: `${quote(name)} ${says}.`,
    remedy: "Name another file with --out, or move that one away.",
  });
}
