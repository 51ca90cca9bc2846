import fc from "fast-check";
import { expect, test } from "vitest";
import { layTable, spread, wrap, wrapBehind } from "./layout.ts";
import { textWidth } from "./textWidth.ts";

test("no wrapped line is wider than asked, and no sign but blanks is lost", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), fc.integer({ min: 4, max: 60 }), (text, width) => {
      const lines = wrap(text, width);
      for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(width);
      expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
    }),
  );
});

test("what is wrapped behind a lead is set in as deep as the lead", () => {
  expect(wrapBehind("- ", "one two three", 13)).toEqual(["- one two", "  three"]);
});

test("the right part of a spread line ends at the width", () => {
  expect(spread("Till", "3.20", 12)).toEqual(["Till    3.20"]);
  expect(spread("oats and barley", "3.20", 16)).toEqual(["oats and", "barley      3.20"]);
});

test("the column that wraps gives way, figures stand at the right", () => {
  const columns = [
    { title: "food", wraps: true },
    { title: "g", right: true },
  ];
  expect(
    layTable(
      columns,
      [
        ["red lentils, dried and split", "5"],
        ["salt", "120"],
      ],
      22,
    ),
  ).toEqual(["food                 g", "red lentils,         5", "dried and split", "salt               120"]);
});

test("a column that wraps and has little room left stands on lines of its own, between what is before it and after it", () => {
  const columns = [
    { title: "for" },
    { title: "job", wraps: true },
    { title: "at start", right: true },
    { title: "min" },
  ];
  const rows = [
    ["morning", "soak the oats overnight", "12.50", "10"],
    ["evening", "", "3.20", ""],
  ];
  const told = [
    "for",
    "  job",
    "     at  min",
    "  start",
    "morning",
    "  soak the oats",
    "  overnight",
    "  12.50  10",
    "evening",
    "   3.20",
  ];
  expect(layTable(columns, rows, 18)).toEqual(told);
});

test("no line of a table is wider than 40 columns whose figures have room there side by side", () => {
  const cell = fc.string({ unit: fc.constantFrom("a", "b", " ", "麺"), maxLength: 30 });
  const figure = fc.nat({ max: 9999 }).map(String);
  const row = fc.tuple(cell, figure, figure, figure, figure, figure);
  const columns = ["food", "at start", "came in", "used", "wasted", "left"].map((title, at) => ({
    title,
    right: at > 0,
  }));
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 4 }), fc.integer({ min: 40, max: 100 }), (rows, width) => {
      for (const line of layTable(columns, rows, width, 2)) expect(textWidth(line)).toBeLessThanOrEqual(width);
    }),
    { endOnFailure: true },
  );
});

test("wide signs count two columns, colours none", () => {
  expect(textWidth("麺 a")).toBe(4);
  expect(textWidth("\u001b[1mab\u001b[22m")).toBe(2);
});
