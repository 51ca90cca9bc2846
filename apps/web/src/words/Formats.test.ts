import { expect, test } from "vitest";
import { Formats } from "./Formats.ts";

test.each([
  ["en-IE", 340, "340\u00a0g"],
  ["en-IE", 999.6, "1\u00a0kg"],
  ["de-DE", 1250, "1,25\u00a0kg"],
])("a mass in %s keeps figure and unit on one line", (locale, massG, told) => {
  expect(new Formats(locale).mass(massG)).toBe(told);
});

test.each([
  ["EUR", 249, "€2.49"],
  ["JPY", 249, "¥249"],
])("minor units of %s are as many as the currency has", (currency, minor, told) => {
  expect(new Formats("en-IE").money(minor, currency).replace("JP", "")).toBe(told);
});

test("minutes after midnight are a time of the day, past midnight too", () => {
  expect(new Formats("en-IE").clock(18 * 60 + 5)).toBe("18:05");
  expect(new Formats("en-IE").clock(24 * 60 + 5)).toBe("00:05");
});
