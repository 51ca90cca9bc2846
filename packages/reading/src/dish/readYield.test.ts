import { expect, test } from "vitest";
import { readYield } from "./readYield.ts";

const read = (...texts: string[]) => readYield(texts.map((text) => ({ text, path: [] })));

const YIELDS: [string, number | undefined, string | undefined][] = [
  ["Serves 4", 4, undefined],
  ["4 servings", 4, undefined],
  ["Serves 4-6", 4, "yield-range"],
  ["Serves four", 4, undefined],
  ["for 2 people", 2, undefined],
  ["Makes 6 portions", 6, undefined],
  ["Servings: 8", 8, undefined],
  ["4", 4, "yield-bare"],
  ["makes 12", undefined, undefined],
  ["1 loaf", undefined, undefined],
  ["12 biscuits", undefined, undefined],
  ["serves 0", undefined, undefined],
  ["serves 99999", undefined, undefined],
];

test.each(YIELDS)("%s", (text, portions, reason) => {
  const found = read(text);
  expect([found.portions?.value, found.portions?.reason]).toEqual([portions, reason]);
  expect(found.text).toBe(text);
});

test("the first text that tells portions counts", () => {
  expect(read("1 loaf", "Serves 8").portions?.value).toBe(8);
  expect(read()).toEqual({});
});
