import fc from "fast-check";
import type { CivilDate } from "halfloaf/quantity";
import { expect, test } from "vitest";
import { de } from "./de.ts";
import { Formats } from "./Formats.ts";
import { storesDe } from "./further/storesDe.ts";

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

test.each([
  ["2026-11-29", "2027-05-30", "Sun, 30 May"],
  ["2026-11-29", "2027-05-31", "31 May 2027"],
  ["2026-11-29", "2027-11-29", "29 Nov 2027"],
  ["2026-11-29", "2026-01-01", "1 Jan 2026"],
])("from %s the day %s is told with its year where that could be another one", (here, date, told) => {
  expect(new Formats("en-IE").dayFrom(here as CivilDate, date as CivilDate)).toBe(told);
});

test.each([
  [0.05, "3\u00a0secs"],
  [0.4, "24\u00a0secs"],
  [1, "1\u00a0min"],
  [2.5, "2.5\u00a0mins"],
])("%s minutes of heat are told in what can be counted by the stove", (minutes, told) => {
  expect(new Formats("en-IE").duration(minutes)).toBe(told);
});

test("a sentence that ends in a German day has one full stop, and so has one that ends in a year", () => {
  const tell = [de.stores.bought, de.stores.opened, storesDe.lot.cooked, storesDe.packDate.mustGo];
  const days = ["2027-03-02", "2029-03-02"].map((date) => new Formats("de-DE").dayFrom("2027-03-01", date));
  for (const told of tell.flatMap((each) => days.map((day) => each(day)))) expect(told).toMatch(/[^.]\.$/);
});

test("minutes after midnight are a time of the day, past midnight too", () => {
  expect(new Formats("en-IE").clock(18 * 60 + 5)).toBe("18:05");
  expect(new Formats("en-IE").clock(24 * 60 + 5)).toBe("00:05");
});

test.each([
  [0.5, "½"],
  [1.33, "1⅓"],
  [0.67, "⅔"],
  [0.17, "⅙"],
  [2, "2"],
  [1.99, "2"],
  [0.94, "0.94"],
  [133.3, "133"],
])("%d of a spoon is %s", (value, told) => {
  expect(new Formats("en-IE").parts(value)).toBe(told);
});

test("a part never stands for a number further than a thirtieth away", () => {
  const shares: Record<string, number> = Object.fromEntries(
    [..."⅛⅙¼⅓⅜½⅝⅔¾⅚⅞"].map((sign) => {
      const [over = 0, under = 1] = sign.normalize("NFKD").split("\u2044").map(Number);
      return [sign, over / under];
    }),
  );
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 9.9, noNaN: true }), (value) => {
      const told = new Formats("en-IE").parts(value);
      const sign = told.at(-1) ?? "";
      const said = sign in shares ? Number(told.slice(0, -1)) + (shares[sign] as number) : Number(told);
      expect(Math.abs(said - value)).toBeLessThanOrEqual(value / 30 + 0.005);
    }),
  );
});

test("names are sorted as the language sorts them", () => {
  const names = ["Zwiebel", "Äpfel", "birne", "Öl", "Apfel", "rote Bete"];
  expect(names.toSorted(new Formats("de").compare)).toEqual(["Apfel", "Äpfel", "birne", "Öl", "rote Bete", "Zwiebel"]);
});
