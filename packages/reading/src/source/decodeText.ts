import { type Encoding, TextDecoding } from "../table/TextDecoding.ts";

/** A text, and what its bytes were taken for. */
export interface DecodedText {
  readonly text: string;
  readonly encoding: Encoding;
}

/**
 * Bytes of which nobody says what they are, as text: UTF-16 where it is marked so, UTF-8 where they are sound as that, else
 * Windows-1252, in which nearly any bytes mean something. `isWhole` is false where a character may be cut off at the end.
 */
export function decodeText(bytes: Uint8Array, isWhole = true): DecodedText {
  const [first, second] = bytes;
  const marked =
    first === 0xff && second === 0xfe ? "utf-16le" : first === 0xfe && second === 0xff ? "utf-16be" : "utf-8";
  const decoding = new TextDecoding(marked);
  const text = decoding.push(bytes) + (isWhole ? decoding.end() : "");
  if (decoding.invalid === 0) return { text, encoding: marked };
  const western = new TextDecoding("windows-1252");
  return { text: western.push(bytes) + western.end(), encoding: "windows-1252" };
}
