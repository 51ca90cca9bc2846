import fc from "fast-check";
import { expect, test } from "vitest";
import { makeDish, makeFood, makeMaking } from "../dish/dish.testing.ts";
import type { MenuPlan } from "../menu/index.ts";
import { makePack } from "../price/pack.testing.ts";
import { type CountedWish, countWishes, missOfWish } from "./countWishes.ts";
import { makeKitchen, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { toMenuProblem } from "./toMenuProblem.ts";

const dish = (id: string, manner: "soup" | "pan") =>
  makeDish({ id, manner, main: "oats-rolled", makings: [makeMaking("oats-rolled", 100)], fits: ["evening"] });
const tables = withTables(
  readStarterTables(),
  [makeFood("oats-rolled")],
  [dish("oat-soup", "soup"), dish("oat-pan", "pan")],
);
const packs = [makePack({ content: { massG: 5000 } })];
const state = (kitchen: Kitchen, days: number) => toMenuProblem(kitchen, tables, "2026-11-30", days);
const NOTHING: MenuPlan = { batches: [], trips: [], purchases: [], uses: [] };

test("servings are counted where and of what was wished for, and a week cut short is asked for less", () => {
  // The first day is a Monday, and there is one sitting a day.
  const wishes: Kitchen["wishes"] = [
    { what: { manner: "soup" }, least: 2, most: 3 },
    { what: { dish: "oat-pan" }, on: [5], at: ["evening"], least: 1, missMinor: 150 },
  ];
  const kitchen = makeKitchen({ packs, wishes });
  const stated = state(kitchen, 11);
  const [soup, pan] = ["oat-soup", "oat-pan"].map((id) => stated.dishes.findIndex((each) => each.dish.id === id));
  const batches = [
    { dish: soup as number, sittings: [0, 1, 8] },
    { dish: pan as number, sittings: [3, 4, 10] },
  ];
  expect(countWishes(kitchen, stated, { ...NOTHING, batches })).toEqual([
    { what: { manner: "soup" }, from: "2026-11-30", to: "2026-12-06", least: 2, most: 3, served: 2 },
    { what: { manner: "soup" }, from: "2026-12-07", to: "2026-12-10", least: 1, most: 3, served: 1 },
    { ...wishes[1], from: "2026-11-30", to: "2026-12-06", served: 1 },
  ]);
});

test("rules of variety are told by no wish", () => {
  const { limits } = makeKitchen();
  const ruled = makeKitchen({ packs, limits: { ...limits, variety: [{ by: "manner", mostPerWeek: 1 }] } });
  const stated = state(ruled, 7);
  expect(stated.wishes.length).toBeGreaterThan(0);
  expect(countWishes(ruled, stated, NOTHING)).toEqual([]);
});

test("a wish is missed by as many servings as it lacks or has too many, and by none between its bounds", () => {
  const drawn = fc.record({ least: fc.nat(7), more: fc.nat(7), served: fc.nat(20) });
  fc.assert(
    fc.property(drawn, ({ least, more, served }) => {
      const wish: CountedWish = { what: { manner: "soup" }, from: "2026-11-30", to: "2026-12-06", served };
      const miss = missOfWish({ ...wish, least, most: least + more });
      expect(served - miss).toBe(Math.min(Math.max(served, least), least + more));
      expect(missOfWish(wish)).toBe(0);
    }),
    { endOnFailure: true },
  );
});
