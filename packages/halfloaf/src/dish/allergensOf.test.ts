import { expect, test } from "vitest";
import { allergensOf } from "./allergensOf.ts";
import { makeFood, makeMaking, makeTable } from "./dish.testing.ts";

const foods = makeTable(
  makeFood("pasta", { allergens: { eu: ["gluten"], us: ["wheat"] } }),
  makeFood("rice"),
  makeFood("cheese", { allergens: { eu: ["milk"], us: ["milk"] } }),
  makeFood("pesto", { allergens: { eu: ["nuts", "milk"], us: ["tree-nuts", "milk"] } }),
);
const alternatives = [{ food: "pesto", amount: { value: 1, unit: "g" } as const }];

test("allergens of required makings are sure, those only in optional ones or alternatives possible", () => {
  const makings = [
    makeMaking("pasta", 1),
    makeMaking("rice", 1, { alternatives }),
    makeMaking("cheese", 1, { optional: true }),
  ];
  expect(allergensOf({ makings }, foods)).toEqual({
    eu: { sure: ["gluten"], possible: ["milk", "nuts"] },
    us: { sure: ["wheat"], possible: ["milk", "tree-nuts"] },
    unknownFoods: [],
  });
});

test("an allergen is named once, and a making stays sure though an alternative would be without it", () => {
  const instead = [{ food: "rice", amount: { value: 1, unit: "g" } as const }];
  const makings = [makeMaking("cheese", 1, { alternatives: instead }), makeMaking("pesto", 1, { optional: true })];
  expect(allergensOf({ makings }, foods).eu).toEqual({ sure: ["milk"], possible: ["nuts"] });
});

test("a food that is not in the table is named, since it may hold anything", () => {
  const makings = [makeMaking("moss", 1), makeMaking("moss", 1), makeMaking("rice", 1)];
  expect(allergensOf({ makings }, foods).unknownFoods).toEqual(["moss"]);
});
