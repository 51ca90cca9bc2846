import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gtinCheckDigit, isGtin, toGtin14 } from "./gtin.ts";

const bodies = fc
  .constantFrom(7, 11, 12, 13)
  .chain((length) => fc.string({ unit: fc.constantFrom(..."0123456789"), minLength: length, maxLength: length }));
const numbers = bodies.map((body) => body + gtinCheckDigit(body));

describe("laws", () => {
  test("a number with its check digit is one, with any other digit behind it is none", () => {
    fc.assert(
      fc.property(bodies, fc.integer({ min: 0, max: 9 }), (body, digit) => {
        expect(isGtin(body + digit)).toBe(digit === gtinCheckDigit(body));
      }),
    );
  });

  test("one wrong digit is always found", () => {
    fc.assert(
      fc.property(numbers, fc.nat(13), fc.integer({ min: 1, max: 9 }), (number, place, more) => {
        const at = place % number.length;
        const wrong = (Number(number[at]) + more) % 10;
        expect(isGtin(number.slice(0, at) + wrong + number.slice(at + 1))).toBe(false);
      }),
    );
  });

  test("zeros in front change nothing, since all forms are the right end of fourteen digits", () => {
    fc.assert(fc.property(numbers, (number) => isGtin(number.padStart(14, "0"))));
  });

  test("the whole number weighed from the right adds up to a multiple of ten", () => {
    fc.assert(
      fc.property(numbers, (number) => {
        const weighed = [...number].map((digit, at) => Number(digit) * ((number.length - at) % 2 === 0 ? 3 : 1));
        expect(weighed.reduce((a, b) => a + b) % 10).toBe(0);
      }),
    );
  });
});

describe("cases", () => {
  test.each([
    ["629104150021", 3],
    ["12345678901", 2],
    ["0000000", 0],
    ["1234567", 0],
    ["1234567890123", 1],
  ])("%s takes the check digit %d", (body, digit) => {
    // Reckoned by hand, e.g. 1234567: 3(7 + 5 + 3 + 1) + 6 + 4 + 2 = 60, so 0.
    expect(gtinCheckDigit(body)).toBe(digit);
  });

  test.each(["", "0", "123456789012345", "12345678901", "1234567x", " 12345670", "12345670\n"])(
    "%j is no number",
    (text) => {
      expect(isGtin(text)).toBe(false);
    },
  );

  test("what is no row of digits has no check digit", () => {
    expect(() => gtinCheckDigit("12a")).toThrow(RangeError);
    expect(() => gtinCheckDigit("")).toThrow(RangeError);
  });
});

test("numbers of all lengths that mean the same are the same with 14 digits", () => {
  expect(toGtin14("036000291452")).toBe("00036000291452");
  expect(toGtin14("0036000291452")).toBe("00036000291452");
  expect(toGtin14("036000291453")).toBeUndefined();
});
