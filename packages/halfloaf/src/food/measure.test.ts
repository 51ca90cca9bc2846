import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edibleFromPurchased, massOfAmount, purchasedFromEdible } from "./measure.ts";

const oil = { densityGPerMl: 0.92, pieces: [], refusePct: 0 };
const onion = {
  pieces: [
    { size: "medium", massG: 110, source: "a table" },
    { size: "large", massG: 150, source: "a table" },
  ],
  refusePct: 10,
};
const exactly = (massG: number) => ({ ok: true, edibleG: { low: massG, high: massG } });

describe("the edible mass of an amount", () => {
  test("a mass is itself, in any unit of mass", () => {
    expect(massOfAmount(onion, { value: 2, unit: "kg" })).toEqual(exactly(2000));
  });

  test("a volume goes by the density", () => {
    expect(massOfAmount(oil, { value: 2, unit: "[tbs_m]" })).toEqual(exactly(27.6));
  });

  test("pieces go by the size named, else by the first", () => {
    expect(massOfAmount(onion, { value: 2, unit: "piece" })).toEqual(exactly(220));
    expect(massOfAmount(onion, { value: 2, unit: "piece", size: "large" })).toEqual(exactly(300));
  });

  test("a range stays a range", () => {
    expect(massOfAmount(onion, { from: 1, to: 2, unit: "piece" })).toEqual({
      ok: true,
      edibleG: { low: 110, high: 220 },
    });
  });

  test.each([
    ["to-taste", onion, "to-taste"],
    [{ value: 1, unit: "[cup_us]" }, onion, "density-unknown"],
    [{ value: 1, unit: "piece" }, oil, "pieces-unknown"],
    [{ value: 1, unit: "piece", size: "tiny" }, onion, "size-unknown"],
  ] as const)("%j is unknown where the food lacks the measure", (amount, food, reason) => {
    expect(massOfAmount(food, amount)).toEqual({ ok: false, reason });
  });

  test("as purchased a mass and a volume lose the refuse, a piece is edible already", () => {
    expect(massOfAmount(onion, { value: 100, unit: "g" }, "purchased")).toEqual(exactly(90));
    expect(massOfAmount({ ...oil, refusePct: 50 }, { value: 100, unit: "mL" }, "purchased")).toEqual(exactly(46));
    expect(massOfAmount(onion, { value: 1, unit: "piece" }, "purchased")).toEqual(exactly(110));
  });
});

describe("refuse", () => {
  test("a pound of carrots as purchased, 11 % refuse, leaves 403.7 g", () => {
    expect(edibleFromPurchased({ refusePct: 11 }, 453.59237)).toBeCloseTo(403.7, 1);
  });

  test("a drained tin: 400 g with 40 % liquid leave 240 g", () => {
    expect(edibleFromPurchased({ refusePct: 40 }, 400)).toBe(240);
    expect(purchasedFromEdible({ refusePct: 40 }, 240)).toBe(400);
  });

  test("there and back gives the same mass, and what is purchased is never less than what is eaten", () => {
    const refuse = fc.double({ min: 0, max: 99, noNaN: true });
    fc.assert(
      fc.property(refuse, fc.double({ min: 0, max: 1e6, noNaN: true }), (refusePct, edibleG) => {
        const purchasedG = purchasedFromEdible({ refusePct }, edibleG);
        expect(purchasedG).toBeGreaterThanOrEqual(edibleG * (1 - 1e-15));
        expect(Math.abs(edibleFromPurchased({ refusePct }, purchasedG) - edibleG)).toBeLessThanOrEqual(edibleG * 1e-12);
      }),
    );
  });
});
