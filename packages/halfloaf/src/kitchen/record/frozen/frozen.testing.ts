import type { Dish } from "../../../dish/index.ts";
import { makeFood } from "../../../stores/stores.testing.ts";

/** The foods of the frozen files, apart from the food table, which goes on changing. */
export const foods = new Map(
  [
    makeFood("milk-whole", { fridge: 7, freezer: 90 }, { fridge: 3, freezer: 90 }),
    makeFood("kidney-beans-tinned", { "dry-store": 900 }, { fridge: 3, freezer: 60 }),
    makeFood("rice-white-long", { "dry-store": 730 }, { "dry-store": 365 }),
    makeFood("onion", { "dry-store": 30 }, { fridge: 5 }),
  ].map((food) => [food.id, food]),
);

/** The dish that is cooked in them. */
export const dish: Dish = {
  id: "bean-rice-pot",
  title: "Bean and rice pot",
  cooking: "made up",
  manner: "one-pot-grain",
  fits: ["evening"],
  main: "kidney-beans-tinned",
  portions: 2,
  portionMassG: 380,
  makings: [
    { food: "kidney-beans-tinned", amount: { value: 400, unit: "g" }, optional: false, alternatives: [] },
    { food: "rice-white-long", amount: { value: 150, unit: "g" }, optional: false, alternatives: [] },
    { food: "onion", amount: { value: 90, unit: "g" }, optional: false, alternatives: [] },
  ],
  method: [
    {
      id: "simmer",
      text: "Simmer all of it until the rice is done.",
      kind: "simmer",
      minutes: { fixed: 20, perPortion: 1 },
      hands: "eye",
      kit: ["ring", "pot"],
      after: [],
      ahead: false,
      foods: [],
    },
  ],
  keeps: { fridgeDays: 2, freezerDays: 60, authority: "common practice, no source" },
  travels: false,
  served: ["hot"],
  cautions: [],
};
