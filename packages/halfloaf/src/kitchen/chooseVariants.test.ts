import { describe, expect, it } from "vitest";
import { makeDish, makeFood, makeMaking, makeTable } from "../dish/dish.testing.ts";
import { chooseVariants, type FoodMerits } from "./chooseVariants.ts";
import type { ChosenFoods } from "./fitDish.ts";
import { makeEater } from "./kitchen.testing.ts";

const foods = makeTable(
  makeFood("white-beans"),
  makeFood("kidney-beans"),
  makeFood("parsley"),
  makeFood("dill"),
  makeFood("mint", { allergens: { eu: ["celery"], us: [] } }),
);
const choice = (food: string, massG: number) => ({ food, amount: { value: massG, unit: "g" as const } });
const dish = makeDish({
  makings: [
    makeMaking("white-beans", 200, { alternatives: [choice("kidney-beans", 200)] }),
    makeMaking("parsley", 10, { alternatives: [choice("dill", 10), choice("mint", 10)] }),
  ],
});
const PRICES: Readonly<Record<string, number>> = {
  "white-beans": 2,
  "kidney-beans": 1,
  parsley: 9,
  dill: 12,
  mint: 15,
};

function weigh(over: Partial<FoodMerits> = {}): FoodMerits {
  return {
    stockRank: () => 3,
    leastMinorPerG: (food) => PRICES[food] as number,
    sharedBy: (food) => (food === "white-beans" || food === "parsley" ? 5 : 1),
    isFleeting: (food) => !food.endsWith("beans"),
    ...over,
  };
}

function choose(merits: FoodMerits, eaters = [makeEater("ada")]): string[] {
  const variants = chooseVariants(dish, foods, eaters, () => true, merits) as readonly ChosenFoods[];
  return variants.map((one) => dish.makings.map((making) => one.get(making)?.food).join(" "));
}

describe("the ways in which a dish is worth cooking", () => {
  it("are as its author says, the cheapest, and the cheapest with one fleeting food changed at a time", () => {
    expect(choose(weigh())).toEqual([
      "white-beans parsley",
      "kidney-beans parsley",
      "kidney-beans dill",
      "kidney-beans mint",
    ]);
  });

  it("take what is in the stores before what is cheap", () => {
    const stocked = choose(weigh({ stockRank: (food) => (food === "dill" ? 0 : 3) }));
    expect(stocked.slice(0, 2)).toEqual(["white-beans parsley", "kidney-beans dill"]);
  });

  it("hold nothing that one of the eaters does not take", () => {
    const eaters = [makeEater("bea", { avoids: { allergens: ["celery"], foods: ["parsley"] } })];
    expect(choose(weigh(), eaters)).toEqual(["white-beans dill", "kidney-beans dill"]);
  });

  it("are six at most", () => {
    const herbs = Array.from({ length: 9 }, (_, at) => makeFood(`herb-${at}`));
    const alternatives = herbs.slice(1).map(({ id }) => choice(id, 10));
    const many = makeDish({ makings: [makeMaking("herb-0", 10, { alternatives })] });
    const merits = weigh({ leastMinorPerG: () => 1 });
    expect(chooseVariants(many, makeTable(...herbs), [makeEater("ada")], () => true, merits)).toHaveLength(6);
  });
});
