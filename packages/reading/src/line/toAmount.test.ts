import { describe, expect, it } from "vitest";
import { readMakingsLine } from "./readMakingsLine.ts";
import { type ConvertedAmount, type English, toAmount } from "./toAmount.ts";

function convert(line: string, english: English = "british"): ConvertedAmount {
  const read = readMakingsLine(line);
  if (read.kind !== "making") throw new Error(`${line} was read as ${read.kind}`);
  return toAmount(read, read.choices[0], english);
}

describe("toAmount", () => {
  it.each([
    ["200 g rice", { value: 200, unit: "g" }],
    ["2-3 tbsp oil", { from: 2, to: 3, unit: "[tbs_m]" }],
    ["1 large onion", { value: 1, unit: "piece", size: "large" }],
    ["2 garlic cloves", { value: 2, unit: "piece", size: "clove" }],
    ["3 eggs", { value: 3, unit: "piece" }],
    ["2 x 400 g tins tomatoes", { value: 800, unit: "g" }],
    ["400g tin tomatoes", { value: 400, unit: "g" }],
    ["½ x 400g tin beans", { value: 200, unit: "g" }],
    ["5 potatoes (about 1 kg)", { value: 1, unit: "kg" }],
    ["salt, to taste", "to-taste"],
    ["2 EL Öl", { value: 2, unit: "[tbs_m]" }],
    ["1 Teelöffel Salz", { value: 1, unit: "[tsp_m]" }],
    ["2 Zehen Knoblauch", { value: 2, unit: "piece", size: "clove" }],
    ["1 Bund Petersilie", { value: 1, unit: "piece", size: "bunch" }],
    ["1,5 kg Kartoffeln", { value: 1.5, unit: "kg" }],
  ])("gives the library's amount: %s", (line, amount) => expect(convert(line).amount).toEqual(amount));

  it("a sum becomes its first unit", () => {
    expect(convert("2lb 4oz potatoes").amount).toEqual({ value: 2.25, unit: "[lb_av]" });
    expect(convert("1 cup plus 4 tablespoons milk", "american").amount).toEqual({ value: 1.25, unit: "[cup_us]" });
  });

  it("spoons, cups and pints are those of the English the line is written in", () => {
    expect(convert("1 tsp salt").amount).toEqual({ value: 1, unit: "[tsp_m]" });
    expect(convert("1 tsp salt", "american").amount).toEqual({ value: 1, unit: "[tsp_us]" });
    expect(convert("1 pint milk").amount).toEqual({ value: 1, unit: "[pt_br]" });
    expect(convert("1 pint milk", "american").amount).toEqual({ value: 1, unit: "[pt_us]" });
    expect(convert("1 cup rice")).toMatchObject({ amount: { unit: "[cup_m]" }, sure: "likely", reason: "size-of-cup" });
  });

  it("of two tellings the mass counts, since it needs no density", () => {
    expect(convert("1 cup (200 g) rice").amount).toEqual({ value: 200, unit: "g" });
  });

  it("ounces of a liquid are likely fluid ounces, ounces of anything else are not", () => {
    expect(convert("9 oz beer")).toEqual({
      amount: { value: 9, unit: "[foz_br]" },
      sure: "likely",
      reason: "ounces-of-liquid",
    });
    expect(convert("9 oz rice")).toEqual({ amount: { value: 9, unit: "[oz_av]" }, sure: "sure" });
  });

  it("a stick of butter is four ounces, a stick of celery a piece", () => {
    expect(convert("2 sticks butter", "american")).toMatchObject({
      amount: { value: 8, unit: "[oz_av]" },
      sure: "likely",
    });
    expect(convert("2 sticks celery").amount).toEqual({ value: 2, unit: "piece", size: "stick" });
  });

  it.each([
    ["2cm ginger", "length"],
    ["splash of milk", "no-number"],
    ["0 eggs", "not-above-zero"],
    ["parsley", "no-amount"],
  ])("what cannot be weighed gives no amount, and why: %s", (line, reason) => {
    expect(convert(line)).toEqual({ sure: "guess", reason });
  });
});
