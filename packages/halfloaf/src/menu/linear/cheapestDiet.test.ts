import { describe, expect, test } from "vitest";
import { cheapestDiet } from "./cheapestDiet.ts";

const bread = { name: "bread", pricePerUnit: 2, amounts: { protein: 8, iron: 3 } };
const beans = { name: "beans", pricePerUnit: 3, amounts: { protein: 24 } };
const protein = { nutrient: "protein", least: 60 };
const iron = { nutrient: "iron", least: 12 };

describe("the diet problem as a linear model", () => {
  test("has a column a food at its price, not below zero and without end", () => {
    expect(cheapestDiet([bread, beans], [protein]).columns).toEqual([
      { name: "bread", cost: 2, lower: 0, upper: Number.POSITIVE_INFINITY },
      { name: "beans", cost: 3, lower: 0, upper: Number.POSITIVE_INFINITY },
    ]);
  });

  test("has a row an allowance, met from below only", () => {
    expect(cheapestDiet([bread, beans], [protein]).rows).toEqual([
      {
        name: "protein",
        lower: 60,
        upper: Number.POSITIVE_INFINITY,
        entries: [
          ["bread", 8],
          ["beans", 24],
        ],
      },
    ]);
  });

  test("does not count an unknown amount, but counts a known zero", () => {
    const oil = { name: "oil", pricePerUnit: 1, amounts: { protein: 0 } };
    const { rows } = cheapestDiet([bread, beans, oil], [protein, iron]);
    expect(rows.map(({ entries }) => entries.map(([name]) => name))).toEqual([["bread", "beans", "oil"], ["bread"]]);
  });

  test("takes a nutrient's name as it is, even one that every object answers to", () => {
    expect(cheapestDiet([bread], [{ nutrient: "constructor", least: 1 }]).rows[0]?.entries).toEqual([]);
  });
});
