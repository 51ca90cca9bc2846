import { expect, test } from "vitest";
import { moveDates } from "./moveDates.ts";

test("days of the calendar move wherever they stand, and nothing else does", () => {
  const value = { on: "2026-12-30", "2026-12-30": [{ at: "2026-12-30T10:00", no: 3 }, "2027-02-28", null, true] };
  expect(moveDates(value, 2)).toEqual({
    on: "2027-01-01",
    "2026-12-30": [{ at: "2026-12-30T10:00", no: 3 }, "2027-03-02", null, true],
  });
  expect(moveDates(moveDates(value, 400), -400)).toEqual(value);
});
