import fc from "fast-check";
import { expect, test } from "vitest";
import { readNumber } from "./readNumber.ts";

const POINT = { decimal: "." } as const;
const COMMA = { decimal: ",", thousands: "." } as const;

test.each([
  ["12", POINT, 12],
  [" 0.05 ", POINT, 0.05],
  [".5", POINT, 0.5],
  ["1e-3", POINT, 0.001],
  ["1,5", { decimal: "," }, 1.5],
  ["1.234,5", COMMA, 1234.5],
  ["1 234 567,5", { decimal: ",", thousands: " " }, 1_234_567.5],
  ["1\u00a0234", { decimal: ",", thousands: " " }, 1234],
  ["1'234.5", { decimal: ".", thousands: "'" }, 1234.5],
  ["1234.5", { decimal: ".", thousands: "," }, 1234.5],
] as const)("%j by %j is %d", (cell, form, number) => {
  expect(readNumber(cell, form)).toBe(number);
});

test.each([
  ["", POINT],
  ["-1", POINT],
  ["1,5", POINT],
  ["1.234", { decimal: "," }],
  ["1.23,5", COMMA],
  ["12.34.567", COMMA],
  ["1.5", COMMA],
  ["1e999", POINT],
  ["NaN", POINT],
  ["0x10", POINT],
  ["Infinity", POINT],
  ["١٢", POINT],
  ["5 g", POINT],
] as const)("%j by %j is no number", (cell, form) => {
  expect(readNumber(cell, form)).toBeUndefined();
});

test("what is printed with marks of thousands is read back", () => {
  const forms = fc.constantFrom(
    { decimal: ".", thousands: "," } as const,
    { decimal: ",", thousands: "." } as const,
    { decimal: ",", thousands: " " } as const,
    { decimal: ".", thousands: "'" } as const,
  );
  fc.assert(
    fc.property(fc.nat(999_999_999), fc.nat(999), forms, (whole, decimals, form) => {
      const grouped = String(whole).replace(/\B(?=(\d{3})+$)/g, form.thousands);
      const cell = `${grouped}${form.decimal}${String(decimals).padStart(3, "0")}`;
      expect(readNumber(cell, form)).toBe(Number(`${whole}.${String(decimals).padStart(3, "0")}`));
    }),
  );
});
