import { expect, test } from "vitest";
import { luby } from "./luby.ts";

test("the sequence begins as printed", () => {
  const printed = [1, 1, 2, 1, 1, 2, 4, 1, 1, 2, 1, 1, 2, 4, 8, 1];
  expect(printed.map((_, k) => luby(k + 1))).toEqual(printed);
});
