import { expect, test } from "vitest";
import { scaleAmount } from "./scaleAmount.ts";

test("grams keep two or three figures, spoons and pieces go by quarters", () => {
  expect(scaleAmount({ value: 170, unit: "g" }, 1.17)).toEqual({ value: 199, unit: "g" });
  expect(scaleAmount({ value: 1.2, unit: "g" }, 1.17)).toEqual({ value: 1.4, unit: "g" });
  expect(scaleAmount({ value: 2, unit: "[tsp_m]" }, 1.17)).toEqual({ value: 2.25, unit: "[tsp_m]" });
  expect(scaleAmount({ from: 2, to: 3, unit: "piece", size: "clove" }, 0.5)).toEqual({
    from: 1,
    to: 1.5,
    unit: "piece",
    size: "clove",
  });
  expect(scaleAmount({ value: 0.25, unit: "[tsp_m]" }, 0.2)).toEqual({ value: 0.25, unit: "[tsp_m]" });
});

test("once is as written, and to taste stays", () => {
  expect(scaleAmount({ value: 333.3, unit: "g" }, 1)).toEqual({ value: 333.3, unit: "g" });
  expect(scaleAmount("to-taste", 3)).toBe("to-taste");
});
