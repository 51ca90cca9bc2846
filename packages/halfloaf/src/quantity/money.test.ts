import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addMoney, CURRENCY_EXPONENTS, formatMoney, parseMoney, sumMoney, toDecimalText } from "./money.ts";

const currency = fc.constantFrom(...CURRENCY_EXPONENTS.keys());
const minor = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 });

test("the exponents that differ from two", () => {
  expect(["EUR", "GBP", "USD", "JPY", "KRW", "KWD", "TND"].map((code) => CURRENCY_EXPONENTS.get(code))).toEqual([
    2, 2, 2, 0, 0, 3, 3,
  ]);
});

test("written and read again it is the same money", () => {
  fc.assert(
    fc.property(minor, currency, (value, code) => {
      const money = { minor: value, currency: code };
      expect(parseMoney(toDecimalText(money), code)).toEqual({ ok: true, value: money });
    }),
  );
});

describe("writing", () => {
  test.each([
    [{ minor: 249, currency: "EUR" }, "2.49 EUR"],
    [{ minor: 5, currency: "EUR" }, "0.05 EUR"],
    [{ minor: -5, currency: "GBP" }, "-0.05 GBP"],
    [{ minor: 300, currency: "JPY" }, "300 JPY"],
    [{ minor: 1250, currency: "KWD" }, "1.250 KWD"],
    [{ minor: 0, currency: "USD" }, "0.00 USD"],
  ])("%j is %s", (money, text) => {
    expect(formatMoney(money)).toBe(text);
  });
});

describe("reading", () => {
  test.each([
    ["2.49", "EUR", 249],
    ["2,49", "EUR", 249],
    [" 3 ", "EUR", 300],
    ["0.5", "EUR", 50],
    ["-0.00", "EUR", 0],
    ["120", "JPY", 120],
    ["1.5", "KWD", 1500],
  ])('"%s" %s is %d minor units', (text, code, value) => {
    expect(parseMoney(text, code)).toEqual({ ok: true, value: { minor: value, currency: code } });
  });

  test.each([
    ["2.499", "EUR"],
    ["1.5", "JPY"],
    ["1,234.50", "EUR"],
    ["", "EUR"],
    [".5", "EUR"],
    ["1e3", "EUR"],
    ["two", "EUR"],
  ])('"%s" %s is refused', (text, code) => {
    expect(parseMoney(text, code)).toMatchObject({ ok: false, issues: [{ code: "money", received: `"${text}"` }] });
  });

  test("what is no text, no currency or too large is refused", () => {
    expect(parseMoney(2.49, "EUR")).toMatchObject({ ok: false, issues: [{ code: "money", received: "number" }] });
    expect(parseMoney("1", "XYZ")).toMatchObject({ ok: false, issues: [{ code: "currency", received: "XYZ" }] });
    expect(parseMoney("90071992547409.92", "EUR")).toMatchObject({ ok: false, issues: [{ path: ["minor"] }] });
  });
});

describe("adding", () => {
  test("adds whole minor units", () => {
    fc.assert(
      fc.property(minor, minor, currency, (a, b, code) => {
        const sum = addMoney({ minor: a, currency: code }, { minor: b, currency: code });
        expect(sum).toEqual({ ok: true, value: { minor: a + b, currency: code } });
      }),
    );
  });

  test("refuses mixed currencies, naming every one that is foreign", () => {
    const [euro, pound] = [
      { minor: 1, currency: "EUR" },
      { minor: 1, currency: "GBP" },
    ];
    expect(addMoney(euro, pound)).toEqual({
      ok: false,
      issues: [{ code: "currency", path: [], expected: "EUR", received: "GBP" }],
    });
    const sum = sumMoney([euro, pound, euro, pound], "EUR");
    expect(sum.ok ? [] : sum.issues.map(({ path }) => path)).toEqual([
      [1, "currency"],
      [3, "currency"],
    ]);
  });

  test("the sum of nothing is zero of its currency", () => {
    expect(sumMoney([], "EUR")).toEqual({ ok: true, value: { minor: 0, currency: "EUR" } });
  });

  test("a sum too large to be exact is refused", () => {
    const most = { minor: Number.MAX_SAFE_INTEGER, currency: "EUR" };
    expect(addMoney(most, { minor: 1, currency: "EUR" })).toMatchObject({ ok: false });
  });
});
