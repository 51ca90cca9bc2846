import fc from "fast-check";
import type { Food } from "../food/index.ts";
import type { Dish, Making, Step } from "./dish.ts";

/** A sound food without figures, with what is given put in its place. */
export function makeFood(id: string, over: Partial<Food> = {}): Food {
  return {
    id,
    group: "vegetable",
    names: { british: [id], american: [id] },
    diet: "vegan",
    vegetableOrFruit: false,
    hygiene: "ready-to-eat",
    allergens: { eu: [], us: [] },
    refusePct: 0,
    pieces: [],
    keeping: { unopened: { "dry-store": 9 }, opened: { "dry-store": 3 }, authority: "common practice, no source" },
    figureSources: {},
    source: "a table",
    composition: {},
    ...over,
  };
}

/** A food table of these foods. */
export function makeTable(...foods: readonly Food[]): Map<string, Food> {
  return new Map(foods.map((food) => [food.id, food]));
}

/** So many grams of a food, or another amount of it. */
export function makeMaking(food: string, amount: number | Making["amount"], over: Partial<Making> = {}): Making {
  const stated: Making["amount"] = typeof amount === "number" ? { value: amount, unit: "g" } : amount;
  return { food, amount: stated, optional: false, alternatives: [], ...over };
}

/** A step that both hands do for so many minutes, with what is given put in its place. */
export function makeStep(id: string, minutes: number, over: Partial<Step> = {}): Step {
  return {
    id,
    text: id,
    kind: "mix",
    minutes: { fixed: minutes, perPortion: 0 },
    hands: "full",
    kit: [],
    after: [],
    ahead: false,
    foods: [],
    ...over,
  };
}

/** A sound dish of one making and one step, with what is given put in its place. */
export function makeDish(over: Partial<Dish> = {}): Dish {
  return {
    id: "barley-bowl",
    title: "Barley bowl",
    cooking: "nowhere",
    manner: "pan",
    fits: ["evening"],
    main: "barley",
    portions: 2,
    portionMassG: 300,
    makings: [makeMaking("barley", 100)],
    method: [makeStep("stir", 5)],
    keeps: { fridgeDays: 0, authority: "common practice, no source" },
    travels: false,
    served: ["hot"],
    cautions: [],
    ...over,
  };
}

/** Methods of up to `most` steps whose `after` makes no ring, in an order that need not be that of the work. */
export function methods(most: number): fc.Arbitrary<Step[]> {
  const minutes = fc.record({ fixed: fc.nat(9), perPortion: fc.constantFrom(0, 0, 1, 2) });
  const parts = fc.subarray<Step["kit"][number]>(["ring", "pot", "pan", "kettle", "oven", "bowl"], { maxLength: 2 });
  const step = fc.record({ minutes, kit: parts, hands: fc.constantFrom<Step["hands"]>("full", "eye", "none") });
  return fc
    .array(fc.tuple(step, fc.array(fc.nat(most), { maxLength: 2 }), fc.nat(9)), { minLength: 1, maxLength: most })
    .map((drawn) => {
      const steps = drawn.map(([{ minutes: long, ...rest }, after, luck], at) => {
        const earlier = [...new Set(after.filter((other) => other < at))].map((other) => `step-${other}`);
        return { luck, step: makeStep(`step-${at}`, 0, { ...rest, minutes: long, after: earlier }) };
      });
      return steps.sort((a, b) => a.luck - b.luck).map((each) => each.step);
    });
}
