import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isSameContent, parseContent } from "./parseContent.ts";

describe("the content of a pack", () => {
  test.each([
    ["500 g", { content: { massG: 500 } }],
    ["500g\u212e", { content: { massG: 500 } }],
    ["1,5 kg", { content: { massG: 1500 } }],
    ["1.000 kg", { content: { massG: 1000 } }],
    ["0.250 g", { content: { massG: 0.25 } }],
    ["6 x 1.5 L", { content: { volumeMl: 9000 }, parts: 6 }],
    ["6x330ml", { content: { volumeMl: 1980 }, parts: 6 }],
    ["4 × 25 cl", { content: { volumeMl: 1000 }, parts: 4 }],
    ["6 x 1.1 kg", { content: { massG: 6600 }, parts: 6 }],
    ["12 pcs", { content: { pieces: 12 } }],
    ["10 Stück", { content: { pieces: 10 } }],
    ["6", { content: { pieces: 6 } }],
    ["2 x 6 ct", { content: { pieces: 12 }, parts: 2 }],
    ["1 lb", { content: { massG: 453.59237 } }],
  ])("%j is read", (text, expected) => {
    expect(parseContent(text)).toEqual(expected);
  });

  test.each([
    "",
    "g",
    "0 g",
    "0 x 5 g",
    "1.5 pcs",
    "500 gold",
    "-5 g",
    "5 g extra",
    "1e5 g",
    "1.500 g",
    "999999999 g",
    "1 pt",
  ])("%j is not understood", (text) => {
    expect(parseContent(text)).toBeUndefined();
  });

  test("a pint is what the stated customary measures make it", () => {
    expect(parseContent("1 pint", "us")).toEqual({ content: { volumeMl: 473.176473 } });
    expect(parseContent("1 pint", "british")).toEqual({ content: { volumeMl: 568.26125 } });
    expect(parseContent("2 fl. oz.", "us")).toEqual({ content: { volumeMl: 59.147059125 } });
  });

  test("parts times size is the whole, whatever the unit", () => {
    const units = fc.constantFrom(
      ["g", 1, "massG"],
      ["kg", 1000, "massG"],
      ["ml", 1, "volumeMl"],
      ["L", 1000, "volumeMl"],
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 48 }), fc.integer({ min: 1, max: 9999 }), units, (parts, tenths, unit) => {
        const [word, size, key] = unit as [string, number, "massG" | "volumeMl"];
        const whole = parseContent(`${parts} x ${tenths / 10} ${word}`)?.content as Record<string, number>;
        expect(whole[key]).toBeCloseTo((parts * tenths * size) / 10, 6);
      }),
    );
  });
});

test("contents are the same when kind and size agree; a mass is no volume", () => {
  expect(isSameContent({ massG: 500 }, { massG: 500.2 })).toBe(true);
  expect(isSameContent({ massG: 500 }, { massG: 450 })).toBe(false);
  expect(isSameContent({ massG: 500 }, { volumeMl: 500 })).toBe(false);
  expect(isSameContent({ pieces: 6 }, { pieces: 6, size: "large" })).toBe(true);
  expect(isSameContent({ pieces: 6 }, { pieces: 7 })).toBe(false);
});
