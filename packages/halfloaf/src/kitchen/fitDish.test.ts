import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeDish, makeFood, makeMaking, makeStep, makeTable } from "../dish/dish.testing.ts";
import { EU_ALLERGENS, US_ALLERGENS } from "../food/index.ts";
import { addDays } from "../quantity/index.ts";
import { type FittedDish, fitDish, takesFood } from "./fitDish.ts";
import { fitDishes } from "./fitDishes.ts";
import { makeEater, makeKitchen, readDemoKitchens, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Eater, Kitchen } from "./kitchen.ts";
import { toMenuProblem } from "./toMenuProblem.ts";

const tables = readStarterTables();
const kitchens = readDemoKitchens();
const { kit } = makeKitchen();
const always = () => true;

const foods = makeTable(
  makeFood("barley", { allergens: { eu: ["gluten"], us: [] } }),
  makeFood("rice"),
  makeFood("butter", { diet: "vegetarian", allergens: { eu: ["milk"], us: ["milk"] } }),
  makeFood("oil"),
  makeFood("parsley"),
  makeFood("soy-sauce", { allergens: { eu: ["soybeans", "gluten"], us: ["soybeans", "wheat"] } }),
  makeFood("salt"),
);
const choice = (food: string, massG: number) => ({ food, amount: { value: massG, unit: "g" as const } });
const dish = makeDish({
  makings: [
    makeMaking("barley", 160, { alternatives: [choice("rice", 140)] }),
    makeMaking("butter", 20, { alternatives: [choice("oil", 16)] }),
    makeMaking("parsley", 4, { optional: true }),
    makeMaking("soy-sauce", "to-taste", { alternatives: [{ food: "salt", amount: "to-taste" }] }),
  ],
});

/** Foods that stand for the makings, in their order. */
function foodsOf({ dish: { makings }, choose }: FittedDish): (string | undefined)[] {
  return makings.map((making) => choose(making)?.food);
}

describe("a dish fitted to a kitchen and its eaters", () => {
  it("has the first food of each making that can be had and that all take; optional makings are left out", () => {
    const noGluten = makeEater("bea", { avoids: { allergens: ["gluten"], foods: [] } });
    const vegan = makeEater("cai", { diet: "vegan" });
    const fit = (eaters: readonly Eater[], isToBeHad: (food: string) => boolean = always) =>
      foodsOf(fitDish(dish, foods, kit, eaters, isToBeHad) as FittedDish);
    expect(fit([makeEater("ada")])).toEqual(["barley", "butter", undefined, "soy-sauce"]);
    expect(fit([makeEater("ada")], (food) => food !== "barley")).toEqual(["rice", "butter", undefined, "soy-sauce"]);
    expect(fit([makeEater("ada"), noGluten])).toEqual(["rice", "butter", undefined, "salt"]);
    expect(fit([vegan])).toEqual(["barley", "oil", undefined, "soy-sauce"]);
  });

  it("has the amounts of the foods chosen, per portion; what is to taste has none", () => {
    const { makings } = fitDish(dish, foods, kit, [makeEater("ada", { diet: "vegan" })], always) as FittedDish;
    expect(makings.map(({ food, edibleG }) => [food, edibleG.middle])).toEqual([
      ["barley", 80],
      ["oil", 8],
    ]);
  });

  it("is none where the kit lacks, a making cannot be had, or somebody takes none of its foods; and says why", () => {
    const baked = { ...dish, method: [makeStep("bake", 30, { kit: ["oven"] })] };
    expect(fitDish(baked, foods, kit, [], always)).toEqual({ reason: "kit-missing", kit: "oven" });
    const none = fitDish(dish, foods, kit, [], (food) => food !== "barley" && food !== "rice");
    expect(none).toEqual({ reason: "not-to-be-had", food: "barley" });
    const picky = makeEater("dee", { avoids: { allergens: [], foods: ["butter", "oil"] } });
    expect(fitDish(dish, foods, kit, [picky], always)).toEqual({ reason: "not-for-these-eaters", food: "butter" });
    const uncounted = { ...dish, makings: [makeMaking("barley", { value: 2, unit: "piece" })] };
    expect(fitDish(uncounted, foods, kit, [], always)).toEqual({ reason: "amount-unknown", food: "barley" });
  });

  it("is another one for eaters with whom only something to taste differs", () => {
    const eaters = [makeEater("ada"), makeEater("bea", { avoids: { allergens: ["soybeans"], foods: [] } })];
    const at = { kind: "evening" as const, minutes: 60, heat: true, packed: false };
    const kitchen = makeKitchen({ eaters });
    const days = [0, 1, 2].map((day) => ({ ...at, day, date: addDays(kitchen.startsOn, day) }));
    const { fitted, servedAt } = fitDishes(
      kitchen,
      withTables(tables, [...foods.values()], [dish]),
      days.map((one, day) => ({ ...one, eaters: [["ada"], ["ada", "bea"], ["bea"]][day] as string[] })),
      always,
    );
    expect(fitted.map(foodsOf)).toEqual([
      ["barley", "butter", undefined, "soy-sauce"],
      ["barley", "butter", undefined, "salt"],
    ]);
    expect(servedAt).toEqual([[0], [1], [1]]);
  });

  it("is not fitted where it is refused, and one of several reasons is told where nobody can have it", () => {
    const kitchen = makeKitchen({ refusedDishes: [dish.id] });
    const inTables = withTables(tables, [...foods.values()], [dish]);
    const sitting = {
      kind: "evening" as const,
      minutes: 60,
      heat: true,
      packed: false,
      day: 0,
      date: kitchen.startsOn,
    };
    const seats = [{ ...sitting, eaters: ["ada"] }];
    expect(fitDishes(kitchen, inTables, seats, always)).toEqual({ fitted: [], servedAt: [[]], unfit: [] });
    const open = fitDishes({ ...kitchen, refusedDishes: [] }, inTables, seats, () => false);
    expect(open.unfit).toEqual([{ dish: dish.id, why: { reason: "not-to-be-had", food: "barley" } }]);
  });
});

describe("whether an eater takes a food", () => {
  it.each([
    ["butter", {}, true],
    ["butter", { diet: "vegan" as const }, false],
    ["butter", { avoids: { allergens: ["milk" as const], foods: [] } }, false],
    ["soy-sauce", { avoids: { allergens: ["wheat" as const], foods: [] } }, false],
    ["salt", { avoids: { allergens: [], foods: ["salt"] } }, false],
    ["salt", { diet: "vegan" as const }, true],
  ])("%s for %j: %s", (food, over, takes) => {
    expect(takesFood(makeEater("ada", over), foods.get(food) as never)).toBe(takes);
  });
});

describe("the demo kitchens", () => {
  const strictness = ["vegan", "vegetarian", "fish", "meat"];
  const avoided = fc.record({
    diet: fc.constantFrom("vegan" as const, "vegetarian" as const, "fish" as const, "meat" as const),
    allergens: fc.subarray([...new Set([...EU_ALLERGENS, ...US_ALLERGENS])], { maxLength: 4 }),
    foods: fc.subarray([...tables.foods.keys()], { maxLength: 12 }),
  });

  /** Judged from the dish's own words and the food table: how much is on the plates of all sittings, and what is wrong there. */
  function judgeOffers(kitchen: Kitchen, of = tables): { readonly offered: number; readonly wrong: readonly string[] } {
    const stated = toMenuProblem(kitchen, of, kitchen.startsOn, 7);
    const held = stated.dishes.map(({ dish: one, choose }, at) => [
      ...one.makings.flatMap((making) => choose(making)?.food ?? []),
      ...(stated.problem.dishes[at]?.makings.map(({ food }) => stated.foods[food]?.id as string) ?? []),
    ]);
    const refused = kitchen.eaters.map((eater) => new Set([...tables.foods.keys()].filter((id) => !mayEat(eater, id))));
    const plates = stated.problem.sittings.flatMap(({ dishes }, k) => {
      const seated = refused.filter((_, i) => stated.sittings[k]?.eaters.includes(kitchen.eaters[i]?.id as string));
      const isWrong = (id: string): boolean => !tables.foods.has(id) || seated.some((foods) => foods.has(id));
      return dishes.flatMap((at) => (held[at] as string[]).map((id) => ({ id, isWrong: isWrong(id) })));
    });
    return { offered: plates.length, wrong: plates.filter(({ isWrong }) => isWrong).map(({ id }) => id) };
  }

  function mayEat({ diet, avoids }: Eater, id: string): boolean {
    const food = tables.foods.get(id);
    if (food === undefined || avoids.foods.includes(id)) return false;
    const held: readonly string[] = [...food.allergens.eu, ...food.allergens.us];
    if (avoids.allergens.some((one) => held.includes(one))) return false;
    return strictness.indexOf(food.diet) <= strictness.indexOf(diet);
  }

  it("never offer a dish at a sitting that holds what one of its eaters does not take", () => {
    let offered = 0;
    fc.assert(
      fc.property(
        fc.nat({ max: kitchens.length - 1 }),
        fc.nat({ max: 3 }),
        fc.array(avoided, { minLength: 6, maxLength: 6 }),
        (at, from, wishes) => {
          const { kitchen } = kitchens[at] as (typeof kitchens)[number];
          const eaters = kitchen.eaters.map((eater, i): Eater => {
            const { diet, allergens, foods: single } = wishes[i] as (typeof wishes)[number];
            return { ...eater, diet, avoids: { allergens, foods: single } };
          });
          // Every fourth dish, as each is fitted by itself.
          const few = { ...tables, dishes: tables.dishes.filter((_, i) => i % 4 === from) };
          const offers = judgeOffers({ ...kitchen, eaters }, few);
          offered += offers.offered;
          expect(offers.wrong).toEqual([]);
        },
      ),
      { numRuns: 12 },
    );
    expect(offered).toBeGreaterThan(500);
  });

  it("suit their eaters as they are; those of the shared house's evenings its vegetarians and the allergic", () => {
    for (const { kitchen } of kitchens) expect(judgeOffers(kitchen).wrong).toEqual([]);
    const { kitchen } = kitchens.find(({ name }) => name === "six-flat") as (typeof kitchens)[number];
    const stated = toMenuProblem(kitchen, tables, kitchen.startsOn, 7);
    const evenings = stated.problem.sittings.filter((_, k) => stated.sittings[k]?.kind === "evening");
    const foodsOfEvening = evenings.flatMap(({ dishes }) =>
      dishes.flatMap((at) => foodsOf(stated.dishes[at] as FittedDish)),
    );
    expect(foodsOfEvening.length).toBeGreaterThan(100);
    for (const id of foodsOfEvening) {
      const food = id === undefined ? undefined : tables.foods.get(id);
      if (food === undefined) continue;
      expect(["vegan", "vegetarian"]).toContain(food.diet);
      expect(food.allergens.eu).not.toContain("peanuts");
      expect(food.allergens.us).not.toContain("peanuts");
    }
  });
});
