import { describe, expect, test } from "vitest";
import { DIETS } from "../food/index.ts";
import { dietOf, suitsDiet } from "./dietOf.ts";
import { makeFood, makeMaking, makeTable } from "./dish.testing.ts";

const foods = makeTable(
  makeFood("beans"),
  makeFood("cheese", { diet: "vegetarian" }),
  makeFood("trout", { diet: "fish" }),
  makeFood("bacon", { diet: "meat" }),
);
const instead = (...ids: string[]) => ({
  alternatives: ids.map((food) => ({ food, amount: { value: 1, unit: "g" } as const })),
});

describe("the diet of a dish", () => {
  test("as written is that of its widest food, the optional ones counted", () => {
    expect(dietOf({ makings: [makeMaking("beans", 1)] }, foods)).toEqual({ asWritten: "vegan", reachable: "vegan" });
    const makings = [makeMaking("trout", 1), makeMaking("cheese", 1), makeMaking("bacon", 1, { optional: true })];
    expect(dietOf({ makings }, foods)).toEqual({ asWritten: "meat", reachable: "fish" });
  });

  test("at best takes the strictest alternative of each making", () => {
    const makings = [makeMaking("bacon", 1, instead("cheese", "beans")), makeMaking("cheese", 1, instead("trout"))];
    expect(dietOf({ makings }, foods)).toEqual({ asWritten: "meat", reachable: "vegetarian" });
  });

  test("an unknown food leaves it unknown, an unknown alternative is no way out", () => {
    expect(dietOf({ makings: [makeMaking("moss", 1)] }, foods)).toEqual({ asWritten: undefined, reachable: undefined });
    const saved = [makeMaking("moss", 1, instead("beans"))];
    expect(dietOf({ makings: saved }, foods)).toEqual({ asWritten: undefined, reachable: "vegan" });
    const lost = [makeMaking("bacon", 1, instead("moss"))];
    expect(dietOf({ makings: lost }, foods)).toEqual({ asWritten: "meat", reachable: "meat" });
  });
});

test("who eats more kinds eats what suits fewer", () => {
  const suiting = DIETS.map((eater) => DIETS.filter((food) => suitsDiet(food, eater)).length);
  expect(suiting).toEqual([1, 2, 3, 4]);
  expect(suitsDiet("meat", "fish")).toBe(false);
});
