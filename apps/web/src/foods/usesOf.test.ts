import type { Kitchen } from "halfloaf/kitchen";
import type { RecordState } from "halfloaf/kitchen/record";
import { expect, test } from "vitest";
import { usesOf } from "./usesOf.ts";

const making = (food: string, alternatives: string[] = []) => ({
  food,
  alternatives: alternatives.map((each) => ({ food: each })),
});
const KITCHEN = {
  dishes: [
    { id: "crackers", main: "kelp-crackers", makings: [making("butter")] },
    { id: "toast", main: "bread", makings: [making("bread", ["kelp-crackers"])] },
    { id: "soup", main: "leek", makings: [making("leek")] },
  ],
  packs: [
    { id: "kelp-200g", food: "kelp-crackers" },
    { id: "oats-500g", food: "oats-rolled" },
  ],
  eaters: [
    { id: "ada", avoids: { foods: ["kelp-crackers"] } },
    { id: "joren", avoids: { foods: [] } },
  ],
} as unknown as Kitchen;
const LOTS = new Map(
  [
    { id: "a", food: "kelp-crackers", leftG: 120 },
    { id: "b", food: "kelp-crackers", leftG: 30 },
    { id: "c", food: "oats-rolled", leftG: 500 },
  ].map((lot) => [lot.id, lot]),
) as unknown as RecordState["lots"];

test("a food is used by dishes that are made of it or may be, by packs, by what is left of it and by who avoids it", () => {
  expect(usesOf("kelp-crackers", KITCHEN, { lots: LOTS })).toEqual([
    { kind: "dish", id: "crackers" },
    { kind: "dish", id: "toast" },
    { kind: "pack", id: "kelp-200g" },
    { kind: "lot", massG: 150 },
    { kind: "avoided", id: "ada" },
  ]);
  expect(usesOf("limpets", KITCHEN, { lots: LOTS })).toEqual([]);
});
