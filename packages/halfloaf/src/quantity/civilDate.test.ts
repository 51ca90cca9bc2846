import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, CivilDate, daysBetween, isCivilDate, weekday } from "./civilDate.ts";
import { parseWith } from "./issue.ts";

const DAY_MS = 86_400_000;

/** A day and the same day as the platform's date, years 0001 to 9999. */
const anyDay = fc
  .integer({ min: Date.UTC(2000, 0, 1) / DAY_MS - 730_119, max: Date.UTC(9999, 11, 31) / DAY_MS })
  .map((dayNumber) => ({ dayNumber, text: new Date(dayNumber * DAY_MS).toISOString().slice(0, 10) }));

describe("against the platform's calendar", () => {
  test("the days between two days", () => {
    fc.assert(
      fc.property(anyDay, anyDay, (from, to) => {
        expect(daysBetween(from.text, to.text)).toBe(to.dayNumber - from.dayNumber);
      }),
    );
  });

  test("a day some days later", () => {
    fc.assert(
      fc.property(anyDay, anyDay, (from, to) => {
        expect(addDays(from.text, to.dayNumber - from.dayNumber)).toBe(to.text);
      }),
    );
  });

  test("the day of the week", () => {
    fc.assert(
      fc.property(anyDay, ({ dayNumber, text }) => {
        expect(weekday(text)).toBe(new Date(dayNumber * DAY_MS).getUTCDay() || 7);
      }),
    );
  });

  test("every day of 1999 to 2005 follows the one before", () => {
    const first = Date.UTC(1999, 0, 1);
    for (let at = 0; at < 7 * 365; at++) {
      expect(addDays("1999-01-01", at)).toBe(new Date(first + at * DAY_MS).toISOString().slice(0, 10));
    }
  });
});

describe("what is a day", () => {
  test.each(["2024-02-29", "2000-02-29", "0001-01-01", "9999-12-31"])("%s is one", (text) => {
    expect(isCivilDate(text)).toBe(true);
  });

  test.each([
    "2026-02-29",
    "1900-02-29",
    "2026-13-01",
    "2026-00-10",
    "2026-04-31",
    "2026-1-1",
    "0000-01-01",
    "2026-01-01T00",
    "",
  ])('"%s" is none', (text) => {
    expect(isCivilDate(text)).toBe(false);
    expect(parseWith(CivilDate, text)).toMatchObject({ ok: false, issues: [{ path: [] }] });
  });

  test("any text of the form agrees with the platform on whether the day is there", () => {
    const two = fc.integer({ min: 0, max: 40 }).map((value) => String(value).padStart(2, "0"));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), two, two, (year, month, day) => {
        const text = `${String(year).padStart(4, "0")}-${month}-${day}`;
        const date = new Date(`${text}T00:00:00Z`);
        const isThere = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
        expect(isCivilDate(text)).toBe(isThere);
      }),
      { numRuns: 1000 },
    );
  });

  test("reckoning with what is no day is a defect", () => {
    expect(() => addDays("2026-02-30", 1)).toThrow(RangeError);
    expect(() => addDays("2026-02-01", 0.5)).toThrow(RangeError);
    expect(() => addDays("9999-12-31", 1)).toThrow(RangeError);
    expect(() => addDays("0001-01-01", -1)).toThrow(RangeError);
    expect(() => weekday("today")).toThrow(RangeError);
  });
});
