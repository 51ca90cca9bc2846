import { expect, test } from "vitest";
import { readMakingsLine } from "../line/readMakingsLine.ts";
import { toMakingAmount } from "./toMakingAmount.ts";

const SOURCE = "made up";
const PIECES = [
  { size: "medium", massG: 100, source: SOURCE },
  { size: "large", massG: 150, source: SOURCE },
  { size: "clove", massG: 5, source: SOURCE },
];

function read(text: string, pieces = PIECES) {
  const line = readMakingsLine(text);
  if (line.kind !== "making") throw new Error(text);
  return toMakingAmount(line, line.choices[0], { pieces }, "british");
}

test("masses and volumes are taken as told", () => {
  expect(read("150 g leeks")).toEqual({ amount: { value: { value: 150, unit: "g" }, sure: "sure" } });
  expect(read("2 tbsp oil")).toEqual({ amount: { value: { value: 2, unit: "[tbs_m]" }, sure: "sure" } });
});

test("what packs hold is a mass as purchased", () => {
  expect(read("2 x 400 g tins tomatoes")).toMatchObject({
    amount: { value: { value: 800, unit: "g" } },
    as: { value: "purchased", sure: "likely" },
  });
});

test("pieces have a size of the table, or none where the table lacks it", () => {
  expect(read("2 large onions")?.amount.value).toEqual({ value: 2, unit: "piece", size: "large" });
  expect(read("3 cloves garlic")?.amount.value).toEqual({ value: 3, unit: "piece", size: "clove" });
  expect(read("2 small onions")?.amount).toEqual({
    value: { value: 2, unit: "piece" },
    sure: "likely",
    reason: "size-not-in-table",
  });
});

test("a tin whose size is not told is no amount", () => {
  expect(read("1 tin tomatoes")).toBeUndefined();
});

test("no amount, and one that measures nothing, is to taste as a guess; to taste itself is told", () => {
  for (const text of ["parsley", "a handful of parsley"]) {
    expect(read(text)?.amount).toEqual({ value: "to-taste", sure: "guess", reason: "amount-unsaid" });
  }
  expect(read("salt to taste")?.amount).toEqual({ value: "to-taste", sure: "sure" });
});
