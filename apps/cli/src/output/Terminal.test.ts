import { expect, test } from "vitest";
import { COLOURED, choosePaint, PLAIN } from "./paint.ts";
import { chooseWidth } from "./Terminal.ts";

test("colours only on a terminal, and never where they are refused", () => {
  expect(choosePaint(true, {})).toBe(COLOURED);
  expect(choosePaint(false, {})).toBe(PLAIN);
  expect(choosePaint(true, { NO_COLOR: "1" })).toBe(PLAIN);
  expect(choosePaint(true, { NO_COLOR: "" })).toBe(COLOURED);
  expect(choosePaint(true, { TERM: "dumb" })).toBe(PLAIN);
});

test("the width is that of the screen within bounds, 80 where it is not known", () => {
  expect([undefined, Number.NaN, 0, 30, 72, 200].map(chooseWidth)).toEqual([80, 80, 80, 40, 72, 100]);
});
