import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { describe, expect, test } from "vitest";
import type { Dish } from "../dish/index.ts";
import { parseKitchen } from "./checkKitchen.ts";
import { allergensCosted, costDish, foodPrices } from "./costDish.ts";
import type { Kitchen } from "./kitchen.ts";
import { parseTables, type Tables } from "./tables.ts";

function readDemo(): { tables: Tables; kitchen: Kitchen } {
  const [tables, kitchen] = [parseTables(loadStarterTables()), parseKitchen(loadDemoKitchens()[0]?.content)];
  if (!tables.ok || !kitchen.ok) throw new Error("the demo cannot be read");
  return { tables: tables.value, kitchen: kitchen.value };
}

describe("a dish as it is costed", () => {
  const { tables, kitchen } = readDemo();
  const { foods } = tables;
  const dishes = [...tables.dishes.values()];

  test("a food that no pack has costs what the stock at hand cost for a gram, and one that is nowhere has no price", () => {
    const lot = { id: "lot", food: "oats-rolled", place: "dry-store", boughtOn: kitchen.startsOn } as const;
    const own = { packs: [], stores: [{ ...lot, massG: 400, costMinor: 60 } as Kitchen["stores"][number]] };
    const prices = foodPrices(own, foods, kitchen.startsOn);
    expect([...prices]).toEqual([["oats-rolled", { minorPerG: 0.15, estimate: false }]]);
  });

  test("each making is its food, else the first alternative that can be had; optional ones stay out", () => {
    const prices = foodPrices(kitchen, foods, kitchen.startsOn);
    let swapped = 0;
    for (const dish of dishes) {
      const { makings } = costDish(dish, 2, prices, foods);
      const wanted = dish.makings.filter(({ optional }) => !optional);
      expect(makings.length).toBe(wanted.length);
      makings.forEach(({ food }, at) => {
        const making = wanted[at] as Dish["makings"][number];
        const had = [making, ...making.alternatives].find((each) => prices.has(each.food)) ?? making;
        expect(food).toBe(had.food);
        if (food !== making.food) swapped++;
      });
    }
    expect(swapped).toBeGreaterThan(0);
  });

  test("what is only possible is in some food that was left out, and nothing sure is also possible", () => {
    const prices = foodPrices(kitchen, foods, kitchen.startsOn);
    for (const dish of dishes) {
      const { eu } = allergensCosted(dish, costDish(dish, 1, prices, foods), foods);
      expect(eu.possible.filter((id) => eu.sure.includes(id))).toEqual([]);
      const all = dish.makings.flatMap(({ food, alternatives }) => [food, ...alternatives.map((each) => each.food)]);
      const brought = new Set(all.flatMap((food) => foods.get(food)?.allergens.eu ?? []));
      expect(eu.possible.filter((id) => !brought.has(id))).toEqual([]);
    }
  });
});
