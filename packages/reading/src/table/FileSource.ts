import type { Issue } from "halfloaf/quantity";
import { type Encoding, TextDecoding } from "./TextDecoding.ts";

/** A file to be read: the name it is told by, and its content in pieces of any size, as bytes or as text. */
export interface FileSource {
  readonly name: string;
  readonly pieces: AsyncIterable<Uint8Array | string>;
}

/** How far a reading has come. */
export interface ReadingProgress {
  /** Name of the file that is being read. */
  readonly file: string;
  /** Rows or foods of that file read so far. */
  readonly items: number;
  /** Bytes of that file read so far, UTF-16 units where it came as text. */
  readonly size: number;
}

/** What a long reading is told and tells: called after every piece of a file; stopped where `signal` is aborted. */
export interface ReadingWatch {
  readonly signal?: { readonly aborted: boolean };
  readonly onProgress?: (progress: ReadingProgress) => void;
}

/** A file of one piece, for what is at hand as a whole. */
export function sourceOf(name: string, content: Uint8Array | string): FileSource {
  return {
    name,
    pieces: (async function* () {
      yield content;
    })(),
  };
}

/** One piece of a file as text, and the size of the file up to its end. */
export interface TextPiece {
  readonly text: string;
  readonly size: number;
  /** True for the last one, which may be empty. */
  readonly isLast: boolean;
}

/** The text of a file piece by piece. Bytes that mean nothing in the encoding are told once, with their number. */
export async function* readText(
  { name, pieces }: FileSource,
  stated: Encoding | undefined,
  tell: (issue: Issue) => void,
): AsyncGenerator<TextPiece> {
  const decoding = new TextDecoding(stated);
  let size = 0;
  let isFirst = true;
  for await (const piece of pieces) {
    size += piece.length;
    const text = typeof piece === "string" ? piece : decoding.push(piece);
    if (text === "") continue;
    yield { text: isFirst && text.startsWith("\ufeff") ? text.slice(1) : text, size, isLast: false };
    isFirst = false;
  }
  yield { text: decoding.end(), size, isLast: true };
  if (decoding.invalid > 0) {
    const received = `${decoding.invalid} bytes that mean nothing in it`;
    tell({ code: "encoding", path: [name], expected: `text in ${stated ?? "utf-8"}`, received });
  }
}
