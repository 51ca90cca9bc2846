import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readPrice } from "./readPrice.ts";

const POINT = { decimal: "." } as const;
const COMMA = { decimal: ",", thousands: "." } as const;

function codes(cell: string, currency: string, form: Parameters<typeof readPrice>[2] = POINT) {
  const read = readPrice(cell, currency, form);
  return read.ok ? read.value : read.issues.map(({ code }) => code);
}

describe("a price of a list", () => {
  test.each([
    ["1.99", "EUR", POINT, 199],
    ["€1.99", "EUR", POINT, 199],
    ["1,99 €", "EUR", COMMA, 199],
    ["1.234,5 EUR", "EUR", COMMA, 123450],
    ["Fr. 2.50", "CHF", POINT, 250],
    ["2.50 Fr.", "CHF", POINT, 250],
    ["¥298", "JPY", POINT, 298],
    ["0.29", "KWD", POINT, 290],
    [".5", "GBP", POINT, 50],
    ["3", "GBP", POINT, 300],
    ["1 234,50 Kč", "CZK", { decimal: ",", thousands: " " }, 123450],
  ] as const)("%j in %s is read", (cell, currency, form, minor) => {
    expect(codes(cell, currency, form)).toBe(minor);
  });

  test.each([
    ["$1.99", "EUR", ["currency"]],
    ["1.99 GBP", "EUR", ["currency"]],
    ["-1.99", "EUR", ["currency"]],
    ["1.999", "EUR", ["price"]],
    ["1.5", "JPY", ["price"]],
    ["1,99", "EUR", ["price"]],
    ["free", "EUR", ["price"]],
    ["", "EUR", ["price"]],
    ["9".repeat(40), "EUR", ["price"]],
  ])("%j in %s is refused", (cell, currency, expected) => {
    expect(codes(cell, currency)).toEqual(expected);
  });

  test("no price loses or gains a minor unit, whichever way it is written", () => {
    const form = fc.constantFrom(POINT, COMMA, { decimal: ".", thousands: "'" } as const);
    fc.assert(
      fc.property(fc.nat(99_999_999), form, fc.constantFrom("", "€", "EUR "), (minor, how, sign) => {
        const whole = String(Math.floor(minor / 100));
        const grouped = "thousands" in how ? whole.replace(/\B(?=(\d{3})+$)/g, how.thousands) : whole;
        expect(codes(`${sign}${grouped}${how.decimal}${String(minor % 100).padStart(2, "0")}`, "EUR", how)).toBe(minor);
      }),
    );
  });
});
