import { closeSync, fstatSync, openSync, readFileSync, statSync } from "node:fs";
import { resolve } from "node:path";
import { type Found, refuse } from "../words/Fault.ts";
import { type FileTrouble, tellFileTrouble } from "../words/fileWords.ts";
import { quote } from "../words/valueWords.ts";
import { scanJson, toLineAndColumn } from "./scanJson.ts";

/** Largest file that is read, in bytes: 32 MB. */
const MOST_BYTES = 32 * 2 ** 20;

/** A file read as JSON, with its text, in which faults have lines. */
export interface JsonFile {
  readonly text: string;
  readonly content: unknown;
}

/**
 * Reads a regular file of at most 32 MB as JSON in UTF-8; its size is looked at before anything is read. `name` is
 * taken from the folder `cwd`. Every trouble comes back as a fault.
 */
export function readJsonFile(name: string, cwd: string): Found<JsonFile> {
  const read = readBytes(resolve(cwd, name));
  const parsed = "trouble" in read ? read : parse(read.bytes);
  return "trouble" in parsed ? refuse(tellFileTrouble(name, parsed.trouble)) : { ok: true, value: parsed };
}

type Trouble = { readonly trouble: FileTrouble };

function readBytes(path: string): { readonly bytes: Buffer } | Trouble {
  try {
    // A pipe would hold up its opening until somebody writes, so it is told apart beforehand.
    const kind = statSync(path);
    if (kind.isDirectory()) return { trouble: { kind: "directory" } };
    if (!kind.isFile()) return { trouble: { kind: "no-regular-file" } };
    const handle = openSync(path, "r");
    try {
      const { size } = fstatSync(handle);
      if (size > MOST_BYTES) return { trouble: { kind: "too-large", bytes: size, mostBytes: MOST_BYTES } };
      return { bytes: readFileSync(handle) };
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return { trouble: code === "ENOENT" || code === "ENOTDIR" ? { kind: "missing" } : { kind: "system", code } };
  }
}

function parse(bytes: Buffer): JsonFile | Trouble {
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return { trouble: { kind: "not-utf8" } };
  }
  try {
    return { text, content: JSON.parse(text) };
  } catch {
    return { trouble: locate(text) };
  }
}

function locate(text: string): FileTrouble {
  const fault = scanJson(text);
  if (fault === undefined) throw new Error("a text was refused as JSON and no fault was found in it");
  const sign = text.codePointAt(fault.offset);
  const found = sign === undefined ? "the end of the file" : quote(String.fromCodePoint(sign));
  return { kind: "not-json", ...toLineAndColumn(text, fault.offset), expected: fault.expected, found };
}
