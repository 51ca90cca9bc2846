import { expect, test } from "vitest";
import { findLines } from "./findLines.ts";

const TEXT = '{\n  "packs": [\n    {"id": "a"},\n    {"id": "b",\n     "priceMinor": -1}\n  ]\n}';

test("a value has the line it starts on", () => {
  expect(findLines(TEXT, [["packs"], ["packs", 0], ["packs", 1, "priceMinor"]])).toEqual([2, 3, 5]);
});

test("what is missing has the line of what it is missing from; the whole has the first", () => {
  expect(findLines(TEXT, [["packs", 1, "content"], ["shops"], []])).toEqual([4, 1, 1]);
});
