import { expect, test } from "vitest";
import { checkDish } from "./checkDish.ts";
import { makeDish, makeFood, makeMaking, makeStep, makeTable } from "./dish.testing.ts";

const foods = makeTable(
  makeFood("barley"),
  makeFood("egg", { pieces: [{ size: "large", massG: 50, source: "a table" }] }),
);
const tell = (over: Parameters<typeof makeDish>[0]) =>
  checkDish(makeDish(over), foods).map(({ code, path, received }) => [code, path.join("/"), received]);

test("a sound dish has no issues, with something to taste and a step that handles an alternative", () => {
  const alternatives = [{ food: "egg", amount: { value: 2, unit: "piece" } as const }];
  const makings = [makeMaking("barley", 100, { alternatives }), makeMaking("barley", "to-taste")];
  expect(tell({ makings, method: [makeStep("stir", 1, { foods: ["barley", "egg"] })] })).toEqual([]);
});

test("all faults come at once, each where it stands", () => {
  const alternatives = [
    { food: "moss", amount: { value: 1, unit: "g" } as const },
    { food: "egg", amount: { value: 1, unit: "piece", size: "tiny" } as const },
  ];
  const found = tell({
    main: "lentils",
    makings: [
      makeMaking("fog", 1),
      makeMaking("barley", { value: 1, unit: "mL" }, { alternatives }),
      makeMaking("barley", { value: 1, unit: "piece" }),
    ],
    method: [
      makeStep("cut", 1, { foods: ["egg", "lentils"] }),
      makeStep("cut", 1, { after: ["chop"] }),
      makeStep("boil", 1, { after: ["fry"] }),
      makeStep("fry", 1, { after: ["boil"] }),
    ],
  });
  expect(found).toEqual([
    ["food-unknown", "makings/0/food", "fog"],
    ["density-unknown", "makings/1/amount", '{"value":1,"unit":"mL"}'],
    ["food-unknown", "makings/1/alternatives/0/food", "moss"],
    ["size-unknown", "makings/1/alternatives/1/amount", '{"value":1,"unit":"piece","size":"tiny"}'],
    ["pieces-unknown", "makings/2/amount", '{"value":1,"unit":"piece"}'],
    ["main-unknown", "main", "lentils"],
    ["food-unlisted", "method/0/foods/1", "lentils"],
    ["step-twice", "method/1/id", "cut"],
    ["step-unknown", "method/1/after/0", "chop"],
    ["step-cyclic", "method/2/after", "boil"],
    ["step-cyclic", "method/3/after", "fry"],
  ]);
});

test("a size that is none names those there are", () => {
  const makings = [makeMaking("egg", { value: 1, unit: "piece", size: "tiny" })];
  expect(checkDish(makeDish({ main: "egg", makings }), foods)[0]?.expected).toBe("one of the sizes large");
});
