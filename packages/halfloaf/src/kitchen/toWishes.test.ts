import { describe, expect, it } from "vitest";
import { makeDish, makeFood, makeMaking } from "../dish/dish.testing.ts";
import { MenuSearch } from "../menu/index.ts";
import { makePack } from "../price/pack.testing.ts";
import { makeEater, makeKitchen, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { toMenuProblem } from "./toMenuProblem.ts";

const cod = makeFood("cod", { group: "fish", diet: "fish", hygiene: "raw-fish" });
const oats = makeFood("oats-rolled");
const dish = (id: string, manner: "soup" | "pan", foods: readonly string[]) =>
  makeDish({
    id,
    manner,
    main: foods[0] as string,
    portions: 1,
    makings: foods.map((food) => makeMaking(food, 100)),
    fits: ["midday", "evening"],
    keeps: { fridgeDays: 3, authority: "a table" },
  });
const tables = withTables(
  readStarterTables(),
  [cod, oats],
  [
    dish("oat-soup", "soup", ["oats-rolled"]),
    dish("cod-soup", "soup", ["oats-rolled", "cod"]),
    dish("cod", "pan", ["cod"]),
  ],
);
const packs = [
  makePack({ content: { massG: 5000 } }),
  makePack({ id: "cod-200", food: "cod", content: { massG: 200 }, priceMinor: 400 }),
];

function state(over: Partial<Kitchen>, days = 7) {
  const kitchen = makeKitchen({ packs, ...over });
  return toMenuProblem(kitchen, tables, kitchen.startsOn, days);
}

function rule(...variety: Kitchen["limits"]["variety"]) {
  return { limits: { ...makeKitchen().limits, variety } };
}

describe("a wish of a kitchen", () => {
  it("means the dishes that it says something true of", () => {
    const meant = (what: Kitchen["wishes"][number]["what"]): string[] => {
      const { problem, wishes } = state({ wishes: [{ what, least: 1 }] });
      expect(problem.wishes).toEqual(wishes.map(({ menu }) => menu));
      return wishes[0]?.menu.dishes.map((at) => problem.dishes[at]?.id as string) ?? [];
    };
    expect(meant({ group: "fish" })).toEqual(["cod-soup", "cod"]);
    expect(meant({ group: "fish", manner: "soup" })).toEqual(["cod-soup"]);
    expect(meant({ main: "cod" })).toEqual(["cod"]);
    expect(meant({ hygiene: "raw-fish" })).toEqual(["cod-soup", "cod"]);
    expect(meant({ diet: "vegan" })).toEqual(["oat-soup"]);
    expect(meant({ dish: "cod" })).toEqual(["cod"]);
  });

  it("speaks of its weekdays in each week, and of a week cut short only as far as that goes", () => {
    // The first day is a Monday.
    const wishes: Kitchen["wishes"] = [{ what: { group: "fish" }, on: [5], least: 1 }];
    const spoken = (days: number) => state({ wishes }, days).wishes.map(({ menu }) => [menu.sittings, menu.least]);
    expect(spoken(4)).toEqual([]);
    expect(spoken(5)).toEqual([[[4], 1]]);
    expect(spoken(14)).toEqual([
      [[4], 1],
      [[11], 1],
    ]);
    const soups: Kitchen["wishes"] = [{ what: { manner: "soup" }, least: 2, most: 3 }];
    expect(
      state({ wishes: soups }, 11).wishes.map(({ menu: { sittings, least, most } }) => [sittings.length, least, most]),
    ).toEqual([
      [7, 2, 3],
      [4, 1, 3],
    ]);
  });

  it("is kept by the plan", () => {
    const wishes: Kitchen["wishes"] = [
      { what: { group: "fish" }, on: [5], at: ["evening"], least: 1 },
      { what: { group: "fish" }, most: 1 },
    ];
    const { problem } = state({ wishes, limits: { ...makeKitchen().limits, energyTolerancePct: 50 } });
    const easy = { ...problem, profiles: [], limits: { ...problem.limits, distinct: 0 } };
    const search = new MenuSearch(easy, 1, { expectedMoves: 4000 });
    while (search.advance().moves < 4000);
    const batches = search.best()?.batches ?? [];
    const fish = batches.filter(({ dish: at }) => easy.dishes[at]?.id !== "oat-soup");
    expect(fish.flatMap(({ sittings }) => sittings)).toEqual([4]);
  });
});

describe("a rule of variety", () => {
  const eaters = [makeEater("ada"), makeEater("bo")];

  it("keeps what is alike days apart, for each eater by itself", () => {
    const [sitting] = makeKitchen().sittings;
    const table = sitting as Kitchen["sittings"][number];
    const apart = [
      { ...table, eaters: ["ada"] },
      { ...table, eaters: ["bo"] },
    ];
    const { wishes } = state({ eaters, sittings: apart, ...rule({ by: "manner", daysApart: 2 }) }, 3);
    const soups = wishes.filter(({ what }) => what.manner === "soup");
    expect(soups.map(({ menu: { sittings, most } }) => [sittings, most])).toEqual([
      [[0, 2], 1],
      [[2, 4], 1],
      [[1, 3], 1],
      [[3, 5], 1],
    ]);
    const together = state(
      { eaters, sittings: [{ ...table, eaters: ["ada", "bo"] }], ...rule({ by: "manner", daysApart: 2 }) },
      3,
    );
    expect(together.wishes.filter(({ what }) => what.manner === "soup")).toHaveLength(2);
  });

  it("caps servings in a week by manner, main food or dish, at each kind of sitting by itself", () => {
    const sittings = makeKitchen().sittings.flatMap((one): Kitchen["sittings"] => [one, { ...one, kind: "midday" }]);
    const capped = (by: "manner" | "main" | "dish", at?: ["evening"]) =>
      state({ sittings, ...rule({ by, mostPerWeek: 2, ...(at && { at }) }) }).wishes.map(
        ({ what }) => Object.values(what)[0],
      );
    expect(capped("manner")).toEqual(["soup", "soup", "pan", "pan"]);
    expect(capped("main", ["evening"])).toEqual(["oats-rolled", "cod"]);
    expect(capped("dish", ["evening"])).toEqual(["oat-soup", "cod-soup", "cod"]);
  });
});
