import { type Encoding, TextDecoding } from "../table/TextDecoding.ts";

/** A text, and what its bytes were taken for. */
export interface DecodedText {
  readonly text: string;
  readonly encoding: Encoding;
}

/**
 * Bytes of which nobody says what they are, as text: UTF-16 where it is marked so or every other byte is 0, UTF-8 where they
 * are sound as that, else Windows-1252, in which nearly any bytes mean something. `isWhole` is false where a character may be
 * cut off at the end.
 */
export function decodeText(bytes: Uint8Array, isWhole = true): DecodedText {
  const likely = findUtf16(bytes) ?? "utf-8";
  const decoding = new TextDecoding(likely);
  const text = decoding.push(bytes) + (isWhole ? decoding.end() : "");
  if (decoding.invalid === 0) return { text, encoding: likely };
  const western = new TextDecoding("windows-1252");
  return { text: western.push(bytes) + western.end(), encoding: "windows-1252" };
}

const LOOKED_AT = 4096;
/** Of the bytes that are 0 in Western text as UTF-16; of the others none are. */
const ZERO_SHARE = 0.4;

/** UTF-16 by its mark or, without one, by the zeros that stand at every other place of Western text. */
function findUtf16(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  const zeros = [0, 0];
  const length = Math.min(bytes.length, LOOKED_AT) & ~1;
  for (let at = 0; at < length; at++) if (bytes[at] === 0) zeros[at % 2] = (zeros[at % 2] as number) + 1;
  const [even = 0, odd = 0] = zeros;
  if (even === 0 && odd > (length / 2) * ZERO_SHARE) return "utf-16le";
  return odd === 0 && even > (length / 2) * ZERO_SHARE ? "utf-16be" : undefined;
}
