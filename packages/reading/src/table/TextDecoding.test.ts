import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Encoding, TextDecoding } from "./TextDecoding.ts";

/** Decodes bytes cut into pieces of the lengths given, the last one taking what is left. */
function decode(bytes: Uint8Array, cuts: readonly number[] = [], stated?: Encoding) {
  const decoding = new TextDecoding(stated);
  let [text, at] = ["", 0];
  for (const cut of cuts) {
    text += decoding.push(bytes.subarray(at, at + cut));
    at += cut;
  }
  text += decoding.push(bytes.subarray(at)) + decoding.end();
  return { text, invalid: decoding.invalid };
}

function toUtf16(text: string, isBig: boolean): Uint8Array {
  const view = new DataView(new ArrayBuffer(text.length * 2));
  for (let at = 0; at < text.length; at++) view.setUint16(at * 2, text.charCodeAt(at), !isBig);
  return new Uint8Array(view.buffer);
}

const texts = fc.string({ unit: "binary", maxLength: 60 }).filter((text) => !text.startsWith("\ufeff"));
const cuts = fc.array(fc.nat(5), { maxLength: 30 });

describe("text is read from bytes", () => {
  test("UTF-8 as it was written, wherever it is cut", () => {
    fc.assert(
      fc.property(texts, cuts, fc.boolean(), (text, pieces, isMarked) => {
        const bytes = new TextEncoder().encode(isMarked ? `\ufeff${text}` : text);
        expect(decode(bytes, pieces)).toEqual({ text, invalid: 0 });
      }),
    );
  });

  test("UTF-16 of either order, stated or by its mark, which outweighs what is stated", () => {
    fc.assert(
      fc.property(texts, cuts, fc.boolean(), fc.boolean(), (text, pieces, isBig, isMarked) => {
        const bytes = toUtf16(isMarked ? `\ufeff${text}` : text, isBig);
        fc.pre(isMarked || !hasMark(bytes));
        const stated = isMarked ? "windows-1252" : isBig ? "utf-16be" : "utf-16le";
        expect(decode(bytes, pieces, stated)).toEqual({ text, invalid: 0 });
      }),
    );
  });

  test("invalid bytes are counted exactly where the platform's own decoder refuses the text", () => {
    const lead = fc.constantFrom(0xc0, 0xc2, 0xe0, 0xe2, 0xed, 0xf0, 0xf4, 0xf5, 0x80, 0xbf, 0x90, 0x41);
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 12 }), fc.array(lead, { maxLength: 8 }), cuts, (any, near, pieces) => {
        for (const bytes of [any, Uint8Array.from(near)]) {
          fc.pre(!hasMark(bytes));
          const { text, invalid } = decode(bytes, pieces);
          let expected: string | undefined;
          try {
            expected = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
          } catch {
            expected = undefined;
          }
          expect(invalid === 0).toBe(expected !== undefined);
          if (expected !== undefined) expect(text).toBe(expected);
        }
      }),
    );
  });

  test("latin1 is the first 256 characters", () => {
    const bytes = Uint8Array.from({ length: 256 }, (_, at) => at);
    expect(decode(bytes, [7], "latin1").text).toBe(String.fromCharCode(...bytes));
  });

  test("windows-1252 differs from latin1 in the bytes 0x80 to 0x9F, five of which mean nothing", () => {
    const points =
      "20AC 0 201A 192 201E 2026 2020 2021 2C6 2030 160 2039 152 0 17D 0 0 2018 2019 201C 201D 2022 2013 2014 2DC 2122 161 203A 153 0 17E 178"
        .split(" ")
        .map((hex) => Number.parseInt(hex, 16));
    const bytes = Uint8Array.from({ length: 256 }, (_, at) => at);
    const expected = [...bytes].map((byte) => String.fromCodePoint((points[byte - 0x80] ?? byte) || 0xfffd));
    expected[0] = "\0";
    expect(decode(bytes, [130], "windows-1252")).toEqual({ text: expected.join(""), invalid: 5 });
  });
});

function hasMark([first, second, third]: Uint8Array): boolean {
  const isUtf16 = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
  return isUtf16 || (first === 0xef && second === 0xbb && third === 0xbf);
}
