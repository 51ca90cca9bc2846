/** Encodings a text can be stated to be in; a byte order mark at its start outweighs what is stated. */
export const ENCODINGS = ["utf-8", "latin1", "windows-1252", "utf-16le", "utf-16be"] as const;
export type Encoding = (typeof ENCODINGS)[number];

const REPLACEMENT = "\ufffd";
const BLOCK = 1024;

/** What the bytes 0x80 to 0x9F mean; a blank is a byte without meaning. **Source**: Unicode, mapping table CP1252 (from memory). */
const WINDOWS_1252 = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

const MARKS: readonly (readonly [Encoding, readonly number[]])[] = [
  ["utf-8", [0xef, 0xbb, 0xbf]],
  ["utf-16le", [0xff, 0xfe]],
  ["utf-16be", [0xfe, 0xff]],
];

/**
 * Turns bytes into text piece by piece; a character may be cut anywhere between two pieces.
 *
 * UTF-8 is taken where neither is stated nor marked. A byte that means nothing becomes U+FFFD and is counted in
 * `invalid`, so that a wrong encoding shows. The byte order mark is not part of the text.
 * **Source**: RFC 3629 for UTF-8, RFC 2781 for UTF-16, ISO/IEC 8859-1 for latin1.
 */
export class TextDecoding {
  /** Bytes so far that mean nothing in the encoding. */
  invalid = 0;
  private encoding: Encoding | undefined;
  private readonly stated: Encoding;
  private rest: Uint8Array = new Uint8Array(0);
  private isEnded = false;

  constructor(stated: Encoding = "utf-8") {
    this.stated = stated;
  }

  /** The text of the next bytes, less a character that is not complete yet. */
  push(bytes: Uint8Array): string {
    const all = this.rest.length === 0 ? bytes : concat(this.rest, bytes);
    this.rest = all;
    if (this.encoding === undefined) {
      if (all.length < 3 && !this.isEnded) return "";
      const marked = MARKS.find(([, mark]) => mark.every((byte, at) => all[at] === byte));
      this.encoding = marked?.[0] ?? this.stated;
      return this.decode(all.subarray(marked?.[1].length ?? 0));
    }
    return this.decode(all);
  }

  /** The text of what is left when no more bytes come. */
  end(): string {
    this.isEnded = true;
    const text = this.push(new Uint8Array(0));
    if (this.rest.length === 0) return text;
    this.rest = new Uint8Array(0);
    return text + this.fault();
  }

  private decode(bytes: Uint8Array): string {
    if (this.encoding === "utf-8") return this.decodeUtf8(bytes);
    if (this.encoding === "utf-16le" || this.encoding === "utf-16be") return this.decodeUtf16(bytes);
    this.rest = new Uint8Array(0);
    const isWindows = this.encoding === "windows-1252";
    let text = "";
    for (let at = 0; at < bytes.length; ) {
      const from = at;
      while (at < bytes.length && !(isWindows && isHighControl(bytes[at] as number))) at++;
      text += toCharacters(bytes, from, at);
      if (at < bytes.length) text += this.windowsCharacter(bytes[at++] as number);
    }
    return text;
  }

  private windowsCharacter(byte: number): string {
    const character = WINDOWS_1252[byte - 0x80] as string;
    return character === " " ? this.fault() : character;
  }

  private decodeUtf8(bytes: Uint8Array): string {
    let text = "";
    let at = 0;
    while (at < bytes.length) {
      const from = at;
      while (at < bytes.length && (bytes[at] as number) < 0x80) at++;
      text += toCharacters(bytes, from, at);
      if (at >= bytes.length) break;
      const length = sequenceLength(bytes, at);
      if (length === "cut" && !this.isEnded) break;
      if (typeof length === "number") {
        text += String.fromCodePoint(codePoint(bytes, at, length));
        at += length;
      } else {
        text += this.fault();
        at++;
      }
    }
    this.rest = bytes.slice(at);
    return text;
  }

  private decodeUtf16(bytes: Uint8Array): string {
    const high = this.encoding === "utf-16be" ? 0 : 1;
    const units: number[] = [];
    let text = "";
    let at = 0;
    for (; at + 1 < bytes.length; at += 2) {
      units.push(((bytes[at + high] as number) << 8) | (bytes[at + 1 - high] as number));
      if (units.length === BLOCK) text += String.fromCharCode(...units.splice(0));
    }
    this.rest = bytes.slice(at);
    return text + String.fromCharCode(...units);
  }

  private fault(): string {
    this.invalid++;
    return REPLACEMENT;
  }
}

function isHighControl(byte: number): boolean {
  return byte >= 0x80 && byte <= 0x9f;
}

function toCharacters(bytes: Uint8Array, from: number, to: number): string {
  let text = "";
  for (let at = from; at < to; at += BLOCK) {
    // Spreading the bytes into the call would be ten times slower.
    text += String.fromCharCode.apply(null, bytes.subarray(at, Math.min(to, at + BLOCK)) as unknown as number[]);
  }
  return text;
}

/** Bytes of the character that begins here; "cut" where the next bytes could complete it, "invalid" where nothing can. */
function sequenceLength(bytes: Uint8Array, at: number): number | "cut" | "invalid" {
  const lead = bytes[at] as number;
  const length =
    lead >= 0xc2 && lead <= 0xdf ? 2 : lead >= 0xe0 && lead <= 0xef ? 3 : lead >= 0xf0 && lead <= 0xf4 ? 4 : 0;
  if (length === 0) return "invalid";
  for (let next = 1; next < length; next++) {
    const byte = bytes[at + next];
    if (byte === undefined) return "cut";
    const [low, high] = next === 1 ? secondByteBounds(lead) : [0x80, 0xbf];
    if (byte < low || byte > high) return "invalid";
  }
  return length;
}

/** What may follow a lead byte, so that nothing is written longer than need be, no surrogate and nothing above U+10FFFF. */
function secondByteBounds(lead: number): readonly [number, number] {
  if (lead === 0xe0) return [0xa0, 0xbf];
  if (lead === 0xed) return [0x80, 0x9f];
  if (lead === 0xf0) return [0x90, 0xbf];
  if (lead === 0xf4) return [0x80, 0x8f];
  return [0x80, 0xbf];
}

function codePoint(bytes: Uint8Array, at: number, length: number): number {
  let point = (bytes[at] as number) & (0xff >> (length + 1));
  for (let next = 1; next < length; next++) point = (point << 6) | ((bytes[at + next] as number) & 0x3f);
  return point;
}

function concat(first: Uint8Array, second: Uint8Array): Uint8Array {
  const all = new Uint8Array(first.length + second.length);
  all.set(first);
  all.set(second, first.length);
  return all;
}
