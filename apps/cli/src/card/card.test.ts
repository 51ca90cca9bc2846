import type { Dish } from "halfloaf/dish";
import { withOwnFoodsAndDishes } from "halfloaf/kitchen";
import { expect, test } from "vitest";
import { loadTables } from "../input/loadTables.ts";
import { type OpenKitchen, openKitchen } from "../input/openKitchen.ts";
import { COLOURED, PLAIN } from "../output/paint.ts";
import { textWidth } from "../output/textWidth.ts";
import type { CardData } from "./CardData.ts";
import { findDish } from "./findDish.ts";
import { layCard } from "./layCard.ts";
import { toCard } from "./toCard.ts";

const starter = loadTables();
const open = (name: string): OpenKitchen => {
  const opened = openKitchen(name, ".", starter);
  if (!opened.ok) throw new Error(`${name} does not open`);
  return opened.value;
};
const kitchens = ["port-ansel", "one-ring", "six-flat"].map(open);

/** The card of every starter dish in every demo kitchen. */
const cards = kitchens.flatMap(({ kitchen, tables }) =>
  tables.dishes.map((dish) => ({ dish, kitchen, card: toCard({ kitchen, tables, dish, portions: 3 }) })),
);

test("cost lines and plates each add up to the total, in every kitchen", () => {
  for (const { card } of cards) {
    const sum = (values: readonly (number | undefined)[]) =>
      values.reduce<number>((all, value) => all + (value ?? 0), 0);
    expect(sum(card.makings.map(({ costMinor }) => costMinor))).toBe(card.totalMinor);
    expect(sum(card.platesMinor)).toBe(card.totalMinor);
    expect(card.platesMinor).toHaveLength(3);
  }
});

test("a making without a price is unknown, not free: the total then is the least it costs", () => {
  for (const { card } of cards) {
    const unpriced = card.makings.some(({ costMinor }) => costMinor === undefined);
    expect(card.atLeast).toBe(unpriced || card.unknown.length > 0);
  }
  expect(cards.some(({ card }) => card.makings.some(({ costMinor }) => costMinor === undefined))).toBe(true);
});

test("what stands in for a making brings its allergens along as sure ones", () => {
  const replaced = cards.filter(({ card }) => card.makings.some(({ insteadOf }) => insteadOf !== undefined));
  expect(replaced.length).toBeGreaterThan(0);
  for (const { card } of replaced) {
    const held = card.makings.flatMap(({ food }) => starter.foods.get(food)?.allergens.eu ?? []);
    expect(card.allergens.eu.sure).toEqual(expect.arrayContaining(held));
  }
});

test("what a plan may take instead is told for each making, never what is costed already", () => {
  const open = cards.filter(({ card }) => card.alternatives !== undefined);
  expect(open.length).toBeGreaterThan(0);
  for (const { card, kitchen } of open) {
    const had = new Set([...kitchen.packs, ...kitchen.stores].map(({ food }) => food));
    for (const { food, insteadOf } of card.alternatives ?? []) {
      expect(had.has(food)).toBe(true);
      expect(food).not.toBe(insteadOf.food);
      expect(card.makings.map((making) => making.food)).toContain(insteadOf.food);
    }
  }
  const [first] = open;
  expect(layCard({ card: first?.card as CardData, width: 200, paint: PLAIN }).join(" ")).toContain(
    "A plan may take instead: ",
  );
});

test("every figure has its source: that of its food or, by name, the one it was taken from", () => {
  for (const { card } of cards)
    expect(card.sources.map(({ food }) => food).sort()).toEqual(
      [...new Set(card.makings.map(({ food }) => food))].sort(),
    );
  const { kitchen, tables } = open("port-ansel");
  const override = { food: "onion", from: "x", figures: { proteinG: 2, fatG: 1 }, unknown: [] };
  const own = { ...kitchen, overrides: [{ ...override, sources: { proteinG: "harbour 12", fatG: "harbour 12" } }] };
  const dish = tables.dishes.find(({ makings }) => makings.some(({ food }) => food === "onion")) as Dish;
  const card = toCard({ kitchen: own, tables: withOwnFoodsAndDishes(tables, own), dish, portions: 1 });
  const others = card.sources.find(({ food }) => food === "onion")?.others;
  expect(others).toContainEqual({ source: "harbour 12", components: ["proteinG", "fatG"] });
  const page = layCard({ card, width: 200, paint: PLAIN }).join(" ");
  expect(page).toContain("protein, fat: harbour 12");
});

test("an eater whose allergen is in it is named", () => {
  const six = cards.filter(({ kitchen }) => kitchen.eaters.some(({ avoids }) => avoids.allergens.includes("peanuts")));
  const peanut = six.filter(({ card }) => card.allergens.eu.sure.includes("peanuts"));
  expect(peanut.length).toBeGreaterThan(0);
  for (const { card } of peanut) expect(card.notFor.length).toBeGreaterThan(0);
});

test("a kitchen without an oven is told that it can't bake", () => {
  const baked = cards.filter(
    ({ dish, kitchen }) => !kitchen.kit.oven && dish.method.some(({ kit }) => kit.includes("oven")),
  );
  for (const { card } of baked) expect(card.missingKit).toBe("oven");
});

test.each([60, 100])("no line of any card is wider than the page (%i columns)", (width) => {
  const lines = cards.slice(0, 60).flatMap(({ card }) => layCard({ card, width, paint: PLAIN }));
  expect(lines.filter((line) => textWidth(line) > width)).toEqual([]);
});

test("allergens stand in capitals, so that they stand out without colour too", () => {
  const card = cards.find((each) => each.card.allergens.eu.sure.includes("milk"))?.card;
  if (card === undefined) throw new Error("no starter dish holds milk");
  expect(layCard({ card, width: 80, paint: PLAIN }).join("\n")).toMatch(/EU and UK list of 14: .*MILK/);
  expect(layCard({ card, width: 80, paint: COLOURED }).join("\n")).toContain("MILK");
});

test("a dish is found by id or title; else the three nearest are named", () => {
  const dish = starter.dishes[4];
  expect(findDish(dish?.id ?? "", starter.dishes)).toEqual({ ok: true, value: dish });
  expect(findDish(dish?.title.toUpperCase() ?? "", starter.dishes)).toEqual({ ok: true, value: dish });
  const unknown = findDish("zzzz", starter.dishes);
  expect(unknown.ok ? [] : unknown.faults[0]?.remedy.split(", ")).toHaveLength(3);
});
