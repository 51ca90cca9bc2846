import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { UnitPrice } from "../price/index.ts";
import { withoutOptional } from "./amounts.ts";
import { costingCard } from "./costing.ts";
import { makeDish, makeFood, makeMaking, makeTable } from "./dish.testing.ts";

const add = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const lines = fc.array(
  fc.record({
    massG: fc.integer({ min: 1, max: 3000 }),
    refusePct: fc.nat(60),
    minorPerG: fc.option(
      fc.nat(5000).map((part) => part / 997),
      { nil: undefined },
    ),
  }),
  { minLength: 1, maxLength: 9 },
);

function build(drawn: readonly { massG: number; refusePct: number; minorPerG: number | undefined }[]) {
  const foods = makeTable(...drawn.map(({ refusePct }, at) => makeFood(`food-${at}`, { refusePct })));
  const dish = makeDish({ portions: 3, makings: drawn.map(({ massG }, at) => makeMaking(`food-${at}`, massG)) });
  const prices = new Map<string, UnitPrice>();
  for (const [at, { minorPerG }] of drawn.entries()) {
    if (minorPerG !== undefined) prices.set(`food-${at}`, { minorPerG, estimate: false });
  }
  return { foods, dish, prices };
}

describe("laws", () => {
  test("the lines as printed add up to the total, and so do the plates", () => {
    fc.assert(
      fc.property(lines, fc.integer({ min: 1, max: 9 }), (drawn, portions) => {
        const { foods, dish, prices } = build(drawn);
        const card = costingCard(dish, foods, prices, { portions });
        expect(add(card.lines.map(({ costMinor }) => costMinor ?? 0))).toBe(card.totalMinor);
        expect(add(card.platesMinor)).toBe(card.totalMinor);
        expect(card.platesMinor).toHaveLength(portions);
        expect(Math.max(...card.platesMinor) - Math.min(...card.platesMinor)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("each line is its own cost within a minor unit, the total within half of one", () => {
    fc.assert(
      fc.property(lines, (drawn) => {
        const { foods, dish, prices } = build(drawn);
        const card = costingCard(dish, foods, prices);
        const exact = drawn.map(({ massG, refusePct, minorPerG }) =>
          minorPerG === undefined ? undefined : (massG / (1 - refusePct / 100)) * minorPerG,
        );
        expect(Math.abs(card.totalMinor - add(exact.map((cost) => cost ?? 0)))).toBeLessThanOrEqual(0.5 + 1e-6);
        for (const [at, cost] of exact.entries()) {
          const told = card.lines[at]?.costMinor;
          if (cost === undefined) expect(told).toBeUndefined();
          else expect(Math.abs((told as number) - cost)).toBeLessThan(1.5);
        }
      }),
    );
  });

  test("the total is a least one exactly where a price or an amount is not known", () => {
    fc.assert(
      fc.property(lines, fc.boolean(), (drawn, taste) => {
        const { foods, dish, prices } = build(drawn);
        const makings = taste ? [...dish.makings, makeMaking("food-0", "to-taste")] : dish.makings;
        const card = costingCard({ ...dish, makings }, foods, prices);
        expect(card.atLeast).toBe(taste || drawn.some(({ minorPerG }) => minorPerG === undefined));
        expect(card.unpriced).toHaveLength(drawn.filter(({ minorPerG }) => minorPerG === undefined).length);
      }),
    );
  });
});

describe("cases", () => {
  const foods = makeTable(makeFood("barley"), makeFood("squash", { refusePct: 20 }), makeFood("oil"));
  const prices = new Map([
    ["barley", { minorPerG: 0.25, estimate: false }],
    ["squash", { minorPerG: 0.5, estimate: true }],
  ]);
  const makings = [
    makeMaking("barley", 101),
    makeMaking("squash", 80),
    makeMaking("oil", 10, { optional: true }),
    makeMaking("oil", "to-taste"),
  ];
  const dish = makeDish({ portions: 2, portionMassG: 310, makings });

  test("a card shows mass, refuse, cost, yield and what is not known", () => {
    const mass = (massG: number) => ({ low: massG, high: massG, middle: massG });
    expect(costingCard(dish, foods, prices)).toEqual({
      portions: 2,
      portionMassG: 310,
      lines: [
        {
          at: 0,
          food: "barley",
          edibleG: mass(101),
          purchasedG: mass(101),
          refuseG: 0,
          costMinor: 25,
          estimate: false,
        },
        { at: 1, food: "squash", edibleG: mass(80), purchasedG: mass(100), refuseG: 20, costMinor: 50, estimate: true },
        { at: 2, food: "oil", edibleG: mass(10), purchasedG: mass(10), refuseG: 0, costMinor: undefined },
      ],
      unknown: [{ at: 3, making: makings[3], food: "oil", ok: false, reason: "to-taste" }],
      unpriced: ["oil"],
      totalMinor: 75,
      platesMinor: [38, 37],
      atLeast: true,
      estimate: true,
    });
  });

  test("what is left out costs nothing and is not unpriced", () => {
    const card = costingCard({ ...dish, makings: makings.slice(0, 3) }, foods, prices, { choose: withoutOptional });
    expect(card).toMatchObject({ totalMinor: 75, unpriced: [], atLeast: false });
  });

  test("four portions take twice as much", () => {
    expect(costingCard(dish, foods, prices, { portions: 4 })).toMatchObject({
      totalMinor: 151,
      lines: [{ purchasedG: { middle: 202 } }, { purchasedG: { middle: 200 } }, { purchasedG: { middle: 20 } }],
    });
  });

  test.each([0, 1.5, -1])("%d portions are a defect", (portions) => {
    expect(() => costingCard(dish, foods, prices, { portions })).toThrow(RangeError);
  });
});
