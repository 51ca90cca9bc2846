import { expect, test } from "vitest";
import { listOtherWays, type Ways } from "./listOtherWays.ts";

const evening = (dish: string, ...foods: string[]): Ways["batches"][number] => {
  const taken = foods.map((food) => ({ food, insteadOf: "chickpeas-tinned" }));
  return { date: "2026-12-01", kind: "evening", dish, ...(taken.length > 0 && { taken }) };
};
const before: Ways = { batches: [evening("soup", "butter-beans"), evening("salad"), evening("curry", "lentils")] };

test("a dish that stays and takes other makings is told with what it takes now, also where that is what it first states", () => {
  const after = { batches: [evening("soup", "kidney-beans"), evening("salad", "lentils"), evening("curry")] };
  expect(listOtherWays(before, after).map(({ dish, taken }) => [dish, taken.map(({ food }) => food)])).toEqual([
    ["soup", ["kidney-beans"]],
    ["salad", ["lentils"]],
    ["curry", []],
  ]);
});

test("what is cooked as before is not told, and neither is another dish", () => {
  expect(listOtherWays(before, before)).toEqual([]);
  expect(listOtherWays(before, { batches: [evening("stew", "lentils")] })).toEqual([]);
});
