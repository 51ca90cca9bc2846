import { createReadStream, existsSync, statSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import {
  type DecodedText,
  decodeText,
  type FileSource,
  type FoodDataFiles,
  foodDataFiles,
  NEEDED_DOWNLOAD_FILES,
  sourceOf,
} from "@halfloaf/reading";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellFileTrouble } from "../words/fileWords.ts";
import { quote } from "../words/valueWords.ts";
import { fetchText } from "./fetchText.ts";
import { gatherBytes } from "./gatherBytes.ts";

/** Most bytes of a file that is held as a whole; tables and price lists are read in pieces and may be longer. */
const MOST_TEXT_BYTES = 32 * 2 ** 20;
const HEAD_BYTES = 65_536;

/** Something to be read: by its beginning its kind is found. */
export type Input =
  | { readonly kind: "folder"; readonly name: string; readonly path: string }
  | {
      readonly kind: "file";
      readonly name: string;
      /** Absent for standard input and what was fetched. */
      readonly path?: string;
      /** The beginning, as text. */
      readonly head: string;
      readonly source: () => FileSource;
      /** The whole as text, and the encoding where it isn't UTF-8. */
      readonly text: () => Promise<Found<DecodedText>>;
    };

/** Opens a file, a folder, standard input ("-") or, where a person said so, a web address. */
export async function openInput(name: string, cwd: string, mayFetch: boolean): Promise<Found<Input>> {
  if (/^https?:\/\//i.test(name)) return mayFetch ? openFetched(name) : refuse(tellUnfetched(name));
  if (name === "-")
    return openGiven(name, await gatherBytes(createReadStream("", { fd: 0, autoClose: false }), MOST_TEXT_BYTES));
  const path = resolve(cwd, name);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind === undefined) return refuse(tellFileTrouble(name, { kind: "missing" }));
  if (kind.isDirectory()) return { ok: true, value: { kind: "folder", name, path } };
  if (!kind.isFile()) return refuse(tellFileTrouble(name, { kind: "no-regular-file" }));
  try {
    const start = await gatherBytes(createReadStream(path, { end: HEAD_BYTES - 1 }), MOST_TEXT_BYTES);
    const trouble = findNoText(start);
    if (trouble !== undefined) return refuse(tellFileTrouble(name, { kind: trouble }));
    const head = decodeText(start, false).text;
    const source = () => ({ name: basename(path), pieces: createReadStream(path) });
    const text = async (): Promise<Found<DecodedText>> =>
      kind.size > MOST_TEXT_BYTES
        ? refuse(tellTooLarge(name, kind.size))
        : { ok: true, value: decodeText(await gatherBytes(createReadStream(path), MOST_TEXT_BYTES)) };
    return { ok: true, value: { kind: "file", name, path, head, source, text } };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return refuse(tellFileTrouble(name, { kind: "system", code }));
  }
}

/** The files of a FoodData Central download in a folder, those that are there; undefined where the main ones are not. */
export function findDownload(folder: string): FoodDataFiles | undefined {
  const isThere = NEEDED_DOWNLOAD_FILES.every((file) => existsSync(join(folder, file)));
  if (!isThere) return undefined;
  return foodDataFiles((file) => {
    const path = join(folder, file);
    return existsSync(path) ? { name: file, pieces: createReadStream(path) } : undefined;
  });
}

/** The folder a file lies in. */
export function folderOf(path: string): string {
  return dirname(path);
}

async function openFetched(address: string): Promise<Found<Input>> {
  const fetched = await fetchText(address, MOST_TEXT_BYTES / 4);
  return fetched.ok ? openGiven(address, fetched.value) : fetched;
}

function openGiven(name: string, bytes: Uint8Array): Found<Input> {
  if (bytes.length > MOST_TEXT_BYTES) {
    return refuse(tellTooLarge(name, bytes.length));
  }
  const trouble = findNoText(bytes.subarray(0, HEAD_BYTES));
  if (trouble !== undefined) return refuse(tellFileTrouble(name, { kind: trouble }));
  const whole = decodeText(bytes);
  return {
    ok: true,
    value: {
      kind: "file",
      name,
      head: whole.text.slice(0, HEAD_BYTES),
      source: () => sourceOf(name, bytes),
      text: async () => ({ ok: true, value: whole }),
    },
  };
}

// Of the signs of a text in any language so many at most steer a device; bytes by chance have a tenth of them.
const MOST_CONTROLS_SHARE = 0.02;
/** What a PDF begins with; much of it may be readable, and none of that is its text. */
const PDF_MARK = "%PDF-";

/** Why the beginning of a file shows that there is no text in it; undefined where there may be. */
function findNoText(start: Uint8Array): "empty" | "not-text" | undefined {
  const { text, encoding } = decodeText(start, false);
  if (text.trim() === "") return "empty";
  if (text.startsWith(PDF_MARK)) return "not-text";
  const controls = text.match(/(?!\s)\p{Cc}/gu)?.length ?? 0;
  const isBinary = text.includes("\0") || controls > text.length * MOST_CONTROLS_SHARE;
  return isBinary && !encoding.startsWith("utf-16") ? "not-text" : undefined;
}

function tellTooLarge(name: string, bytes: number): Fault {
  const fault = tellFileTrouble(name, { kind: "too-large", bytes, mostBytes: MOST_TEXT_BYTES });
  return {
    ...fault,
    remedy: "Check that it is the file you mean; only tables and price lists, by their mapping, may be longer.",
  };
}

function tellUnfetched(address: string) {
  return {
    code: "fetch-unsaid",
    path: [],
    value: quote(address),
    sentence: `${quote(address)} is a web address; nothing is fetched unless you say so.`,
    remedy: "Add --fetch to have this page fetched once, or save it and name the file.",
  };
}
