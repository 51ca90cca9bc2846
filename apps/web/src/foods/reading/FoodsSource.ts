import { decodeText, findContentKind, NEEDED_DOWNLOAD_FILES } from "@halfloaf/reading";

/** What somebody gave to be read, by what stands in it. */
export type FoodsGiven =
  | { readonly kind: "own"; readonly content: unknown }
  | { readonly kind: "json"; readonly file: Blob; readonly name: string }
  | { readonly kind: "csv"; readonly files: readonly File[] }
  | { readonly kind: "table"; readonly text: string; readonly name: string };

/** Why there is nothing to read. */
export type NotGiven =
  | { readonly kind: "not-one" | "json-broken" | "download-part" | "failed" }
  | { readonly kind: "large"; readonly name: string };

/** As much text as is held as a whole: 32 MB, as everywhere. A download may be longer. */
const MOST_BYTES = 32 * 1024 * 1024;
const HEAD_BYTES = 65_536;

/** A pasted text, by what stands in it. */
export function sortText(text: string, name = ""): FoodsGiven | NotGiven {
  const kind = findContentKind(text.slice(0, HEAD_BYTES));
  if (kind === "download-json") return { kind: "json", file: new Blob([text]), name };
  if (kind === "download-csv") return { kind: "download-part" };
  if (!/^\s*[{[]/.test(text)) return { kind: "table", text, name: name.replace(/\.\w+$/, "") };
  try {
    const content: unknown = JSON.parse(text);
    return isOwn(content) ? { kind: "own", content } : { kind: "not-one" };
  } catch {
    return { kind: "json-broken" };
  }
}

/** Files that were chosen or dropped: those of a download at once, or one of any kind. */
export async function sortFiles(files: readonly File[]): Promise<FoodsGiven | NotGiven> {
  const isThere = (name: string): boolean => files.some((file) => file.name === name);
  if (NEEDED_DOWNLOAD_FILES.every(isThere)) return { kind: "csv", files };
  const [file] = files;
  if (file === undefined) return { kind: "not-one" };
  if (NEEDED_DOWNLOAD_FILES.some(isThere)) return { kind: "download-part" };
  try {
    const start = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer());
    if (findContentKind(decodeText(start, false).text) === "download-json")
      return { kind: "json", file, name: file.name };
    if (file.size > MOST_BYTES) return { kind: "large", name: file.name };
    return sortText(decodeText(new Uint8Array(await file.arrayBuffer())).text, file.name);
  } catch {
    return { kind: "failed" };
  }
}

function isOwn(content: unknown): boolean {
  return typeof content === "object" && content !== null && "format" in content && content.format === "halfloaf-foods";
}
