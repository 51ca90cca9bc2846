import { expect, test } from "vitest";
import { amountBounds } from "./amountBounds.ts";

test("one value is both bounds", () => {
  expect(amountBounds({ value: 2, unit: "[tbs_m]" })).toEqual({ low: 2, high: 2, unit: "[tbs_m]" });
});

test("a range keeps both ends, in either order", () => {
  expect(amountBounds({ from: 100, to: 150, unit: "g" })).toEqual({ low: 100, high: 150, unit: "g" });
  expect(amountBounds({ from: 150, to: 100, unit: "g" })).toEqual({ low: 100, high: 150, unit: "g" });
});

test("pieces carry their size where one is named", () => {
  expect(amountBounds({ value: 1, unit: "piece", size: "large" })).toEqual({
    low: 1,
    high: 1,
    unit: "piece",
    size: "large",
  });
  expect(amountBounds({ from: 1, to: 2, unit: "piece" })).toEqual({ low: 1, high: 2, unit: "piece" });
});

test("to taste has no bounds", () => {
  expect(amountBounds("to-taste")).toBeUndefined();
});
