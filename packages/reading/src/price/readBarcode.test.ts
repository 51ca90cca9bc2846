import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gtinOf, makePack } from "./price.testing.ts";
import { readBarcode } from "./readBarcode.ts";

const digits = (length: number) =>
  fc.array(fc.integer({ min: 0, max: 9 }), { minLength: length, maxLength: length }).map((each) => each.join(""));

describe("a number under bars", () => {
  test("is found whichever of its lengths the pack and the bars have", () => {
    fc.assert(
      fc.property(digits(11), fc.constantFrom("", "0", "00"), fc.constantFrom("", "0", "00"), (row, packs, bars) => {
        const gtin = gtinOf(row);
        const pack = makePack({ gtin: packs + gtin });
        const read = readBarcode(bars + gtin, [makePack({ id: "other" }), pack]);
        expect(read).toMatchObject({ gtin14: `00${gtin}`, packs: [pack] });
      }),
    );
  });

  test("with a wrong check digit or of another length is invalid", () => {
    fc.assert(
      fc.property(digits(12), fc.integer({ min: 1, max: 9 }), (row, off) => {
        const good = gtinOf(row);
        const bad = row + ((Number(good.at(-1)) + off) % 10);
        expect(readBarcode(bad, []).kind).toBe("invalid");
      }),
    );
    for (const text of ["", "12", "501234567890x", "1".repeat(500)]) expect(readBarcode(text, []).kind).toBe("invalid");
  });

  test("may be parted by spaces or hyphens", () => {
    const gtin = gtinOf("501234567890");
    expect(readBarcode(`${gtin[0]} ${gtin.slice(1, 7)}-${gtin.slice(7)} `, []).kind).toBe("goods");
  });

  test.each([
    ["200000000000", "restricted"],
    ["290000000000", "restricted"],
    ["020000000000", "restricted"],
    ["040000000000", "restricted"],
    ["300000000000", "goods"],
    ["400000000000", "goods"],
    ["050000000000", "goods"],
    ["20000000000", "restricted"],
    ["50000000000", "goods"],
    ["2000000", "restricted"],
    ["5000000", "goods"],
    ["1200000000000", "goods"],
  ])("that begins like %s is for %s use", (row, kind) => {
    expect(readBarcode(gtinOf(row), []).kind).toBe(kind);
  });

  test("of a shop tells goods and value only by a layout, which is named as assumed", () => {
    const text = gtinOf("211234500512");
    const layout = { prefixes: ["21"], itemDigits: 5, valueDigits: 5, value: "mass-g", decimals: 0 } as const;
    expect(readBarcode(text, [])).toEqual({ kind: "restricted", gtin14: `0${text}`, packs: [] });
    expect(readBarcode(text, [], [layout])).toMatchObject({ embedded: { item: "12345", massG: 512, assumed: layout } });
    const priced = { ...layout, itemDigits: 5, valueDigits: 4, value: "price-minor" } as const;
    expect(readBarcode(text, [], [priced])).toMatchObject({ embedded: { item: "12345", priceMinor: 512 } });
    expect(readBarcode(text, [], [{ ...layout, prefixes: ["22"] }])).not.toHaveProperty("embedded");
    expect(readBarcode(text, [], [{ ...layout, itemDigits: 9 }])).not.toHaveProperty("embedded");
  });
});
