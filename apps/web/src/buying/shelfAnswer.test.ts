import type { FoodTable } from "halfloaf/food";
import type { WeekPlan } from "halfloaf/kitchen";
import type { Pack } from "halfloaf/price";
import { describe, expect, test } from "vitest";
import { shelfAnswer } from "./shelfAnswer.ts";

const food = { id: "oats", pieces: [], refusePct: 0 };
const foods = new Map([["oats", food]]) as unknown as FoodTable;
const pack = (id: string, massG: number, priceMinor: number, over: Partial<Pack> = {}): Pack => ({
  id,
  shop: "corner",
  food: "oats",
  label: id,
  content: { massG },
  priceMinor,
  estimate: true,
  section: "dry",
  ...over,
});
const line = {
  pack: "small",
  food: "oats",
  label: "small",
  section: "dry",
  count: 2,
  massG: 1000,
  priceMinor: 200,
  savedMinor: 0,
  estimate: true,
};
const week = {
  lots: [
    { id: "small-day-1-1", usedG: 500 },
    { id: "small-day-1-2", usedG: 150 },
  ],
} as unknown as WeekPlan;
const packs = [pack("small", 500, 100), pack("large", 1000, 170), pack("far", 1000, 10, { shop: "market" })];
const of = { week, lots: ["small-day-1-1", "small-day-1-2"], packs, foods };

describe("what is said at the shelf at once", () => {
  test("another price counts for all packs of the line and is held against another pack of the same shop", () => {
    const answer = shelfAnswer(line, { kind: "price", priceMinor: 120 }, of);
    expect(answer).toMatchObject({ neededG: 650, dearerMinor: 40, isWorthIt: false });
    expect(answer.other).toMatchObject({ count: 1, costMinor: 170, pack: { id: "large" } });
    expect(shelfAnswer(line, { kind: "price", priceMinor: 80 }, of)).toMatchObject({
      dearerMinor: -40,
      isWorthIt: true,
    });
  });

  test("of another size as many are taken as hold what the plan takes", () => {
    const answer = shelfAnswer(line, { kind: "size", priceMinor: 130, massG: 750 }, of);
    expect(answer.found).toMatchObject({ count: 1, massG: 750, costMinor: 130 });
    expect(answer).toMatchObject({ dearerMinor: -70, isWorthIt: true });
  });

  test("what is not there is not worth it, and the other pack is told", () => {
    const answer = shelfAnswer(line, { kind: "gone" }, of);
    expect(answer).toMatchObject({ isWorthIt: false, other: { pack: { id: "large" } } });
    expect("dearerMinor" in answer).toBe(false);
  });

  test("an offer that was known falls away with the old price", () => {
    const offered = [pack("small", 500, 100, { offer: { kind: "several", count: 2, priceMinor: 150 } })];
    const answer = shelfAnswer(line, { kind: "price", priceMinor: 120 }, { ...of, packs: offered });
    expect(answer.found?.costMinor).toBe(240);
  });
});
