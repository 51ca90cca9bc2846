import { describe, expect, test } from "vitest";
import { starterOptions } from "./reading.testing.ts";
import { readMakings } from "./readMaking.ts";

const options = starterOptions();
const read = (...lines: string[]) =>
  readMakings(
    lines.map((text, at) => ({ text, path: ["line", at + 1] })),
    options,
  );

describe("a line that joins two foods", () => {
  test.each([
    ["salt and pepper", ["salt", "black-pepper"]],
    ["½ tsp each ground cumin and coriander", ["cumin-ground", "coriander-ground"]],
    ["1 tsp each of paprika and turmeric", ["paprika", "turmeric"]],
  ])("is two makings where no amount is told or that of each: %s", (line, foods) => {
    const makings = read(line);
    expect(makings.map(({ food }) => food?.value)).toEqual(foods);
    expect(new Set(makings.map(({ amount }) => JSON.stringify(amount?.value))).size).toBe(1);
  });

  test("stays one where the amount may be of both together", () => {
    expect(read("2 tsp cumin and turmeric").map(({ food }) => food)).toEqual([undefined]);
  });
});

test.each([
  ["250 g Mehl", "flour-plain", { value: 250, unit: "g" }],
  ["2 EL Öl", "vegetable-oil", { value: 2, unit: "[tbs_m]" }],
  ["3 Eier", "egg", { value: 3, unit: "piece" }],
  ["1 Dose Kichererbsen, abgetropft", "chickpeas-tinned", undefined],
  ["2 Zehen Knoblauch, gehackt", "garlic", { value: 2, unit: "piece", size: "clove" }],
  ["1,5 kg Kartoffeln", "potato", { value: 1.5, unit: "kg" }],
  ["1 Prise Salz", "salt", undefined],
])("a German line is read: %s", (line, food, amount) => {
  const [making] = read(line);
  expect(making?.food?.value).toBe(food);
  if (amount !== undefined) expect(making?.amount?.value).toEqual(amount);
});

test.each([
  ["400 g tinned tomatoes", "tomatoes-tinned", []],
  ["1 tsp ground cumin", "cumin-ground", []],
  ["2 ripe bananas", "banana", ["ripe"]],
])("a state that the food found has of itself was used, any other is told as unread: %s", (line, food, unread) => {
  const [making] = read(line);
  expect([making?.food?.value, making?.unread]).toEqual([food, unread]);
});

describe("what is optional", () => {
  test("is so by its line, by its heading or, as a guess, by what it is for", () => {
    const [oil, parsley, dill, leek] = read(
      "1 tbsp oil (optional)",
      "10 g parsley, to serve",
      "For the top (optional):",
      "10 g dill",
      "For the soup:",
      "1 leek",
    );
    expect([oil, parsley, dill, leek].map((making) => [making?.optional.value, making?.optional.sure])).toEqual([
      [true, "sure"],
      [true, "guess"],
      [true, "sure"],
      [false, "likely"],
    ]);
  });
});
