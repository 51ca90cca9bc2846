import fc from "fast-check";
import { expect, test } from "vitest";
import { readDuration, readTimes } from "./readTimes.ts";

const TIMES: [string, number[]][] = [
  ["simmer for 10 minutes", [10]],
  ["until golden, about 10 mins", [10]],
  ["fry 8-10 minutes", [10]],
  ["bake 25 to 30 min.", [30]],
  ["1 hour 30 minutes", [90]],
  ["an hour and a half", [90]],
  ["1½ hours", [90]],
  ["1 1/2 hrs", [90]],
  ["half an hour", [30]],
  ["1h30", [90]],
  ["2 or 3 minutes each side", [6]],
  ["4 minutes per side", [8]],
  ["a couple of minutes", [2]],
  ["30 seconds", [0.5]],
  ["1 hour to 1 hour 15 minutes", [75]],
  ["chill overnight", [480]],
  ["fry for 5 minutes, then simmer for twenty minutes", [5, 20]],
  ["a further 10 minutes", [10]],
  ["two days", [2880]],
];

test.each(TIMES)("%s", (text, minutes) => {
  expect(readTimes(text).map((time) => time.minutes)).toEqual(minutes);
});

test.each([
  "stirring every 5 minutes",
  "take out 10 minutes before serving",
  "within 2 hours",
  "add 200 g",
  "gas mark 4",
])("%s tells no length of time", (text) => {
  expect(readTimes(text)).toEqual([]);
});

test("a range, a night and both sides are marked as less sure than they read", () => {
  const reasons = ["8-10 minutes", "overnight", "2 minutes each side", "a few minutes", "10 minutes"].map(
    (text) => readTimes(text)[0]?.reason,
  );
  expect(reasons).toEqual(["time-range", "time-overnight", "time-each-side", "time-vague", undefined]);
});

test("a time stands where it says", () => {
  const text = "Fry for 5 minutes.";
  const [time] = readTimes(text);
  expect(text.slice(time?.start, time?.end)).toBe("5 minutes");
});

const DURATIONS: [string, number | undefined][] = [
  ["PT15M", 15],
  ["PT1H", 60],
  ["PT1H30M", 90],
  ["P0DT0H45M", 45],
  ["P0Y0M0DT0H35M0.000S", 35],
  ["pt1.5h", 90],
  ["PT0,5H", 30],
  ["P1DT2H", 1560],
  ["PT90S", 1.5],
  ["about 1 hour 15 minutes", 75],
  ["Prep: 10 mins", 10],
  ["1:15", 75],
  ["25", 25],
  ["PT0S", undefined],
  ["PT", undefined],
  ["P1Y", undefined],
  ["soon", undefined],
  ["PT99999999H", undefined],
  ["", undefined],
];

test.each(DURATIONS)("the duration %s", (text, minutes) => {
  expect(readDuration(text)).toBe(minutes);
});

test("hours and minutes written out are read as many", () => {
  const count = fc.integer({ min: 1, max: 59 });
  fc.assert(
    fc.property(count, count, fc.constantFrom(" and ", " ", ", "), (hours, minutes, joint) => {
      expect(readDuration(`${hours} hours${joint}${minutes} minutes`)).toBe(hours * 60 + minutes);
      expect(readDuration(`PT${hours}H${minutes}M`)).toBe(hours * 60 + minutes);
    }),
  );
});
