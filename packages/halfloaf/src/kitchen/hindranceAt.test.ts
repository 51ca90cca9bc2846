import { describe, expect, test } from "vitest";
import { makeDish, makeFood, makeMaking } from "../dish/dish.testing.ts";
import type { Dish } from "../dish/index.ts";
import { makePack } from "../price/pack.testing.ts";
import { hindranceAt } from "./hindranceAt.ts";
import { makeKitchen, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { toMenuProblem } from "./toMenuProblem.ts";

const starter = readStarterTables();
const makings = [makeMaking("oats-rolled", 100)];
const porridge = makeDish({ id: "porridge", main: "oats-rolled", makings, fits: ["evening"] });
const kitchen = makeKitchen({ packs: [makePack({ content: { massG: 5000 } })] });
const [sitting] = kitchen.sittings as [Kitchen["sittings"][number]];
const foods = [makeFood("oats-rolled"), makeFood("cod", { group: "fish", diet: "fish" })];

/** What keeps a dish from the first sitting of a kitchen. */
function hindrance(dish: Dish = porridge, over: Partial<Kitchen> = {}) {
  const tables = withTables(starter, foods, [dish]);
  const changed = { ...kitchen, ...over };
  return hindranceAt(changed, tables, toMenuProblem(changed, tables, "2026-11-30", 1), 0, dish);
}

describe("what keeps a dish from a sitting", () => {
  test("is nothing where the rest of the plan alone decides", () => {
    expect(hindrance()).toBeUndefined();
  });

  test("is that it is meant for others, refused, not eaten, not sold or lacks kit", () => {
    expect(hindrance({ ...porridge, fits: ["morning"] })).toEqual({ reason: "not-meant" });
    expect(hindrance(porridge, { refusedDishes: ["porridge"] })).toEqual({ reason: "refused" });
    expect(hindrance(porridge, { packs: [] })).toEqual({ reason: "not-to-be-had", food: "oats-rolled" });
    const vegans = kitchen.eaters.map((eater) => ({ ...eater, diet: "vegan" as const }));
    const cod = { ...porridge, makings: [makeMaking("cod", 100)] };
    const withCod = [...kitchen.packs, makePack({ id: "cod-200", food: "cod", content: { massG: 200 } })];
    expect(hindrance(cod, { eaters: vegans, packs: withCod })).toEqual({ reason: "not-for-these-eaters", food: "cod" });
    const [step] = porridge.method as [Dish["method"][number]];
    expect(hindrance({ ...porridge, method: [{ ...step, kit: ["oven"] }] })).toEqual({
      reason: "kit-missing",
      kit: "oven",
    });
  });

  test("is that it can't be taken along, be heated or be done in time", () => {
    expect(hindrance(porridge, { sittings: [{ ...sitting, packed: true }] })).toEqual({ reason: "not-cold" });
    const [step] = porridge.method as [Dish["method"][number]];
    const boiled: Dish = { ...porridge, method: [{ ...step, kind: "boil", kit: ["ring"] }] };
    expect(hindrance(boiled, { sittings: [{ ...sitting, heat: false }] })).toEqual({ reason: "needs-heat" });
    expect(hindrance(porridge, { sittings: [{ ...sitting, minutes: 1 }] })).toEqual({
      reason: "too-long",
      atHandMinutes: 1,
    });
  });
});
