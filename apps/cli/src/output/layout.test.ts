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

test("wide signs count two columns, colours none", () => {
  expect(textWidth("麺 a")).toBe(4);
  expect(textWidth("\u001b[1mab\u001b[22m")).toBe(2);
});
