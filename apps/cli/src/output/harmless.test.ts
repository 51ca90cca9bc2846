import fc from "fast-check";
import { expect, test } from "vitest";
import { harmless, harmlessLines, toJsonText } from "./harmless.ts";

const ESC = String.fromCharCode(0x1b);
const CSI = String.fromCharCode(0x9b);
const TURN = String.fromCharCode(0x202e);

test("control characters are spelled out, never passed on", () => {
  expect(harmless(`Soup${ESC}[31m`)).toBe("Soup\\u{1b}[31m");
  expect(harmless(`Soup${CSI}2J`)).toBe("Soup\\u{9b}2J");
  expect(harmless(`Soup${TURN}x`)).toBe("Soup\\u{202e}x");
});

test("breaks and tabs become one blank, so that a text stays on its line", () => {
  expect(harmless("Soup\r\n\tof leeks")).toBe("Soup of leeks");
  expect(harmlessLines("one\ntwo\r")).toBe("one\ntwo\\u{d}");
});

test("whatever is given, nothing below a blank and no C1 control is left", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      for (const char of harmless(text)) {
        const code = char.codePointAt(0) as number;
        expect(code >= 0x20 && !(code >= 0x7f && code <= 0x9f)).toBe(true);
      }
    }),
  );
});

test("JSON text holds the same data and no raw control character", () => {
  const value = { name: `Quay${CSI}2J${TURN}${String.fromCharCode(0x2028)}`, list: [1, "a\nb"] };
  const text = toJsonText(value);
  expect(JSON.parse(text)).toEqual(value);
  expect(text.includes(CSI) || text.includes(TURN)).toBe(false);
});
