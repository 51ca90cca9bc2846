import fc from "fast-check";
import { addDays } from "halfloaf/quantity";
import { expect, test } from "vitest";
import { readDay } from "./readDay.ts";

test.each([
  ["2026-11-28", undefined, "2026-11-28"],
  ["Sat 28.11.2026 18:05", undefined, "2026-11-28"],
  ["28.11.26", undefined, "2026-11-28"],
  ["28/11/2026", undefined, "2026-11-28"],
  ["11/28/2026", undefined, "2026-11-28"],
  ["03/04/2026", "dmy", "2026-04-03"],
  ["03/04/2026", "mdy", "2026-03-04"],
  ["05/05/2026", undefined, "2026-05-05"],
  ["28 Nov 2026", undefined, "2026-11-28"],
  ["1-Sept-26", undefined, "2026-09-01"],
] as const)("%j with order %s is a day", (text, order, day) => {
  expect(readDay(text, order)).toEqual({ kind: "day", day });
});

test("a day and month that could change places stay open", () => {
  expect(readDay("03/04/2026")).toEqual({ kind: "open", days: ["2026-04-03", "2026-03-04"] });
});

test.each(["", "31.02.2026", "28.11", "1.99", "12.34.567", "28 Foo 2026", "2026-13-01", "tel 01.23.45.67.89"])(
  "%j is no day",
  (text) => {
    expect(readDay(text)).toBeUndefined();
  },
);

test("every day is read back in each order it can be written in", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 36_000 }), fc.constantFrom("-", ".", "/"), (offset, mark) => {
      const day = addDays("2001-01-01", offset);
      const [year, month, date] = day.split("-");
      expect(readDay([date, month, year].join(mark), "dmy")).toEqual({ kind: "day", day });
      expect(readDay([month, date, year].join(mark), "mdy")).toEqual({ kind: "day", day });
      expect(readDay([year, month, date].join(mark))).toEqual({ kind: "day", day });
    }),
  );
});
