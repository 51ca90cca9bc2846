import { loadDishTextsDe } from "@halfloaf/data";
import * as v from "valibot";
import { describe, expect, test } from "vitest";
import { type Dish, DishTexts, layDishTexts } from "../../dish/index.ts";
import { toCardSheet } from "../card/toCardSheet.ts";
import { findWeek } from "../sheet.testing.ts";
import { dayLesson, dishLesson } from "./toLessonSheet.ts";

const source = findWeek("port-ansel", { days: 3, moves: 3000 });
const { dishes } = source.tables;
const add = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

describe("a lesson", () => {
  const lessons = [
    ...[0, 1, 2].map((day) =>
      dayLesson(source, source.week.sittings.map(({ date }) => date)[day * 4] ?? source.week.from),
    ),
    ...dishes.slice(0, 30).map((dish) => dishLesson({ ...source, dish })),
  ];
  const cookings = lessons.flatMap((lesson) => lesson.cookings);

  test("each plate is the sum of what it used of each pack, each pack that of what the plates used", () => {
    for (const { packs, plates, costMinor } of cookings) {
      expect(add(packs.map((pack) => pack.costMinor))).toBe(costMinor);
      expect(add(plates.map((plate) => plate.costMinor))).toBe(costMinor);
      for (const plate of plates) expect(add(plate.parts.map((part) => part.costMinor))).toBe(plate.costMinor);
      packs.forEach((pack, at) => {
        expect(add(plates.map(({ parts }) => parts[at]?.costMinor ?? Number.NaN))).toBe(pack.costMinor);
        expect(add(plates.map(({ parts }) => parts[at]?.massG ?? Number.NaN))).toBeCloseTo(
          Math.round(pack.massG * 10) / 10,
          6,
        );
      });
    }
  });

  test("measures out what is cooked, not what the dish is written for", () => {
    const dish = dishes.find(({ id }) => id === "creamy-macaroni-broccoli-cheddar");
    if (dish === undefined) throw new Error("the dish is gone");
    const [cooking] = dishLesson({ ...source, dish, portions: 6 }).cookings;
    expect(dish.portions).toBe(2);
    expect(cooking?.makings[0]).toMatch(/^510 g white pasta|^510 g pasta/);
    expect(cooking?.steps.map(({ text }) => text).join(" ")).toContain("1.05 L of water");
    const german = layDishTexts([dish], v.parse(DishTexts, loadDishTextsDe()))[0] as Dish;
    const [told] = dishLesson({ ...source, dish: german, portions: 6 }, "de").cookings;
    expect(told?.steps.map(({ text }) => text).join(" ")).toContain("1,05 l Wasser");
  });

  test("shows what was eaten on the day at what it cost", () => {
    for (const { date, cookings: own } of lessons) {
      if (date === undefined) continue;
      const shown = own
        .flatMap(({ plates }) => plates.filter((plate) => plate.date === date))
        .map((plate) => plate.costMinor);
      const planned = source.week.sittings.filter((one) => one.date === date).flatMap(({ plateMinor }) => plateMinor);
      expect(shown.sort()).toEqual(planned.sort());
    }
  });
});

describe("a card", () => {
  const cards = dishes.map((dish) => toCardSheet({ ...source, dish, portions: 3 }));

  test("lines and plates add up to the total; as purchased is refuse and what is edible", () => {
    for (const card of cards) {
      expect(add(card.lines.map(({ costMinor = 0 }) => costMinor))).toBe(card.totalMinor);
      expect(add(card.platesMinor)).toBe(card.totalMinor);
      for (const line of card.lines) expect(line.refuseG + line.edibleG).toBeCloseTo(line.purchasedG, 6);
      expect(add(card.lines.map(({ purchasedG }) => purchasedG))).toBeCloseTo(card.purchasedG, 6);
    }
  });

  test("no shop alone is cheaper than the cheapest of each, as far as rounding goes", () => {
    for (const card of cards)
      for (const shop of card.shops) expect(shop.totalMinor).toBeGreaterThanOrEqual(card.totalMinor);
    expect(cards.some(({ shops, totalMinor }) => shops.some((shop) => shop.totalMinor > totalMinor))).toBe(true);
  });

  test("a line of the declaration of which a part is unknown says at least, and the order is that of the law", () => {
    for (const { declaration } of cards) {
      expect(declaration.map(({ item }) => item)).toEqual([
        "energy",
        "fat",
        "saturates",
        "carbohydrate",
        "sugars",
        "fibre",
        "protein",
        "salt",
      ]);
    }
    expect(cards.some(({ declaration }) => declaration.some(({ atLeast }) => atLeast))).toBe(true);
    expect(cards.some(({ declaration }) => declaration.some(({ atLeast }) => !atLeast))).toBe(true);
  });

  test("every allergen of a costed making is among the sure ones, and stands emphasised with that making", () => {
    for (const { lines, allergens } of cards) {
      const marked = new Set(lines.flatMap((line) => line.allergens));
      for (const name of marked) expect(allergens.eu.sure).toContain(name);
    }
    expect(cards.some(({ allergens }) => allergens.eu.sure.length > 0)).toBe(true);
  });
});
