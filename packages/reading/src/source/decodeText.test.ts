import fc from "fast-check";
import { expect, test } from "vitest";
import { decodeText } from "./decodeText.ts";

test("what was written as UTF-8, or as UTF-16 with its mark, is read back", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 60 }), (text) => {
      expect(decodeText(new TextEncoder().encode(text)).text).toBe(text.replace(/^\ufeff/, ""));
      const marked = `\ufeff${text}`;
      const bytes = new Uint8Array(marked.length * 2);
      for (let at = 0; at < marked.length; at++)
        bytes.set([marked.charCodeAt(at) & 0xff, marked.charCodeAt(at) >> 8], at * 2);
      expect(decodeText(bytes)).toEqual({ text, encoding: "utf-16le" });
    }),
    { endOnFailure: true },
  );
});

test("UTF-16 without a mark is known by its zeros, and bytes by chance are not taken for it", () => {
  const text = "goods;price\nCrème;1,09\n";
  const units = [...text].map((sign) => sign.charCodeAt(0));
  const little = Uint8Array.from(units.flatMap((unit) => [unit & 0xff, unit >> 8]));
  const big = Uint8Array.from(units.flatMap((unit) => [unit >> 8, unit & 0xff]));
  expect([decodeText(little), decodeText(big)]).toEqual([
    { text, encoding: "utf-16le" },
    { text, encoding: "utf-16be" },
  ]);
  expect(decodeText(Uint8Array.from([0x61, 0, 0, 0x62, 0, 0])).encoding).toBe("utf-8");
});

test("what is no UTF-8 is Windows-1252; a character cut off at the end of a beginning is no fault", () => {
  expect(decodeText(Uint8Array.from([0x43, 0x72, 0xe8, 0x6d, 0x65, 0x20, 0x80]))).toEqual({
    text: "Crème €",
    encoding: "windows-1252",
  });
  const cut = new TextEncoder().encode("Crème €").slice(0, -1);
  expect(decodeText(cut, false)).toEqual({ text: "Crème ", encoding: "utf-8" });
  expect(decodeText(cut).encoding).toBe("windows-1252");
});
