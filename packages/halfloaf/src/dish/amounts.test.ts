import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edibleFromPurchased } from "../food/index.ts";
import { isKnown, makingsOf, withoutOptional } from "./amounts.ts";
import { makeDish, makeFood, makeMaking, makeTable } from "./dish.testing.ts";

const foods = makeTable(
  makeFood("barley"),
  makeFood("squash", { refusePct: 20, pieces: [{ size: "small", massG: 600, source: "a table" }] }),
  makeFood("oil", { densityGPerMl: 0.9 }),
);
const mass = fc.double({ min: 0.1, max: 5000, noNaN: true });

describe("laws", () => {
  test("all portions together take what the dish states, edible and with its refuse", () => {
    fc.assert(
      fc.property(mass, mass, fc.integer({ min: 1, max: 12 }), (from, to, portions) => {
        const dish = makeDish({ portions, makings: [makeMaking("squash", { from, to, unit: "g" })] });
        const [amount] = makingsOf(dish, foods).filter(isKnown);
        if (amount === undefined) throw new Error("a mass is known");
        const { low, middle, high } = amount.edibleG;
        expect(low * portions).toBeCloseTo(Math.min(from, to), 6);
        expect(high * portions).toBeCloseTo(Math.max(from, to), 6);
        expect(middle).toBeCloseTo((low + high) / 2, 6);
        for (const bound of ["low", "middle", "high"] as const) {
          expect(edibleFromPurchased({ refusePct: 20 }, amount.purchasedG[bound])).toBeCloseTo(
            amount.edibleG[bound],
            6,
          );
        }
      }),
    );
  });
});

describe("cases", () => {
  test("as purchased the refuse is taken off, pieces and volumes have it put on", () => {
    const makings = [
      makeMaking("squash", 100, { as: "purchased" }),
      makeMaking("squash", { value: 1, unit: "piece" }),
      makeMaking("oil", { value: 2, unit: "[tbs_m]" }),
    ];
    const middles = makingsOf(makeDish({ portions: 1, makings }), foods)
      .filter(isKnown)
      .map(({ edibleG, purchasedG }) => [edibleG.middle, purchasedG.middle]);
    expect(middles).toEqual([
      [80, 100],
      [600, 750],
      [27, 27],
    ]);
  });

  test("what is to taste, lacks a measure or is no known food is listed as unknown", () => {
    const makings = [
      makeMaking("barley", "to-taste"),
      makeMaking("barley", { value: 1, unit: "[cup_us]" }),
      makeMaking("squash", { value: 1, unit: "piece", size: "huge" }),
      makeMaking("moon-dust", 5),
      makeMaking("barley", 5),
    ];
    const told = makingsOf(makeDish({ makings }), foods).map((each) => [each.at, each.ok ? "known" : each.reason]);
    expect(told).toEqual([
      [0, "to-taste"],
      [1, "density-unknown"],
      [2, "size-unknown"],
      [3, "food-unknown"],
      [4, "known"],
    ]);
  });

  test("the optional makings are in unless left out, and an alternative brings its own amount", () => {
    const alternative = { food: "squash", amount: { value: 60, unit: "g" } } as const;
    const makings = [
      makeMaking("barley", 100, { alternatives: [alternative] }),
      makeMaking("oil", 10, { optional: true }),
    ];
    const dish = makeDish({ portions: 2, makings });
    expect(makingsOf(dish, foods).map(({ food }) => food)).toEqual(["barley", "oil"]);
    expect(makingsOf(dish, foods, withoutOptional).map(({ food }) => food)).toEqual(["barley"]);
    const chosen = makingsOf(dish, foods, (making) => making.alternatives[0]);
    expect(chosen).toMatchObject([{ at: 0, food: "squash", edibleG: { low: 30, high: 30, middle: 30 } }]);
  });
});
